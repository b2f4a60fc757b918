package scantling.checks.lasting;

import java.util.List;
import scantling.timber.Table;

/**
 * A flat plate held along its four edges, free to turn there, under an even load. Its middle sinks by alpha q a^4 / D, D =
 * E t^3 / (12 (1 - nu^2)), alpha by the ratio of its sides (Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells,
 * Table 8); between tabulated ratios in a straight line.
 *
 * @param elasticity MPa, for a sheet the root of the product of both directions
 * @param one side, mm
 * @param other side, mm
 * @param thickness mm
 */
public record Plate(double elasticity, double one, double other, double thickness) {
    private static final Table TABLE = Table.read("checks/plates.csv");

    static String source() {
        return TABLE.rows().get(0).source();
    }

    double shorter() {
        return Math.min(one, other);
    }

    Plate thick(double mm) {
        return new Plate(elasticity, one, other, mm);
    }

    /** How far its middle sinks, mm. @param pascal even load */
    public double sag(double pascal) {
        double poisson = Figures.of("plate poisson");
        double stiff = elasticity * Math.pow(thickness, 3) / (12 * (1 - poisson * poisson));
        return alpha(Math.max(one, other) / shorter()) * pascal * 1e-6 * Math.pow(shorter(), 4) / stiff;
    }

    private static double alpha(double ratio) {
        List<Table.Row> rows = TABLE.rows();
        for (int i = 1; i < rows.size(); i++) {
            double to = rows.get(i).number("ratio");
            if (ratio <= to) {
                double from = rows.get(i - 1).number("ratio");
                double share = (ratio - from) / (to - from);
                return rows.get(i - 1).number("alpha") * (1 - share)
                        + rows.get(i).number("alpha") * share;
            }
        }
        return rows.get(rows.size() - 1).number("alpha");
    }
}
