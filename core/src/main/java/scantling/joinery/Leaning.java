package scantling.joinery;

import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.feature.Surface;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.EndCut;
import scantling.space.Plane;
import scantling.space.Point;
import scantling.space.Side;

/**
 * A straight part that meets the face of one that leans.
 *
 * @param at both, the straight one entering; its sizes are those of the straight part, so that rules can be asked
 * @param face the leaning face, in the piece
 */
record Leaning(Meeting at, Plane face) {
    /** Further from the leaning face than this no end was meant for it: from memory, the longest usual tenon. */
    private static final double FAR = 120;

    /** Whether one of two parts leans and the other does not, so that their boxes do not tell where they meet. */
    static boolean is(Part one, Part other) {
        return !one.turn().equals(other.turn());
    }

    /** Where they meet; nothing unless the receiving one alone leans and an end of the other comes to it. */
    static Optional<Leaning> find(Joint joint, Part entering, Part receiving) {
        if (entering.turn().isPresent()
                || receiving.turn().isEmpty()
                || entering.lie().length() == receiving.lie().length()) {
            return Optional.empty();
        }
        Axis along = entering.lie().length();
        return Stream.of(Side.of(along, false), Side.of(along, true))
                .min(Comparator.comparingDouble(end -> away(entering, receiving, end)))
                .filter(end -> away(entering, receiving, end) < FAR)
                .map(end -> new Leaning(meeting(joint, entering, receiving, end), face(receiving, end)));
    }

    private static Plane face(Part receiving, Side end) {
        return Plane.of(receiving.box(), end.opposite(), receiving.turn());
    }

    private static double away(Part entering, Part receiving, Side end) {
        double met = face(receiving, end).at(end.axis(), middle(entering));
        return Math.abs(met - Row.mm(entering.box().plane(end)));
    }

    private static Point middle(Part part) {
        Point middle = new Point(0, 0, 0);
        for (Axis axis : Axis.values()) {
            middle = middle.with(
                    axis,
                    (Row.mm(part.box().plane(Side.of(axis, false)))
                                    + Row.mm(part.box().plane(Side.of(axis, true))))
                            / 2);
        }
        return middle;
    }

    private static Meeting meeting(Joint joint, Part entering, Part receiving, Side end) {
        Axis thin = entering.lie().thickness();
        Dim thick = entering.box().extent(thin);
        Box wood = joint.overlap().orElse(entering.box());
        return new Meeting(
                joint,
                entering,
                receiving,
                end,
                wood,
                thin,
                thick,
                entering.box().extent(entering.lie().width()),
                joint.sizes().getOrDefault("length", Dim.ZERO),
                entering.box().plane(Side.of(thin, false)).plus(thick.half()));
    }

    /** The end of the straight part. */
    Side end() {
        return at.side();
    }

    Axis along() {
        return at.side().axis();
    }

    Axis width() {
        return at.entering().lie().width();
    }

    /** The place on the leaning face that the straight part comes to at a height in its width and a depth in its thickness. */
    Point met(double wide, double thick) {
        Point line = new Point(0, 0, 0).with(width(), wide).with(at.thin(), thick);
        return line.with(along(), face.at(along(), line));
    }

    /** Toward the leaning part, along the straight one. */
    Point forward() {
        return unit(along(), end().isFar() ? 1 : -1);
    }

    /** Straight into the leaning face. */
    Point inward() {
        return face.normal().times(-1);
    }

    /** Along the face, over the width of the straight part. */
    Point overWidth() {
        Point way = unit(width(), 1).plus(unit(along(), face.slope(along(), width())));
        return way.times(1 / way.length());
    }

    static Point unit(Axis axis, double size) {
        return new Point(0, 0, 0).with(axis, size);
    }

    /** The surface of the leaning part that is met. */
    Surface surface() {
        return Surface.of(end().opposite(), at.receiving().lie());
    }

    /** The end of the straight part as a surface. */
    Surface endSurface() {
        return Surface.of(end(), at.entering().lie());
    }

    /** How that end, and its shoulder, is sawn. */
    EndCut cut() {
        return end() == at.entering().lie().nearEnd()
                ? at.entering().ends().near()
                : at.entering().ends().far();
    }

    /** Where the middle of the straight part's thickness is. */
    double middle() {
        return Row.mm(at.middle());
    }

    /** Where its width begins. */
    double start() {
        return Row.mm(at.entering().box().plane(Side.of(width(), false)));
    }

    /** From where the width begins to a place in it. */
    double wide(Dim offset) {
        return start() + Row.mm(offset);
    }

    /** A length along the straight part from its near end to where a corner of its shoulder meets the face. */
    Dim corner(boolean backEdge, boolean backSide) {
        Part part = at.entering();
        Side edge = part.lie().faceEdge();
        Side side = part.lie().faceSide();
        Point met = met(
                Row.mm(part.box().plane(backEdge ? edge.opposite() : edge)),
                Row.mm(part.box().plane(backSide ? side.opposite() : side)));
        return Frame.placed(new Frame(part).marks(met).along(), part.length());
    }

    /** The sizes of saw or jig that a slanting end asks for. */
    Map<String, Double> angles() {
        return SawnEnds.angles(cut());
    }

    /** A length in millimetres that is only worked out. */
    static Dim worked(double millimetres, String rule) {
        return Dim.worked(Length.ofMillimetres(Math.round(millimetres * 1e4) / 1e4), rule);
    }
}
