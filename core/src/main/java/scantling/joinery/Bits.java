package scantling.joinery;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import scantling.measure.Dim;

/** Picks straight bits. */
final class Bits {
    private Bits() {}

    /** The bit nearest to a width, none thicker than the most. */
    static Optional<Dim> nearest(Bench bench, Dim wanted, Dim most) {
        return all(bench).stream()
                .filter(bit -> bit.compareTo(most) <= 0)
                .min(Comparator.comparing(bit -> bit.minus(wanted).value().abs()));
    }

    /** The widest bit that goes into a channel. */
    static Optional<Dim> widestIn(Bench bench, Dim channel) {
        return all(bench).stream().filter(bit -> bit.compareTo(channel) <= 0).max(Comparator.naturalOrder());
    }

    private static List<Dim> all(Bench bench) {
        return bench.rules().bits().stream().map(JointRules.Bit::diameter).toList();
    }
}
