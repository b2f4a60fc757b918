package scantling.checks.lasting;

import java.util.Locale;
import java.util.Optional;
import scantling.construct.Part;
import scantling.piece.Conditions;
import scantling.timber.Sawn;

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

    /** How its board was sawn; mixed where nobody says. */
    Sawn sawn(Part part) {
        return Sawn.valueOf(
                conditions.sawn().getOrDefault(part.material().name(), "mixed").toUpperCase(Locale.ROOT));
    }

    double of(Part part) {
        return find(part).orElse(usual);
    }

    Optional<Double> find(Part part) {
        return conditions.findMoisture(part.material().name());
    }
}
