package scantling.joinery;

import java.util.Optional;
import scantling.construct.Part;
import scantling.feature.Withdrawal;
import scantling.measure.Dim;
import scantling.piece.Material;
import scantling.timber.Species;
import scantling.timber.SpeciesTable;
import scantling.timber.Table;

/**
 * What is known of how much a joint bears. Only tenons have a published test with tolerance limits; an estimate is never
 * above the lowest limit of the nearest tested joint, and is made less in proportion for whatever is smaller or weaker.
 */
final class Strengths {
    /** Where nothing was published. */
    static final String UNKNOWN = " Strength: no published test with limits to rest on.";

    private static final Table TESTS = Table.read("joinery/strengths.csv");

    private Strengths() {}

    /** What a tenon bears in bending, as a sentence. @param thick of the tenon @param wide along the joint @param into the other part */
    static String tenon(Meeting at, Dim thick, Dim wide, Dim into) {
        Optional<Species> rail = species(at.entering());
        Optional<Species> stile = species(at.receiving());
        if (rail.isEmpty() || stile.isEmpty()) {
            return UNKNOWN;
        }
        Table.Row tested = TESTS.getRow("joint", nearest(rail.get()));
        double weaker = Math.min(shear(rail.get()), shear(stile.get()));
        double share = Math.min(1, Row.mm(into) / tested.number("long_mm"))
                * Math.min(1, Row.mm(wide) / tested.number("high_mm"))
                * Math.min(1, Row.mm(thick) / tested.number("thick_mm"))
                * Math.min(1, Row.mm(at.runSize()) / tested.number("rail_mm"))
                * Math.min(1, weaker / tested.number("shear_mpa"));
        if (!(share > 0)) {
            return UNKNOWN;
        }
        return " Strength: an estimate of %.0f N m in bending; the nearest tested joint, a %s, bore %.0f on average (standard deviation %.0f) and %.0f at its lower tolerance limit, here made less for size and wood. Not a promise."
                .formatted(
                        Math.floor(share * tested.number("limit_nm")),
                        tested.text("joint"),
                        tested.number("mean_nm"),
                        tested.number("deviation_nm"),
                        tested.number("limit_nm"));
    }

    /** What a screw holds in side grain. @param thread in the other part */
    static String screw(Part into, boolean endGrain, Dim shank, Dim thread) {
        return Optional.of(into.material())
                .filter(material -> !endGrain)
                .flatMap(material -> Withdrawal.of(material, shank, thread))
                .map(load -> " Strength: each pulls out at about %.0f N in test, which scatters widely; count on %.0f."
                        .formatted(load.ultimate(), Math.floor(load.design())))
                .orElse(UNKNOWN);
    }

    /** White oak was tested by itself; every other wood is held against red oak. */
    private static String nearest(Species species) {
        return species.name().equals("white oak") ? "tenon in white oak" : "tenon in red oak";
    }

    private static double shear(Species species) {
        return species.mechanics().shear().orElse(0);
    }

    private static Optional<Species> species(Part part) {
        return part.material().kind() == Material.Kind.SHEET
                ? Optional.empty()
                : SpeciesTable.standard().find(part.material().of());
    }
}
