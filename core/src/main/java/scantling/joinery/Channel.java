package scantling.joinery;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Lie;
import scantling.space.Side;

/** What channels of every kind share: where they end, how the router stands. */
final class Channel {
    private Channel() {}

    /** Across which direction a channel is as wide as the entering part is thick. */
    static Axis width(Meeting at) {
        Axis thick = at.entering().lie().thickness();
        return thick == at.side().axis() ? at.thin() : thick;
    }

    /** The air that a joint leaves beyond what enters. */
    static Dim clearance(Meeting at, Dim deep) {
        Dim more = deep.minus(at.depth());
        return more.value().isPositive() ? more : Dim.ZERO;
    }

    /** Whether a channel along a direction runs out at one end of the receiving part. */
    static boolean runsOut(Meeting at, Box box, Side end) {
        return beyond(at, box, end).compareTo(Dim.ZERO) <= 0;
    }

    /** How much wood is left between a box and one side of the receiving part. */
    static Dim beyond(Meeting at, Box box, Side end) {
        Dim plane = at.receiving().box().plane(end);
        return end.isFar() ? plane.minus(box.plane(end)) : box.plane(end).minus(plane);
    }

    /** A box with one end moved out by a distance, but no further than the receiving part's own. */
    static Box longer(Meeting at, Box box, Side end, Dim by) {
        Dim beyond = beyond(at, box, end);
        if (!by.value().isPositive() || !beyond.value().isPositive()) {
            return box;
        }
        return box.inset(end, Dim.ZERO.minus(by.compareTo(beyond) <= 0 ? by : beyond));
    }

    /** The mark of a part across a direction. */
    static Side mark(Part part, Axis axis) {
        Lie lie = part.lie();
        if (axis == lie.thickness()) {
            return lie.faceSide();
        }
        return axis == lie.width() ? lie.faceEdge() : lie.nearEnd();
    }

    /** How far the nearer wall of a channel is from the mark that a fence rides on. */
    static Map<String, Dim> fence(Meeting at, Box box, Axis across) {
        Side mark = mark(at.receiving(), across);
        Map<String, Dim> sizes = new LinkedHashMap<>();
        sizes.put(
                "bit from " + Bench.words(mark, at.receiving().lie()),
                Meeting.from(mark, at.receiving(), box.plane(mark)));
        return sizes;
    }

    /** What to do when no bit is as wide as the channel. */
    static List<String> cuts(Bench bench, Dim bit, Dim wide) {
        if (bit.equals(wide)) {
            return List.of();
        }
        return List.of("The bit is %s, the channel %s: move the fence by %s for the second wall."
                .formatted(bench.say(bit), bench.say(wide), bench.sayUnit(wide.minus(bit))));
    }

    /** The widest bit that goes in, or the thinnest there is. */
    static Dim bit(Bench bench, Dim wide) {
        return Bits.widestIn(bench, wide).orElse(bench.rules().bits().get(0).diameter());
    }

    /** The radius that the ends of a channel come out with: none where it runs out at both. */
    static Optional<Dim> ends(Meeting at, Box box, Axis run, Dim bit) {
        boolean through = runsOut(at, box, Side.of(run, false)) && runsOut(at, box, Side.of(run, true));
        return through ? Optional.empty() : Optional.of(bit.half());
    }
}
