package scantling.timber;

import java.util.List;
import scantling.timber.Estimate.Refused;

/**
 * Equilibrium moisture content: what wood comes to when left long enough in air of one temperature and humidity. Wood
 * Handbook (FPL-GTR-282) Eq. 4-5. See docs/method/moisture-and-movement.md.
 */
public final class Moisture {
    private static final String FORMULA = "Wood Handbook Eq. 4-5";
    private static final Table TERMS = Table.read("timber/moisture-equation.csv");
    private static final double SCALE = Constants.of("moisture scale");
    private static final double COLDEST = Constants.of("coldest");
    private static final double HOTTEST = Constants.of("hottest");
    private static final double DRIEST = Constants.of("driest tabulated");
    private static final double DAMPEST = Constants.of("dampest tabulated");
    private static final Quadratic W = Quadratic.of("W");
    private static final Quadratic K = Quadratic.of("K");
    private static final Quadratic K1 = Quadratic.of("K1");
    private static final Quadratic K2 = Quadratic.of("K2");

    private Moisture() {}

    private record Quadratic(double constant, double linear, double square) {
        static Quadratic of(String term) {
            Table.Row row = TERMS.getRow("term", term);
            return new Quadratic(
                    row.number("constant"), row.number("per_degree_c"), row.number("per_degree_c_squared"));
        }

        double at(double celsius) {
            return constant + celsius * (linear + celsius * square);
        }
    }

    /**
     * Equilibrium moisture content in % of the dry mass.
     *
     * @param celsius temperature; outside the published -1.1 to 132.2 the answer is refused
     * @param humidity relative humidity in %; outside 0 to 100 the answer is refused, outside the tabulated 5 to 95 it
     *     carries a caution
     */
    public static Estimate equilibrium(double celsius, double humidity) {
        if (!(humidity >= 0 && humidity <= 100)) {
            return new Refused("A relative humidity of %s %% is not between 0 and 100 %%.".formatted(plain(humidity)));
        }
        if (!(celsius >= COLDEST && celsius <= HOTTEST)) {
            return new Refused("%s C is outside the range of %s (30 to 270 F, -1.1 to 132.2 C)."
                    .formatted(plain(celsius), FORMULA));
        }
        boolean tabulated = humidity >= DRIEST && humidity <= DAMPEST;
        return new Estimate.Known(
                solve(celsius, humidity / 100),
                FORMULA,
                tabulated
                        ? List.of()
                        : List.of("%s %% relative humidity lies outside the published table (%s to %s %%)."
                                .formatted(plain(humidity), plain(DRIEST), plain(DAMPEST))));
    }

    private static double solve(double celsius, double h) {
        double kh = K.at(celsius) * h;
        double k1 = K1.at(celsius);
        double k1k2 = k1 * K2.at(celsius);
        double dissolved = kh / (1 - kh);
        double hydrated = (k1 * kh + 2 * k1k2 * kh * kh) / (1 + k1 * kh + k1k2 * kh * kh);
        return SCALE / W.at(celsius) * (dissolved + hydrated);
    }

    /**
     * The most water wood can hold, % of the dry mass: Eq. 4-3.
     *
     * @param basicGravity specific gravity, green volume
     */
    public static double most(double basicGravity) {
        double cellWall = Constants.of("cell wall sg");
        return 100 * (cellWall - basicGravity) / (cellWall * basicGravity);
    }

    /** Degrees Celsius of degrees Fahrenheit. */
    public static double celsius(double fahrenheit) {
        return (fahrenheit - 32) / 1.8;
    }

    static String plain(double number) {
        return number == Math.rint(number) && Math.abs(number) < 1e9
                ? Long.toString((long) number)
                : Double.toString(number);
    }
}
