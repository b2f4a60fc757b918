package scantling.drawing;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import scantling.construct.Assembly;
import scantling.construct.Opening;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.LengthFormat;
import scantling.space.Axis;
import scantling.space.Side;

/**
 * The piece seen squarely: from before it, from its right, from above, and cut through from front to back. What is
 * hidden is not drawn. All four share one scale.
 */
public final class Views {
    private static final double DIM_STEP = 30;
    /** For two views beside each other, without their dimension lines. */
    private static final double PAPER_PAIR = 126;

    private static final double PAPER_HEIGHT = 100;
    /** A piece longer than this, in millimetres, has each view in a row of its own. */
    private static final double LONG_PIECE = 2500;

    private static final double PAPER_FULL = 150;

    private static final List<Double> CUTS = List.of(0.5, 0.4, 0.6, 0.3, 0.7, 0.25, 0.75);

    private final Assembly assembly;
    private final LengthFormat format;
    private final Scale scale;

    /** Views of a piece, its figures written in a format, at the largest usual scale that two fit beside each other. */
    public Views(Assembly assembly, LengthFormat format) {
        this.assembly = assembly;
        this.format = format;
        double wide = size(assembly.piece().width());
        double deep = size(assembly.piece().depth());
        Scale level =
                areLong() ? Scale.fitting(Math.max(wide, deep), PAPER_FULL) : Scale.fitting(wide + deep, PAPER_PAIR);
        this.scale = level.and(Scale.fitting(size(assembly.piece().height()), PAPER_HEIGHT));
    }

    private Views(Assembly assembly, LengthFormat format, Scale scale) {
        this.assembly = assembly;
        this.format = format;
        this.scale = scale;
    }

    /** The same at the next smaller usual scale. */
    public Views smaller() {
        return new Views(assembly, format, scale.smaller());
    }

    private static double size(Dim dim) {
        return Math.max(dim.value().toMillimetres(), 1);
    }

    /** Whether the piece is so long that each view has a row of its own. */
    public boolean areLong() {
        return assembly.piece().width().value().toMillimetres() > LONG_PIECE;
    }

    /** Front, section, side and top, in this order. */
    public List<Drawing> all() {
        return List.of(front(), section(), side(), top());
    }

    /** From before it, with the overall size and the openings. */
    public Drawing front() {
        return squarely(View.FRONT, "Front");
    }

    /** From its right. */
    public Drawing side() {
        return squarely(View.SIDE, "Side, front at the left");
    }

    /** From above. */
    public Drawing top() {
        return squarely(View.TOP, "From above, front at the foot");
    }

    /** Cut through from front to back between the upright parts, the right-hand piece taken away. */
    public Drawing section() {
        Sketch sketch = new Sketch(format);
        double cut = cutPlane();
        List<Solid> left = View.SIDE.solids(assembly).stream()
                .filter(solid -> solid.least(Axis.ACROSS) < cut)
                .toList();
        left.stream()
                .filter(solid -> solid.most(Axis.ACROSS) <= cut)
                .forEach(solid -> View.SIDE.paint(sketch, solid, units()));
        left.stream().filter(solid -> solid.most(Axis.ACROSS) > cut).forEach(solid -> cut(sketch, solid.part()));
        ground(sketch, View.SIDE);
        overall(sketch, View.SIDE);
        openings(sketch, View.SIDE);
        return sketch.finish("Section, front at the left", scale);
    }

