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
    private static final Sheet SHEET = new Sheet(180, 232, 30);
    /** The same of a sheet that is turned. */
    private static final Sheet TURNED = new Sheet(248, 166, 30);
    /** What stands between the margins of the narrower of the usual sheets, and of it what lies between two templates. */
    private static final double SHEET_MM = 182;

    private static final double TURNED_MM = 251;

    private static final double GAP_MM = 4;
    private static final double CAPTION_MM = 54;
    /** So high a template leaves room for few lines below it, which are wider then. */
    private static final double HIGH_MM = 220;

    private static final double WIDE_CAPTION_MM = 86;

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

    /**
     * Some templates of one kind.
     *
     * @param id its anchor
     * @param note how they are used
     * @param upright those beside each other on an upright sheet
     * @param turned those that take fewer sheets when a sheet is turned
     */
    public record Chapter(
            String id, String heading, String note, List<List<Drawing>> upright, List<List<Drawing>> turned) {
        /** All of them. */
        public List<List<Drawing>> rows() {
            return Stream.concat(upright.stream(), turned.stream()).toList();
        }
    }

    static TemplatePages of(PacketContent content) {
        return new TemplatePages(content, new PaperFigures());
    }

    /** The templates of a packet as PDF; nothing for a piece that needs none. */
    public static Optional<byte[]> pdf(PacketContent content, Paper paper) {
        PaperFigures figures = new PaperFigures();
        TemplatePages pages = new TemplatePages(content, figures);
        return pages.chapters.isEmpty()
                ? Optional.empty()
                : Optional.of(PacketPdf.render(Templates.render("templates.jte", pages, css(content, paper)), figures));
    }

    private static String css(PacketContent content, Paper paper) {
        return PacketPdf.css(content, paper) + "@page turned{size:%s landscape}%n".formatted(paper.css());
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
        return ProofLine.upright(content.format());
    }

    /** How far paper can be trusted, by the maker's own rule. */
    public String trusted() {
        return content.format().inches() ? "20 in" : "half a metre";
    }

    /** A short one. */
    public Drawing proof() {
        return ProofLine.draw(content.format());
    }

    /** A drawing as markup. */
    public String placed(Drawing drawing) {
        return figures.place(drawing);
    }

    /** What is fixed, and the work for it on one surface. */
    private record Fixed(String path, String what, String surface) {
        String words() {
            return path + ", " + what + ", " + surface;
        }
    }

    /** One template to what a fitting needs on one surface of a part; those alike once, with all their marks. */
    private Chapter fittings() {
        AlikeTemplates alike = new AlikeTemplates(content.format());
        Drawings.drawn(content.groups())
                .forEach(group -> byFitting(group)
                        .forEach((fixed, features) -> WorkTemplate.laid(
                                        group.sample(), features, group.mark() + ": " + fixed.words(), content.format())
                                .forEach(laid -> alike.add(group.mark(), fixed.what() + fixed.surface(), laid))));
        return chapter(
                "fittings",
                "Hardware",
                "Holes and beds for each fitting. For the other hand of a pair turn the paper over. A single hole far"
                        + " from both ends stands on the part's strip. What is the same at several places along a part is"
                        + " printed once: lay it on by the edge, its first middle at each distance from the near end.",
                alike.shared().stream().map(List::of));
    }

    private Map<Fixed, List<Feature>> byFitting(PartGroup group) {
        Map<Fixed, List<Feature>> by = new LinkedHashMap<>();
        List<Feature> all =
                group.work().stream().flatMap(work -> work.features().stream()).toList();
        for (Fitting fitting : content.assembly().fittings()) {
            for (Feature feature : all) {
                if (feature.owner().equals(fitting.path())) {
                    by.computeIfAbsent(
                                    new Fixed(
                                            fitting.path(),
                                            fitting.what(),
                                            feature.surface().words()),
                                    key -> new ArrayList<>())
                            .add(feature);
                }
            }
        }
        all.stream()
                .filter(feature -> feature.kind() == Feature.Kind.NOTCH && !isOfFitting(feature))
                .forEach(feature -> by.computeIfAbsent(
                                new Fixed(
                                        feature.owner(),
                                        "notch",
                                        feature.surface().words()),
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
                        .map(List::of));
    }

    private Chapter strips() {
        return chapter(
                "strips",
                "Setting-out strips",
                "All that is placed along a part on one strip: lay it on the part from its near end and square the"
                        + " lines across. Where nothing stands for longer than a sheet no paper is used: measure from the"
                        + " near end to the first figure of the next tile.",
                stripsOnce().values().stream());
    }

    /** The tiles of each strip; parts with the same places have one. */
    private Map<String, List<Drawing>> stripsOnce() {
        Map<String, List<PartGroup>> alike = new LinkedHashMap<>();
        Map<String, List<Drawing>> tiles = new LinkedHashMap<>();
        Drawings.drawn(content.groups()).forEach(group -> {
            List<Drawing> strip = SettingStrip.tiles(
                    group.sample(), group.work(), group.mark() + ", " + group.names(), content.format(), SHEET);
            String key =
                    strip.stream().map(tile -> tile.left() + " " + tile.marks()).collect(Collectors.joining());
            alike.computeIfAbsent(key, first -> new ArrayList<>()).add(group);
            tiles.putIfAbsent(key, strip);
        });
        tiles.replaceAll((key, strip) -> named(strip, alike.getOrDefault(key, List.of())));
        return tiles;
    }

    private static List<Drawing> named(List<Drawing> strip, List<PartGroup> groups) {
        String first = groups.get(0).mark();
        String marks = groups.stream().map(PartGroup::mark).collect(Collectors.joining(", "));
        return strip.stream()
                .map(tile -> tile.called(marks + tile.title().substring(first.length())))
                .toList();
    }

    /** Each on an upright sheet, or on one that is turned where it then takes fewer. @param all each alone, or cut into tiles */
    private static Chapter chapter(String id, String heading, String note, Stream<List<Drawing>> all) {
        List<Drawing> upright = new ArrayList<>();
        List<Drawing> turned = new ArrayList<>();
        all.forEach(each -> {
            List<Drawing> tiles = each.size() == 1 ? SHEET.tiles(each.get(0)) : each;
            List<Drawing> fewer = each.size() == 1 ? TURNED.tiles(each.get(0)) : each;
            if (fewer.size() < tiles.size()) {
                turned.addAll(fewer);
            } else {
                upright.addAll(tiles);
            }
        });
        return new Chapter(id, heading, note, rows(upright, SHEET_MM), rows(turned, TURNED_MM));
    }

    /** As many beside each other as a sheet is wide. */
    private static List<List<Drawing>> rows(List<Drawing> tiles, double sheet) {
        List<List<Drawing>> rows = new ArrayList<>();
        double left = 0;
        for (Drawing tile : tiles) {
            double wide = cell(tile);
            if (rows.isEmpty() || wide > left) {
                rows.add(new ArrayList<>());
                left = sheet;
            }
            rows.get(rows.size() - 1).add(tile);
            left -= wide;
        }
        return rows;
    }

    /** What a template and its caption take of a row. */
    private static double cell(Drawing tile) {
        double caption = tile.paperHeight() > HIGH_MM ? WIDE_CAPTION_MM : CAPTION_MM;
        return Math.max(tile.paperWidth(), caption) + GAP_MM;
    }

    /** The same, as style. */
    public String width(Drawing tile) {
        return "%.1fmm".formatted(cell(tile) - GAP_MM);
    }
}
