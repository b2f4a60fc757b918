package scantling.packet;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import scantling.drawing.CutDrawing;
import scantling.drawing.CutSheet;
import scantling.drawing.Drawing;
import scantling.drawing.Exploded;
import scantling.drawing.PartDrawing;
import scantling.drawing.Views;
import scantling.measure.LengthFormat;
import scantling.plan.Plan;

/**
 * The whole set of papers of a plan, ready to be written: the packet, the job sheet, tables, data and drawings.
 *
 * @param content what it shows
 */
public record Packet(PacketContent content) {
    /** The papers of a plan, without a shop's name or a job's number. */
    public static Packet of(Plan plan, LengthFormat format) {
        return of(plan, format, new JobLines("", "", List.of()));
    }

    /** The papers of a plan. */
    public static Packet of(Plan plan, LengthFormat format, JobLines job) {
        List<PartGroup> groups = PartGroups.of(plan.assembly());
        Map<String, String> marks = marks(groups);
        List<CutSheet> sheets = plan.cuts().stream()
                .flatMap(group -> CutSheets.of(group, marks).stream())
                .toList();
        return new Packet(new PacketContent(
                plan.assembly(), groups, BlankRows.of(plan.blanks(), groups), sheets, plan.findings(), format, job));
    }

    private static Map<String, String> marks(List<PartGroup> groups) {
        Map<String, String> marks = new LinkedHashMap<>();
        groups.forEach(group -> group.paths().forEach(path -> marks.put(path, group.mark())));
        return marks;
    }

    /** All files by their names, in a fixed order. */
    public Map<String, byte[]> files(Paper paper) {
        // Paper takes longest by far; the rest is made beside it.
        CompletableFuture<byte[]> pdf = CompletableFuture.supplyAsync(() -> PacketPdf.render(content, paper));
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("job-sheet.html", bytes(JobSheetPage.html(content)));
        files.put("parts.csv", bytes(PartsCsv.of(content)));
        files.put("plan.json", bytes(PlanJson.of(content)));
        drawings().forEach((name, drawing) -> files.put("drawings/" + name + ".svg", bytes(drawing.screenSvg())));
        files.put("packet.pdf", pdf.join());
        return files;
    }

    private Map<String, Drawing> drawings() {
        Map<String, Drawing> drawings = new LinkedHashMap<>();
        Views views = new Views(content.assembly(), content.format());
        drawings.put("front", views.front());
        drawings.put("side", views.side());
        drawings.put("top", views.top());
        drawings.put("section", views.section());
        drawings.put("exploded", Exploded.of(content.assembly(), marks(content.groups())));
        for (PartGroup group : content.groups()) {
            String title = group.mark() + " " + group.names();
            drawings.put(
                    "part-" + group.mark(),
                    PartDrawing.of(content.assembly(), group.sample(), title, content.format()));
        }
        List<CutSheet> sheets = new ArrayList<>(content.sheets());
        for (int i = 0; i < sheets.size(); i++) {
            drawings.put("cutting-" + (i + 1), CutDrawing.of(sheets.get(i), content.format()));
        }
        return drawings;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
