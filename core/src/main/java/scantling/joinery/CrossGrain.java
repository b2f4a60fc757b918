package scantling.joinery;

import java.util.List;
import java.util.Optional;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Making;
import scantling.measure.Rounding;
import scantling.piece.Material;
import scantling.timber.Movement;
import scantling.timber.Sawn;
import scantling.timber.SpeciesTable;

/**
 * A wide board tenoned into one whose grain runs across it, as a table top into its breadboard end: only the tenon in the
 * middle is glued, and the mortises of the others are longer by what their tenons travel.
 */
final class CrossGrain {
    private CrossGrain() {}

    /** Whether the entering part moves along the joint and the other does not. */
    static boolean is(Meeting at) {
        return at.entering().material().kind() == Material.Kind.SOLID
                && at.entering().lie().width() == at.run()
                && at.receiving().lie().length() == at.run();
    }

    /** The number of tenons: an odd one, so that one stands in the middle. */
    static int odd(int count) {
        return count % 2 == 0 ? count + 1 : count;
    }

    /**
     * How much longer a mortise is at either end than its tenon: what the tenon's farther end travels from driest to
     * dampest while the middle one stays. Tangential movement, which is the greater, counts (Wood Handbook Eq. 13-2).
     *
     * @param tenons from where to where each stands, as offsets, an odd number
     */
    static Dim travel(Meeting at, Bench bench, List<Dim[]> tenons, int number) {
        if (number == tenons.size() / 2) {
            return Dim.ZERO;
        }
        Dim[] middle = tenons.get(tenons.size() / 2);
        Dim fixed = middle[0].plus(middle[1]).half();
        Dim[] own = tenons.get(number);
        Dim far = number < tenons.size() / 2 ? fixed.minus(own[0]) : own[1].minus(fixed);
        return travel(at, bench, far);
    }

    /** What a place so far from the middle travels. */
    static Dim travel(Meeting at, Bench bench, Dim far) {
        Swing swing = bench.swing();
        Optional<Dim> change = SpeciesTable.standard()
                .find(at.entering().material().of())
                .flatMap(wood -> Movement.change(far, wood, Sawn.FLAT, swing.driest(), swing.dampest()));
        return change.filter(dim -> dim.value().isPositive())
                .orElseGet(() -> Dim.worked(
                        Length.ofMillimetres(Row.mm(far) / 100),
                        "a hundredth, where the movement of the wood is not known",
                        new Making.Input(0.01, far)))
                .rounded(bench.rules().length("round").value(), Rounding.UP);
    }

    /** What to know of one mortise. */
    static String note(Bench bench, Dim travel) {
        return travel.value().isPositive()
                ? "Longer than its tenon by %s at both ends, for movement: no glue here."
                        .formatted(bench.sayUnit(travel))
                : "The middle one: it fits its tenon and is glued.";
    }
}
