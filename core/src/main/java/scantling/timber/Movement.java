package scantling.timber;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Making;
import scantling.timber.Estimate.Refused;

/**
 * Swelling and shrinking across the grain between two moisture contents. Within 6 to 14 % the published coefficients are
 * used (Wood Handbook Eq. 13-2), beyond that the total shrinkage (Eq. 13-3). See docs/method/moisture-and-movement.md.
 */
public final class Movement {
    private static final String LINEAR = "Wood Handbook Eq. 13-2";
    private static final String WIDE = "Wood Handbook Eq. 13-3";
    private static final double FROM = Constants.of("movement from");
    private static final double TO = Constants.of("movement to");
    private static final double SATURATION = Constants.FIBRE_SATURATION;

    private Movement() {}

    /**
     * Change for each unit of width; positive swells. Refused when the table knows neither coefficient nor shrinkage, or
     * for a moisture content that cannot be.
     *
     * @param from moisture content in % at which the width holds
     * @param to moisture content in % that it comes to
     */
    public static Estimate strain(Species species, Sawn sawn, double from, double to) {
        OptionalDouble coefficient = species.shrinkage().coefficient(sawn);
        OptionalDouble shrinkage = species.shrinkage().percent(sawn);
        boolean narrow = isLinear(from) && isLinear(to);
        if (coefficient.isPresent() && (narrow || shrinkage.isEmpty())) {
            return linear(coefficient.getAsDouble(), from, to);
        }
        return shrinkage.isPresent()
                ? wide(shrinkage.getAsDouble(), from, to)
                : new Refused("No movement data is known for %s; give its shrinkage, or name a wood like it."
                        .formatted(species.name()));
    }

    private static boolean isLinear(double moisture) {
        return moisture >= FROM && moisture <= TO;
    }

    /** Change for each unit of width by a coefficient per 1 % moisture, Eq. 13-2; a caution outside 6 to 14 %. */
    public static Estimate linear(double coefficient, double from, double to) {
        return checked(from, to).orElseGet(() -> {
            List<String> cautions = saturationCautions(from, to);
            if (!isLinear(from) || !isLinear(to)) {
                cautions.add("The coefficient holds from %s to %s %% moisture, not for %s to %s %%."
                        .formatted(Moisture.plain(FROM), Moisture.plain(TO), Moisture.plain(from), Moisture.plain(to)));
            }
            return new Estimate.Known(coefficient * (held(to) - held(from)), LINEAR, cautions);
        });
    }

    /** Change for each unit of width by the total shrinkage in % from green to ovendry, Eq. 13-3. */
    public static Estimate wide(double shrinkagePercent, double from, double to) {
        return checked(from, to).orElseGet(() -> {
            double divisor = 100 * SATURATION / shrinkagePercent - SATURATION + held(from);
            return new Estimate.Known((held(to) - held(from)) / divisor, WIDE, saturationCautions(from, to));
        });
    }

    // Above fibre saturation the cells are full and wood moves no more.
    private static double held(double moisture) {
        return Math.min(moisture, SATURATION);
    }

    private static List<String> saturationCautions(double from, double to) {
        List<String> cautions = new ArrayList<>();
        if (Math.max(from, to) > SATURATION) {
            cautions.add("Above %s %% moisture (fibre saturation) wood does not move; %s %% was taken."
                    .formatted(Moisture.plain(SATURATION), Moisture.plain(SATURATION)));
        }
        return cautions;
    }

    private static Optional<Estimate> checked(double from, double to) {
        double worse = from >= 0 ? to : from;
        return worse >= 0
                ? Optional.empty()
                : Optional.of(new Refused("A moisture content of %s %% is not possible.".formatted(worse)));
    }

    /** The change of a width, positive swells; empty where {@link #strain} is refused. */
    public static Optional<Length> change(Length width, Species species, Sawn sawn, double from, double to) {
        OptionalDouble strain = strain(species, sawn, from, to).find();
        return strain.isPresent()
                ? Optional.of(Length.ofMillimetres(width.toMillimetres() * strain.getAsDouble()))
                : Optional.empty();
    }

    /** The change of a width as a number that knows its formula; empty where {@link #strain} is refused. */
    public static Optional<Dim> change(Dim width, Species species, Sawn sawn, double from, double to) {
        if (!(strain(species, sawn, from, to) instanceof Estimate.Known known)) {
            return Optional.empty();
        }
        String rule = "movement of %s (%s sawn) from %s to %s %% moisture, %s"
                .formatted(
                        species.name(),
                        sawn.name().toLowerCase(Locale.ROOT),
                        Moisture.plain(from),
                        Moisture.plain(to),
                        known.formula());
        Length change = Length.ofMillimetres(width.value().toMillimetres() * known.value());
        return Optional.of(Dim.worked(change, rule, new Making.Input(known.value(), width)));
    }
}
