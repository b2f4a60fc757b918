package scantling.checks.lasting;

import java.util.Optional;
import scantling.construct.Part;
import scantling.piece.Conditions;

/**
 * Moisture content of the wood when its parts are made.
 *
 * @param conditions what was measured in the wood
 * @param usual % where nothing was
 */
record Wetness(Conditions conditions, double usual) {
    static Wetness measured(Conditions conditions) {
        return new Wetness(conditions, Figures.of("shop moisture"));
    }

    static Wetness everywhere(double moisture) {
        return new Wetness(Conditions.NONE, moisture);
    }

    double of(Part part) {
        return find(part).orElse(usual);
    }

    Optional<Double> find(Part part) {
        return conditions.findMoisture(part.material().name());
    }
}
