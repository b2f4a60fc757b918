package scantling.joinery;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.feature.Surface;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/**
 * Two placed parts where a joint brings them together.
 *
 * @param joint what says so
 * @param entering the part that enters, or lies against, the other
 * @param receiving the other
 * @param side the side of the entering part that meets the other
 * @param shared what both boxes hold; without thickness across the side where they only touch
 * @param thin the direction across the thinner way of the place where they meet
 * @param thinSize how wide the place is that way
 * @param runSize how long it is the other way
 * @param depth how deep the entering part is in the other; zero where they only touch
 * @param middle half way across the thin way
 */
record Meeting(
        Joint joint,
        Part entering,
        Part receiving,
        Side side,
        Box shared,
        Axis thin,
        Dim thinSize,
        Dim runSize,
        Dim depth,
        Dim middle) {
    /** Where the two meet; nothing when they are apart by more than a gap that the bench closes. */
    static Optional<Meeting> find(Joint joint, Part entering, Part receiving, Dim gap) {
        Box shared = shared(entering.box(), receiving.box());
        Optional<Side> best = Optional.empty();
        for (Side side : Side.values()) {
            if (meets(entering.box(), receiving.box(), shared, side, gap.value())
                    && (best.isEmpty() || reach(shared, side).compareTo(reach(shared, best.get())) < 0)) {
                best = Optional.of(side);
            }
        }
        return best.or(() -> across(entering, shared)).map(side -> of(joint, entering, receiving, side, shared));
    }

    private static Meeting of(Joint joint, Part entering, Part receiving, Side side, Box shared) {
        Dim plane = receiving.box().plane(side.opposite());
        boolean touching = reach(shared, side).tenthNanometres() <= 0;
        Box place = touching ? shared.with(side, plane).with(side.opposite(), plane) : shared;
        Axis thin = thin(entering, receiving, side, shared);
        Dim thinSize = place.extent(thin);
        return new Meeting(
                joint,
                entering,
                receiving,
                side,
                place,
                thin,
                thinSize,
                place.extent(thin.third(side.axis())),
                place.extent(side.axis()),
                place.plane(Side.of(thin, false)).plus(thinSize.half()));
    }

    /** What both hold, plane for plane from one of the two, so that sums stay short; may be empty. */
    static Box shared(Box a, Box b) {
        Box shared = a;
        for (Side side : Side.values()) {
            int order = a.plane(side).compareTo(b.plane(side));
            if (side.isFar() ? order > 0 : order < 0) {
                shared = shared.with(side, b.plane(side));
            }
        }
        return shared;
    }

    /** How far a box reaches; less than nothing where its planes are past each other. */
    private static Length reach(Box box, Side side) {
        return box.plane(Side.of(side.axis(), true))
                .value()
                .minus(box.plane(Side.of(side.axis(), false)).value());
    }

    /** Whether the first goes into the second, or lies against it, with this side. */
    private static boolean meets(Box a, Box b, Box shared, Side side, Length gap) {
        for (Axis axis : Axis.values()) {
            if (axis != side.axis() && !reach(shared, Side.of(axis, true)).isPositive()) {
                return false;
            }
        }
        int outside = a.plane(side.opposite()).compareTo(b.plane(side.opposite()));
        boolean comesFromOutside = side.isFar() ? outside < 0 : outside > 0;
        Length into = reach(shared, side);
        return comesFromOutside && into.negated().compareTo(gap) <= 0;
    }

    /** Two that cross: the far end of the first stands for where it goes in. */
    private static Optional<Side> across(Part entering, Box shared) {
        return shared.isEmpty()
                ? Optional.empty()
                : Optional.of(Side.of(entering.lie().length(), true));
    }

    private static Axis thin(Part entering, Part receiving, Side side, Box shared) {
        Axis normal = side.axis();
        if (entering.lie().thickness() != normal) {
            return entering.lie().thickness();
        }
        if (receiving.lie().thickness() != normal) {
            return receiving.lie().thickness();
        }
        Axis first = entering.lie().length();
        Axis second = entering.lie().width();
        return shared.extent(first).compareTo(shared.extent(second)) < 0 ? first : second;
    }

    /** The direction along which biscuits, dowels and tenons stand in a row. */
    Axis run() {
        return thin.third(side.axis());
    }

    /** Where the surface of the receiving part is. */
    Dim plane() {
        return receiving.box().plane(side.opposite());
    }

    /** Where the place begins along a direction. */
    Dim start(Axis axis) {
        return shared.plane(Side.of(axis, false));
    }

    /** Where it ends. */
    Dim end(Axis axis) {
        return shared.plane(Side.of(axis, true));
    }

    /** How far wood reaches behind the surface where they meet. */
    Dim room(boolean inReceiving) {
        Box box = inReceiving ? receiving.box() : entering.box();
        if (inReceiving) {
            return box.extent(side.axis());
        }
        Dim far = box.plane(side.opposite());
        return side.isFar() ? plane().minus(far) : far.minus(plane());
    }

    /** A box that starts at the surface of the receiving part and goes so deep into one of the two. */
    Box pocket(Box across, Dim deep, boolean intoReceiving) {
        Side down = intoReceiving ? side : side.opposite();
        Dim floor = down.isFar() ? plane().plus(deep) : plane().minus(deep);
        return across.with(down, floor).with(down.opposite(), plane());
    }

    /** The rectangle between planes along the row and across it, as a box to make pockets of. */
    Box across(Dim runFrom, Dim runTo, Dim thinFrom, Dim thinTo) {
        return shared.with(Side.of(run(), false), runFrom)
                .with(Side.of(run(), true), runTo)
                .with(Side.of(thin, false), thinFrom)
                .with(Side.of(thin, true), thinTo);
    }

    /** The part. */
    Part part(boolean isReceiving) {
        return isReceiving ? receiving : entering;
    }

    /** The surface of one of the two that meets the other. */
    Surface surface(boolean ofReceiving) {
        return ofReceiving ? Surface.of(side.opposite(), receiving.lie()) : Surface.of(side, entering.lie());
    }

    /** The side, across the thin way, where both parts are flush, so that a fence can ride there on both. */
    Optional<Side> flush() {
        return Arrays.stream(Side.values())
                .filter(each -> each.axis() == thin)
                .filter(each ->
                        entering.box().plane(each).equals(receiving.box().plane(each)))
                .min(Comparator.comparing(each -> (entering.shows().contains(each) ? 0 : 1)
                        + (receiving.shows().contains(each) ? 0 : 1)));
    }

    /** What a fence rides on when a part is worked across the thin way: where both are flush, else its own mark. */
    Side rides(Part part) {
        return flush().orElseGet(() -> thin == part.lie().thickness()
                ? part.lie().faceSide()
                : thin == part.lie().width()
                        ? part.lie().faceEdge()
                        : part.lie().nearEnd());
    }

    /** How far a plane lies inside a side of a part. */
    static Dim from(Side mark, Part part, Dim plane) {
        Dim edge = part.box().plane(mark);
        return mark.isFar() ? edge.minus(plane) : plane.minus(edge);
    }
}
