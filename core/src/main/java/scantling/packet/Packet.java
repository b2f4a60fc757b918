package scantling.packet;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import scantling.drawing.Gltf;
import scantling.measure.LengthFormat;
import scantling.packet.files.PartDxf;
import scantling.packet.files.RouteCalendar;
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

    /** The papers of a plan whose days nobody has laid out. */
    public static Packet of(Plan plan, LengthFormat format, JobLines job) {
        return of(plan, format, job, Optional.empty(), Shown.NOTHING);
    }

    /** The papers of a plan. @param days when it is done, where a beginning is said @param shown what is shown to others */
    public static Packet of(Plan plan, LengthFormat format, JobLines job, Optional<Days> days, Shown shown) {
        List<PartGroup> groups = PartGroups.of(plan.assembly(), plan.features());
        Map<String, String> marks = marks(groups);
        List<CutSheets.Both> sawn = plan.cuts().stream()
                .map(group -> CutSheets.of(group, marks, format))
                .toList();
        return new Packet(new PacketContent(
                plan.assembly(),
                plan.features(),
                groups,
                BlankRows.of(plan.blanks(), groups),
                sawn.stream().flatMap(both -> both.each().stream()).toList(),
                sawn.stream().flatMap(both -> both.alike().stream()).toList(),
                plan.finish(),
                BuyRow.of(plan),
                plan.route(),
                plan.findings(),
                format,
                job,
                days,
                shown));
    }

    private static Map<String, String> marks(List<PartGroup> groups) {
        Map<String, String> marks = new LinkedHashMap<>();
        groups.forEach(group -> group.paths().forEach(path -> marks.put(path, group.mark())));
        return marks;
    }

    /** All files by their names, in a fixed order. */
    public Map<String, byte[]> files(Paper paper) {
        return files(Order.usual(paper));
    }

    /** The files of an order by their names, in a fixed order. */
    public Map<String, byte[]> files(Order order) {
        Drawings drawings = Drawings.of(content);
        // Paper takes longest by far; the rest is made beside it.
        CompletableFuture<byte[]> pdf = CompletableFuture.supplyAsync(() -> order.wants("packet")
                ? PacketPdf.render(content, drawings, order.paper(), order.sections())
                : new byte[0]);
        Map<String, byte[]> files = new LinkedHashMap<>();
        if (order.wants("page")) {
            files.put("job-sheet.html", bytes(JobSheetPage.html(content, drawings)));
        }
        if (order.wants("tables")) {
            files.put("parts.csv", bytes(PartsCsv.of(content)));
        }
        if (order.wants("data")) {
            files.put("plan.json", bytes(PlanJson.of(content)));
        }
        if (order.wants("drawings")) {
            drawings.byName(content.groups())
                    .forEach((name, drawing) -> files.put("drawings/" + name + ".svg", bytes(drawing.screenSvg())));
        }
        if (order.wants("outlines")) {
            Drawings.drawn(content.groups())
                    .forEach(group -> files.put(
                            "outlines/" + group.mark() + ".dxf", bytes(PartDxf.of(group.sample(), group.work()))));
        }
        if (order.wants("scene")) {
            files.put("piece.gltf", bytes(Gltf.of(content.assembly())));
        }
        if (order.wants("calendar")) {
            content.days()
                    .filter(Days::dated)
                    .flatMap(RouteCalendar::of)
                    .ifPresent(text -> files.put("route.ics", bytes(text)));
        }
        if (order.wants("templates")) {
            TemplatePages.pdf(content, order.paper()).ifPresent(pages -> files.put("templates.pdf", pages));
        }
        if (order.wants("labels")) {
            files.put("labels.pdf", LabelPages.pdf(content, order.labels()));
        }
        if (order.wants("handover")) {
            files.put("handing-over.pdf", ClientPages.handingOver(content, drawings, order.paper()));
        }
        if (order.wants("record")) {
            files.put("build-record.pdf", ClientPages.buildRecord(content, drawings, order.paper()));
        }
        if (order.wants("packet")) {
            files.put("packet.pdf", pdf.join());
        }
        return files;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
