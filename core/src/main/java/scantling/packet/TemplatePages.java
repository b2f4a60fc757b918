package scantling.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import scantling.construct.Fitting;
import scantling.drawing.Drawing;
import scantling.drawing.ProofLine;
import scantling.drawing.SettingStrip;
import scantling.drawing.ShapeTemplates;
import scantling.drawing.Sheet;
import scantling.drawing.WorkTemplate;
import scantling.feature.Feature;

/** Templates at their true size, cut into tiles that a sheet holds. */
public final class TemplatePages {
    /** What a tile may take of the narrower and the shorter of the usual sheets, beside its heading and caption. */
    private static final Sheet SHEET = new Sheet(180, 222, 30);
    /** What stands between the margins of the narrower of the usual sheets, and of it what lies between two templates. */
    private static final double SHEET_MM = 182;

    private static final double GAP_MM = 4;
    private static final double CAPTION_MM = 54;

    private final PacketContent content;
    private final PaperFigures figures;
    private final List<Chapter> chapters;

    private TemplatePages(PacketContent content, PaperFigures figures) {
        this.content = content;
        this.figures = figures;
        this.chapters = Stream.of(fittings(), outlines(), strips())
                .filter(chapter -> !chapter.rows().isEmpty())
                .toList();
    }

    /** Some templates of one kind. @param id its anchor @param note how they are used @param rows those beside each other */
    public record Chapter(String id, String heading, String note, List<List<Drawing>> rows) {}

    static TemplatePages of(PacketContent content) {
        return new TemplatePages(content, new PaperFigures());
    }

    /** The templates of a packet as PDF; nothing for a piece that needs none. */
    public static Optional<byte[]> pdf(PacketContent content, Paper paper) {
        PaperFigures figures = new PaperFigures();
        TemplatePages pages = new TemplatePages(content, figures);
        return pages.chapters.isEmpty()
                ? Optional.empty()
                : Optional.of(PacketPdf.render(
                        Templates.render("templates.jte", pages, PacketPdf.css(content, paper)), figures));
    }

    /** Job number and piece. */
    public String heading() {
        return (content.job().number() + " " + content.assembly().piece().title()).strip();
    }

    /** All of them. */
    public List<Chapter> chapters() {
        return chapters;
    }

    /** Whether it begins a sheet; the others follow on. */
    public boolean isFirst(Chapter chapter) {
        return chapters.get(0).equals(chapter);
    }

    /** The line that proves the print. */
    public Drawing upright() {
        return ProofLine.upright();
    }

    /** A short one. */
    public Drawing proof() {
        return ProofLine.draw();
    }

    /** A drawing as markup. */
    public String placed(Drawing drawing) {
        return figures.place(drawing);
    }

    /** A template with what it is of: the marks of its parts, and the fitting. */
    private record Template(String mark, String what, Drawing drawing) {}

    /** One template to what a fitting needs on one surface of a part; those alike once, with all their marks. */
    private Chapter fittings() {
        Map<String, List<Template>> alike = new LinkedHashMap<>();
        Drawings.drawn(content.groups())
                .forEach(group -> byFitting(group)
                        .forEach((what, features) -> WorkTemplate.all(
                                        group.sample(), features, group.mark() + ": " + what, content.format())
                                .forEach(drawing -> alike.computeIfAbsent(likeness(drawing), key -> new ArrayList<>())
                                        .add(new Template(group.mark(), what, drawing)))));
        return chapter(
                "fittings",
                "Hardware",
                "Holes and beds for each fitting. For the other hand of a pair turn the paper over. A single hole far"
                        + " from both ends stands on the part's strip.",
                alike.values().stream().map(TemplatePages::shared).flatMap(TemplatePages::tiles));
    }

    private static String likeness(Drawing drawing) {
        return "%.1f %.1f %s".formatted(drawing.width(), drawing.height(), drawing.marks());
    }

    private static Drawing shared(List<Template> alike) {
        Template first = alike.get(0);
        if (alike.size() == 1) {
            return first.drawing();
        }
        String marks = alike.stream().map(Template::mark).distinct().collect(Collectors.joining(", "));
        return first.drawing()
                .called(marks + first.drawing().title().substring(first.mark().length()));
    }

    private Map<String, List<Feature>> byFitting(PartGroup group) {
        Map<String, List<Feature>> by = new LinkedHashMap<>();
        List<Feature> all =
                group.work().stream().flatMap(work -> work.features().stream()).toList();
        for (Fitting fitting : content.assembly().fittings()) {
            for (Feature feature : all) {
                if (feature.owner().equals(fitting.path())) {
                    by.computeIfAbsent(
                                    fitting.path() + ", " + fitting.what() + ", "
                                            + feature.surface().words(),
                                    key -> new ArrayList<>())
                            .add(feature);
                }
            }
        }
        all.stream()
                .filter(feature -> feature.kind() == Feature.Kind.NOTCH && !isOfFitting(feature))
                .forEach(feature -> by.computeIfAbsent(
                                feature.owner() + ", notch, "
                                        + feature.surface().words(),
                                key -> new ArrayList<>())
                        .add(feature));
        return by;
    }

    private boolean isOfFitting(Feature feature) {
        return content.assembly().fittings().stream()
                .anyMatch(fitting -> fitting.path().equals(feature.owner()));
    }

    private Chapter outlines() {
        return chapter(
                "outlines",
                "Shapes",
                "Curves, tapers, notches and round corners: cut the paper to the line, or make a template of thin"
                        + " sheet from it.",
                Drawings.drawn(content.groups())
                        .flatMap(group ->
                                ShapeTemplates.of(group.sample(), group.mark() + ", " + group.names(), content.format())
                                        .stream())
                        .flatMap(TemplatePages::tiles));
    }

    private static Stream<Drawing> tiles(Drawing whole) {
        return SHEET.tiles(whole).stream();
    }

    private Chapter strips() {
        return chapter(
                "strips",
                "Setting-out strips",
                "All that is placed along a part on one strip: lay it on the part from its near end and square the"
                        + " lines across. Where nothing stands for longer than a sheet no paper is used: measure from the"
                        + " near end to the first figure of the next tile.",
                Drawings.drawn(content.groups())
                        .flatMap(group -> SettingStrip.tiles(
                                group.sample(),
                                group.work(),
                                group.mark() + ", " + group.names(),
                                content.format(),
                                SHEET)
                                .stream()));
    }

    private static Chapter chapter(String id, String heading, String note, Stream<Drawing> tiles) {
        return new Chapter(id, heading, note, rows(tiles.toList()));
    }

    /** As many beside each other as a sheet is wide. */
    private static List<List<Drawing>> rows(List<Drawing> tiles) {
        List<List<Drawing>> rows = new ArrayList<>();
        double left = 0;
        for (Drawing tile : tiles) {
            double wide = cell(tile);
            if (rows.isEmpty() || wide > left) {
                rows.add(new ArrayList<>());
                left = SHEET_MM;
            }
            rows.get(rows.size() - 1).add(tile);
            left -= wide;
        }
        return rows;
    }

    /** What a template and its caption take of a row. */
    private static double cell(Drawing tile) {
        return Math.max(tile.paperWidth(), CAPTION_MM) + GAP_MM;
    }

    /** The same, as style. */
    public String width(Drawing tile) {
        return "%.1fmm".formatted(cell(tile) - GAP_MM);
    }
}