    /** What the hatches of the section mean; nothing where it cuts nothing. */
    public Optional<Drawing> legend() {
        double cut = cutPlane();
        Set<CutFace> faces = View.SIDE.solids(assembly).stream()
                .filter(solid -> solid.least(Axis.ACROSS) < cut && solid.most(Axis.ACROSS) > cut)
                .map(solid -> CutFace.of(solid.part()))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(CutFace.class)));
        return faces.isEmpty() ? Optional.empty() : Optional.of(HatchLegend.of(faces));
    }

    private Drawing squarely(View view, String title) {
        Sketch sketch = new Sketch(format);
        view.solids(assembly).forEach(solid -> view.paint(sketch, solid, units()));
        if (view != View.TOP) {
            ground(sketch, view);
        }
        overall(sketch, view);
        if (view == View.FRONT) {
            openings(sketch, view);
        }
        return sketch.finish(title, scale);
    }

    private void cut(Sketch sketch, Part part) {
        Hatch.Field field = View.SIDE.field(part, units());
        List<Spot> edge = List.of(
                new Spot(field.left(), field.top()),
                new Spot(field.right(), field.top()),
                new Spot(field.right(), field.bottom()),
                new Spot(field.left(), field.bottom()));
        sketch.shape(edge, Sketch.OUTLINE);
        CutFace.of(part).hatch(sketch, field);
        sketch.edge(edge, Sketch.OUTLINE, false);
    }

    /** Where no upright part would be cut along its face, as near the middle as there is such a place. */
    private double cutPlane() {
        double width = assembly.piece().width().value().toMillimetres();
        return CUTS.stream()
                .map(share -> share * width)
                .filter(plane -> assembly.parts().stream().noneMatch(part -> stands(part, plane)))
                .findFirst()
                .orElse(CUTS.get(0) * width);
    }

    private static boolean stands(Part part, double plane) {
        return part.lie().thickness() == Axis.ACROSS
                && part.box().left().value().toMillimetres() <= plane
                && part.box().right().value().toMillimetres() >= plane;
    }

    private void ground(Sketch sketch, View view) {
        double right = size(view.level());
        sketch.line(new Spot(-12, 0), new Spot(right + 12, 0), 2.4);
    }

    private void overall(Sketch sketch, View view) {
        double right = size(view.level());
        double high = -size(view.upright());
        Dimension.level(sketch, 0, right, high, high - DIM_STEP * 0.8, dim(view.level()));
        Dimension.upright(sketch, 0, high, 0, -DIM_STEP, dim(view.upright()));
    }

    private void openings(Sketch sketch, View view) {
        Side level = Side.of(view.level(), true);
        List<Opening> openings = undivided();
        Dim last = openings.stream()
                .map(opening -> opening.box().plane(level))
                .max(Comparator.naturalOrder())
                .orElse(Dim.ZERO);
        Stream<Opening> column =
                openings.stream().filter(opening -> opening.box().plane(level).equals(last));
        smallest(column, view.upright()).forEach(opening -> {
            Hatch.Field field = field(opening, view);
            Dimension.uprightInColumn(
                    sketch,
                    field.bottom(),
                    field.top(),
                    field.right(),
                    size(view.level()) + DIM_STEP,
                    opening.height());
        });
        Dim lowest = openings.stream()
                .map(opening -> opening.box().bottom())
                .min(Comparator.naturalOrder())
                .orElse(Dim.ZERO);
        Stream<Opening> row =
                openings.stream().filter(opening -> opening.box().bottom().equals(lowest));
        smallest(row, view.level()).forEach(opening -> {
            Hatch.Field field = field(opening, view);
            Dim dim = view.level() == Axis.ACROSS ? opening.width() : opening.depth();
            Dimension.levelInRow(sketch, field.left(), field.right(), DIM_STEP, dim);
        });
    }

    /** The openings that no other divides. */
    private List<Opening> undivided() {
        return assembly.openings().stream()
                .filter(opening ->
                        assembly.openings().stream().noneMatch(other -> other != opening && isWithin(other, opening)))
                .toList();
    }

    private static boolean isWithin(Opening inner, Opening outer) {
        return List.of(Axis.ACROSS, Axis.UP).stream()
                .allMatch(axis -> start(inner, axis).compareTo(start(outer, axis)) >= 0
                        && end(inner, axis).compareTo(end(outer, axis)) <= 0);
    }

    /** One opening to a stretch, and none that another divides: its sizes would lie over theirs. */
    private static List<Opening> smallest(Stream<Opening> openings, Axis axis) {
        Map<String, Opening> first = new LinkedHashMap<>();
        openings.forEach(opening -> first.putIfAbsent(
                start(opening, axis).value() + " to " + end(opening, axis).value(), opening));
        return first.values().stream()
                .filter(opening -> first.values().stream()
                        .noneMatch(other -> other != opening
                                && start(other, axis).compareTo(start(opening, axis)) >= 0
                                && end(other, axis).compareTo(end(opening, axis)) <= 0))
                .toList();
    }

    private static Dim start(Opening opening, Axis axis) {
        return opening.box().plane(Side.of(axis, false));
    }

    private static Dim end(Opening opening, Axis axis) {
        return opening.box().plane(Side.of(axis, true));
    }

    private Hatch.Field field(Opening opening, View view) {
        return new Hatch.Field(
                mm(opening.box().plane(Side.of(view.level(), false))),
                -mm(opening.box().plane(Side.of(view.upright(), true))),
                mm(opening.box().plane(Side.of(view.level(), true))),
                -mm(opening.box().plane(Side.of(view.upright(), false))));
    }

    private double mm(Dim dim) {
        return dim.value().toMillimetres() * units();
    }

    private double size(Axis axis) {
        return mm(dim(axis));
    }

    private Dim dim(Axis axis) {
        return switch (axis) {
            case ACROSS -> assembly.piece().width();
            case DEEP -> assembly.piece().depth();
            case UP -> assembly.piece().height();
        };
    }

    private double units() {
        return scale.unitsPerMm();
    }
}
