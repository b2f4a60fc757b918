package scantling.cutting;

/**
 * Sizes valued in one direction.
 *
 * @param items what items are worth as they lie, then as they lie when turned; no bound to it where one is too large
 * @param stock what each kind of stock is worth: no items that fit along it are worth more
 */
record Rounded(double[][] items, double[] stock) {
    /** What both directions together demand: a part that may be turned counts with the smaller of its two areas. */
    Demand times(Rounded other, Problem problem, int[] of) {
        double[] both = new double[stock.length];
        for (int t = 0; t < both.length; t++) {
            both[t] = stock[t] * other.stock[t];
        }
        double sum = 0;
        for (int k = 0; k < of.length; k++) {
            double straight = straight(other, k);
            double across = across(other, k);
            if (!problem.turn[of[k]] || Double.isInfinite(across)) {
                sum += straight;
            } else {
                sum += Math.min(straight, across);
            }
        }
        return new Demand(sum, both);
    }

    /** The area of an item as it lies. */
    double straight(Rounded other, int item) {
        return area(items[0][item], other.items[0][item]);
    }

    /** The area of an item when it is turned. */
    double across(Rounded other, int item) {
        return area(items[1][item], other.items[1][item]);
    }

    private static double area(double f, double g) {
        return Double.isInfinite(f) || Double.isInfinite(g) ? Double.POSITIVE_INFINITY : f * g;
    }
}
