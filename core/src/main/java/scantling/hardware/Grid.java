package scantling.hardware;

import java.util.Optional;
import scantling.construct.Fitting;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.stock.HardwareProfiles;

/**
 * The rows of holes of the 32 mm system in one case, laid out on its side: {@code height = 2 start + 32 k}, so that the
 * side drills the same either way up, with the start as near to the usual one as that allows.
 *
 * @param panel the side
 * @param start from either end of it to the first row
 * @param pitches whole pitches between the first row and the last
 * @param pitch from row to row
 */
record Grid(Part panel, Dim start, long pitches, Dim pitch) {
    /** The grid that a fitting is laid out on, when its case is drilled on the system. */
    static Optional<Grid> of(Fitting fitting, Workings workings) {
        return Optional.ofNullable(fitting.words().get("panel"))
                .flatMap(workings::find)
                .map(panel -> of(panel, workings.profiles()));
    }

    static Grid of(Part panel, HardwareProfiles profiles) {
        Dim pitch = profiles.of(HardwareProfiles.SYSTEM, "pitch");
        Dim usual = profiles.of(HardwareProfiles.SYSTEM, "first hole");
        double between = mm(panel.length()) - 2 * mm(usual);
        long pitches = Math.max(0, Math.round(between / mm(pitch)));
        return new Grid(panel, panel.length().minus(pitch.times(pitches)).half(), pitches, pitch);
    }

    /** The height of the first row above the floor. */
    Dim first() {
        return panel.box().bottom().plus(start);
    }

    /** The row nearest to a height. */
    Dim nearest(Dim height) {
        long rows = Math.round((mm(height) - mm(first())) / mm(pitch));
        return first().plus(pitch.times(Math.max(0, Math.min(pitches, rows))));
    }

    /** Whether a height lies on a row. */
    boolean has(Dim height) {
        Length off = height.minus(nearest(height)).value().abs();
        return off.compareTo(Length.mm("0.1")) <= 0;
    }

    private static double mm(Dim dim) {
        return dim.value().toMillimetres();
    }
}
