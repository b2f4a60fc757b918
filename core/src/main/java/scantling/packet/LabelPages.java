package scantling.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import scantling.construct.Part;
import scantling.drawing.Code;
import scantling.drawing.FaceMark;
import scantling.measure.LengthFormat;
import scantling.route.Operation;
import scantling.route.Step;

/** A label to every part: its letter, its name, its size, the mark of its face, and a code that leads to it. */
public final class LabelPages {
    private static final double MEAN_GLYPH = 0.56;
    private static final double MM_PER_POINT = 25.4 / 72;
    private static final double PAD_MM = 2;
    private static final double MOST_CODE_MM = 19;
    private static final double HIGH_LABEL_MM = 30;
    private static final int MOST_CODE = 120;

    private final PacketContent content;
    private final LabelSheet sheet;
    private final PaperFigures figures = new PaperFigures();
    private final double codeMm;
    private final double points;

    private LabelPages(PacketContent content, LabelSheet sheet) {
        this.content = content;
        this.sheet = sheet;
        this.codeMm = Math.min(MOST_CODE_MM, sheet.height() - 2 * PAD_MM);
        this.points = sheet.height() >= HIGH_LABEL_MM ? 8.5 : 6.5;
    }

    /** One sheet. @param last whether it is the last */
    public record Sheet(List<Label> labels, boolean last) {}

    /** One label. @param place its place, as style @param face the mark of its face, and @param code its code, as markup */
    public record Label(
            String place, String mark, String face, String code, List<String> lines, String large, String small) {}

    /** All labels of a packet as PDF. */
    public static byte[] pdf(PacketContent content, LabelSheet sheet) {
        LabelPages pages = new LabelPages(content, sheet);
        String css = Resources.text("labels.css")
                + "@page{size:%s;margin:0}".formatted(sheet.paper().css());
        return PacketPdf.unnumbered(Templates.render("labels.jte", pages, css), pages.figures);
    }

    /** Job number and piece. */
    public String heading() {
        return ("Labels " + content.job().number() + " "
                        + content.assembly().piece().title())
                .strip();
    }

    /** Whether the labels are cut apart. */
    public boolean isPlain() {
        return sheet.isPlain();
    }

    /** Of the paper, as style. */
    public String paperWide() {
        return sheet.paper() == Paper.A4 ? "210mm" : "215.9mm";
    }

    /** Of the paper, a hair less so that no empty sheet follows. */
    public String paperHigh() {
        return sheet.paper() == Paper.A4 ? "296.9mm" : "279.3mm";
    }

    /** Part by part, in the order of their letters. */
    public List<Sheet> sheets() {
        List<Label> labels = new ArrayList<>();
        for (PartGroup group : content.groups()) {
            for (String path : group.paths()) {
                labels.add(label(group, path, labels.size() % sheet.perSheet()));
            }
        }
        int count = (labels.size() + sheet.perSheet() - 1) / sheet.perSheet();
        return IntStream.range(0, count)
                .mapToObj(i -> new Sheet(
                        labels.subList(i * sheet.perSheet(), Math.min(labels.size(), (i + 1) * sheet.perSheet())),
                        i == count - 1))
                .toList();
    }

    private Label label(PartGroup group, String path, int index) {
        String code = code(group.mark() + " " + path);
        double room = sheet.width() - codeMm - 3 * PAD_MM;
        List<String> lines = new ArrayList<>(broken(path, room, sheet.height() >= HIGH_LABEL_MM ? 3 : 2));
        lines.addAll(broken(size(group.sample()), room, 2));
        int left = (sheet.height() >= HIGH_LABEL_MM ? 5 : 3) - lines.size();
        if (left > 0) {
            next(path).ifPresent(next -> lines.addAll(begun("Next: " + next, room, left)));
        }
        return new Label(
                String.format(
                        Locale.ROOT,
                        "left:%.3fmm;top:%.3fmm;width:%.3fmm;height:%.3fmm",
                        sheet.leftOf(index),
                        sheet.topOf(index),
                        sheet.width(),
                        sheet.height()),
                group.mark(),
                figures.place(FaceMark.of(group.sample())),
                figures.place(Code.of(code, codeMm)),
                lines,
                points * 1.8 + "pt",
                points + "pt");
    }

    /** What is done to a part next, by the route and by what is done of it already. */
    private Optional<String> next(String path) {
        Set<String> done = content.days().stream()
                .flatMap(days -> days.jobs().stream())
                .filter(job -> job.route().equals(content.route()))
                .flatMap(job -> job.done().keySet().stream())
                .collect(Collectors.toSet());
        // A label is stuck on when the part is cut and its faces are marked; what came before helps nobody.
        return content.route().of(path).stream()
                .filter(operation -> operation.step().compareTo(Step.MARK) > 0 && !done.contains(operation.id()))
                .map(Operation::title)
                .findFirst();
    }

    private String code(String what) {
        String text = content.job()
                .address()
                .map(address -> address + "#drawn-" + what.split(" ", 2)[0])
                .orElse((content.job().number() + " " + what).strip());
        return text.length() <= MOST_CODE ? text : text.substring(0, MOST_CODE);
    }

    /** To know a part by; what is left over behind a fraction would not leave room for the length. */
    private String size(Part part) {
        LengthFormat format = content.format();
        return "%s × %s × %s"
                .formatted(
                        format.typeset(part.length().value()).figure(),
                        format.typeset(part.width().value()).figure(),
                        format.typeset(part.thickness().value()).figure());
    }

    /** Breaks a name into lines that fit; of one too long for them the beginning goes, for its end tells parts apart. */
    private List<String> broken(String path, double roomMm, int most) {
        int wide = wide(roomMm);
        List<String> lines = lines(path, wide);
        if (lines.size() <= most) {
            return lines;
        }
        List<String> last = new ArrayList<>(lines.subList(lines.size() - most, lines.size()));
        String first = last.get(0);
        last.set(0, "…" + (first.length() < wide ? first : first.substring(1)));
        return last;
    }

    /** Breaks a sentence into lines that fit; of one too long for them the end goes. */
    private List<String> begun(String sentence, double roomMm, int most) {
        int wide = wide(roomMm);
        List<String> lines = lines(sentence, wide);
        if (lines.size() <= most) {
            return lines;
        }
        List<String> first = new ArrayList<>(lines.subList(0, most));
        String last = first.get(most - 1);
        first.set(most - 1, (last.length() < wide ? last : last.substring(0, wide - 1)).strip() + "…");
        return first;
    }

    private int wide(double roomMm) {
        return Math.max(6, (int) (roomMm / (points * MM_PER_POINT * MEAN_GLYPH)));
    }

    private static List<String> lines(String text, int wide) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words(text, wide)) {
            if (line.length() > 0 && line.length() + 1 + word.length() > wide) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    /** The words of a name; one too long for a line is cut where the line ends. */
    private static List<String> words(String path, int wide) {
        List<String> words = new ArrayList<>();
        for (String word : path.split(" ")) {
            for (int from = 0; from < word.length(); from += wide) {
                words.add(word.substring(from, Math.min(word.length(), from + wide)));
            }
        }
        return words;
    }
}
