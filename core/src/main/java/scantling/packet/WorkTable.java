package scantling.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import scantling.feature.Feature;
import scantling.feature.Range;
import scantling.feature.Setting;
import scantling.feature.Surface;
import scantling.feature.WorkGroup;
import scantling.measure.Dim;
import scantling.measure.Length;

/** The work on one part as a table: what, from which surface, where from the marks, how large, how set. */
public final class WorkTable {
    /** So many places in equal steps are told by their first, their last and the step. */
    private static final int RUN = 4;

    private final Figures figures;
    private final Function<String, String> purpose;
    private final Function<Setting, String> setting;

    /**
     * One line.
     *
     * @param number on the drawing, empty where the line goes on from the one above
     * @param what with how many
     * @param surface it is worked from
     * @param along from the near end, as markup; empty where its size or depth says it
     * @param across from the face edge, as markup
     * @param through from the face side, as markup
     * @param size as markup
     * @param depth as markup
     * @param setting the number of the machine's setting
     * @param purpose what it is for
     */
    public record Row(
            String number,
            String what,
            String surface,
            String along,
            String across,
            String through,
            String size,
            String depth,
            String setting,
            String purpose) {}

    /**
     * @param purpose what a joint or fitting is called on the sheet, by its path
     * @param setting the number of a machine's setting
     */
    WorkTable(Figures figures, Function<String, String> purpose, Function<Setting, String> setting) {
        this.figures = figures;
        this.purpose = purpose;
        this.setting = setting;
    }

    List<Row> rows(List<WorkGroup> work) {
        return work.stream().flatMap(group -> rows(group).stream()).toList();
    }

    private List<Row> rows(WorkGroup group) {
        Map<String, List<Feature>> along = lines(group, WorkTable::acrossLine);
        Map<String, List<Feature>> across = lines(group, WorkTable::alongLine);
        List<Row> rows = new ArrayList<>();
        (across.size() < along.size() ? across : along)
                .values()
                .forEach(line -> rows.add(row(group, line, rows.isEmpty())));
        return rows;
    }

    private static Map<String, List<Feature>> lines(WorkGroup group, Function<Feature, String> same) {
        Map<String, List<Feature>> lines = new LinkedHashMap<>();
        group.features()
                .forEach(feature -> lines.computeIfAbsent(same.apply(feature), key -> new ArrayList<>())
                        .add(feature));
        return lines;
    }

    /** Features that differ only along the part stand on one line; on an end, those that differ only across it. */
    private static String acrossLine(Feature feature) {
        Range fixed = onFace(feature) ? feature.across() : feature.through();
        Dim middle = onFace(feature) ? feature.middleAcross() : feature.middleThrough();
        return place(feature, fixed, middle).value().toString();
    }

    /** Those of a face that differ only across it, as the holes along an end, where that takes fewer lines. */
    private static String alongLine(Feature feature) {
        return onFace(feature)
                ? place(feature, feature.along(), feature.middleAlong()).value().toString()
                : acrossLine(feature);
    }

    private Row row(WorkGroup group, List<Feature> line, boolean first) {
        Feature sample = line.get(0);
        String kind = sample.kind().words();
        String what = line.size() == 1 ? kind : line.size() + " × " + kind;
        return new Row(
                first ? String.valueOf(group.number()) : "",
                what,
                sample.surface().words(),
                onEnd(sample) && !isInside(sample) ? "" : places(line, Feature::along, Feature::middleAlong),
                onEdge(sample) ? "" : places(line, Feature::across, Feature::middleAcross),
                onFace(sample) ? "" : places(line, Feature::through, Feature::middleThrough),
                first ? size(group) : "",
                first ? figures.of(sample.depth()) + leaning(sample) : "",
                first ? setting.apply(sample.setting()) : "",
                purposes(line));
    }

    private static boolean onFace(Feature feature) {
        return feature.surface() == Surface.FACE_SIDE || feature.surface() == Surface.BACK_SIDE;
    }

    private static boolean onEdge(Feature feature) {
        return feature.surface() == Surface.FACE_EDGE || feature.surface() == Surface.BACK_EDGE;
    }

    private static boolean onEnd(Feature feature) {
        return !onFace(feature) && !onEdge(feature);
    }

    /** A tool that leans into a slanted end enters somewhere along the part too. */
    private static boolean isInside(Feature feature) {
        return feature.aim().isPresent() && !feature.isLeft() || feature.kind() == Feature.Kind.SHOULDER;
    }

    /** Its depth is along the tool; how that leans its setting says. */
    private static String leaning(Feature feature) {
        return feature.aim().isPresent() ? " slanting" : "";
    }

    private static Dim place(Feature feature, Range range, Dim middle) {
        boolean byMiddle = feature.kind() == Feature.Kind.HOLE || feature.kind() == Feature.Kind.SLOT;
        return byMiddle || feature.aim().isPresent() && !feature.isLeft() ? middle : range.from();
    }

    private String places(List<Feature> line, Function<Feature, Range> range, Function<Feature, Dim> middle) {
        Map<Length, Dim> distinct = new LinkedHashMap<>();
        line.stream()
                .map(feature -> place(feature, range.apply(feature), middle.apply(feature)))
                .sorted()
                .forEach(dim -> distinct.putIfAbsent(dim.value(), dim));
        List<Dim> dims = List.copyOf(distinct.values());
        return run(dims, figures);
    }

    /** Places in their order; many in equal steps by the first, the last and the step. */
    static String run(List<Dim> dims, Figures figures) {
        if (dims.size() >= RUN && isEven(dims)) {
            return "<span class=\"keep\">%s</span> to <span class=\"keep\">%s,</span> every <span class=\"keep\">%s</span>"
                    .formatted(
                            figures.of(dims.get(0)),
                            figures.of(dims.get(dims.size() - 1)),
                            figures.of(dims.get(1).minus(dims.get(0))));
        }
        return dims.stream().map(figures::of).collect(kept(","));
    }

    /** What stands between two figures stays on the line of the first. */
    private static Collector<CharSequence, ?, String> kept(String between) {
        return Collectors.joining(between + "</span> <span class=\"keep\">", "<span class=\"keep\">", "</span>");
    }

    private static boolean isEven(List<Dim> dims) {
        Set<Length> steps = new LinkedHashSet<>();
        for (int i = 1; i < dims.size(); i++) {
            steps.add(dims.get(i).value().minus(dims.get(i - 1).value()));
        }
        return steps.size() == 1;
    }

    private String size(WorkGroup group) {
        String sizes = group.sizes().stream().map(figures::of).collect(kept("\u00a0×"));
        String round = group.radius()
                .map(radius -> ", corners of radius " + figures.of(radius))
                .orElse("");
        String slope = group.sample()
                .taper()
                .map(taper -> ", narrowing to %s at the %s"
                        .formatted(
                                figures.of(group.sample().acrossNarrow().size()),
                                taper.narrow().words()))
                .orElse("");
        return (group.sample().kind() == Feature.Kind.HOLE ? "dia. " : "") + sizes + round + slope;
    }

    private String purposes(List<Feature> line) {
        return line.stream().map(Feature::owner).map(purpose).distinct().collect(Collectors.joining(", "));
    }
}
