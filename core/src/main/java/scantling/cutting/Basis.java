package scantling.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * The patterns that a program of patterns uses now, one for each kind of part, with the inverse of their table of counts: the
 * heart of a revised simplex. The inverse is worked out anew now and then, as thousands of exchanges leave little of it right.
 */
final class Basis {
    /** Columns smaller than this are nothing but rounding. */
    private static final double TINY = 1e-9;
    /** So much more is wanted of each kind, of none as much as of another: amounts that are even let the program go in circles. */
    private static final double NEVER_EVEN = 1e-7;

    /** So little short of a whole number is one. */
    private static final double WHOLE = 1e-6;

    private static final double GOLDEN = 0.6180339887;
    private static final int EXCHANGES_BEFORE_ANEW = 500;

    private final Pattern[] patterns;
    private final double[] demand;
    private final double[][] inverse;
    private final double[] amount;
    private int exchanges;

    /** One pattern per kind: as many of it as stock of the best price holds. */
    Basis(PatternSource source, int[] wanted) {
        int n = source.kinds();
        patterns = new Pattern[n];
        demand = new double[n];
        inverse = new double[n][n];
        amount = new double[n];
        for (int i = 0; i < n; i++) {
            patterns[i] = source.alone(i, Math.max(1, wanted[i]));
            demand[i] = wanted[i] + NEVER_EVEN * (1 + (i + 1) * GOLDEN % 1);
            int many = patterns[i].counts()[i];
            inverse[i][i] = 1.0 / many;
            amount[i] = demand[i] / many;
        }
    }

    Basis() {
        patterns = new Pattern[0];
        demand = new double[0];
        inverse = new double[0][0];
        amount = new double[0];
    }

    Pattern[] patterns() {
        return patterns;
    }

    double[] amounts() {
        return amount;
    }

    /** What the patterns cost together, as much as there is of each. */
    double cost() {
        double cost = 0;
        for (int r = 0; r < patterns.length; r++) {
            cost += amount[r] * patterns[r].cost();
        }
        return cost;
    }

    /** The patterns that there are at least once, each as often. */
    List<Pattern> whole() {
        List<Pattern> whole = new ArrayList<>();
        for (int r = 0; r < patterns.length; r++) {
            if (patterns[r].cost() > 0) {
                whole.addAll(Collections.nCopies((int) (amount[r] + WHOLE), patterns[r]));
            }
        }
        return whole;
    }

    /** What each kind is worth, so that every pattern of the basis is worth what it costs. */
    double[] prices() {
        double[] price = new double[patterns.length];
        for (int r = 0; r < price.length; r++) {
            double c = patterns[r].cost();
            if (c != 0) {
                for (int i = 0; i < price.length; i++) {
                    price[i] += c * inverse[r][i];
                }
            }
        }
        return price;
    }

    /** Takes a pattern in for the one that it drives out first. False when it drives out none. */
    boolean take(Pattern enter) {
        int n = patterns.length;
        double[] column = new double[n];
        int leave = -1;
        double least = Double.MAX_VALUE;
        for (int r = 0; r < n; r++) {
            column[r] = enter.worth(inverse[r]);
            if (column[r] > TINY && amount[r] / column[r] < least) {
                least = amount[r] / column[r];
                leave = r;
            }
        }
        if (leave < 0) {
            return false;
        }
        exchange(enter, column, leave);
        return ++exchanges % EXCHANGES_BEFORE_ANEW > 0 || anew();
    }

    private void exchange(Pattern enter, double[] column, int leave) {
        double[] row = inverse[leave];
        double by = column[leave];
        for (int i = 0; i < row.length; i++) {
            row[i] /= by;
        }
        amount[leave] = Math.max(0, amount[leave] / by);
        for (int r = 0; r < inverse.length; r++) {
            double factor = column[r];
            if (r != leave && factor != 0) {
                double[] other = inverse[r];
                for (int i = 0; i < row.length; i++) {
                    other[i] -= factor * row[i];
                }
                amount[r] = Math.max(0, amount[r] - factor * amount[leave]);
            }
        }
        patterns[leave] = enter;
    }

    private boolean anew() {
        int n = patterns.length;
        DMatrixRMaj table = new DMatrixRMaj(n, n);
        for (int r = 0; r < n; r++) {
            for (int i : patterns[r].held()) {
                table.set(i, r, patterns[r].counts()[i]);
            }
        }
        if (!CommonOps_DDRM.invert(table)) {
            return false;
        }
        for (int r = 0; r < n; r++) {
            inverse[r] = Arrays.copyOfRange(table.data, r * n, (r + 1) * n);
            amount[r] = 0;
            for (int i = 0; i < n; i++) {
                amount[r] += inverse[r][i] * demand[i];
            }
            amount[r] = Math.max(0, amount[r]);
        }
        return true;
    }
}
