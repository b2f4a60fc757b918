package scantling.cutting;

/**
 * One way of valuing parts, and what follows for the stock.
 *
 * @param need what all parts are worth together
 * @param value of each kind of stock: no more than so much fits on it
 */
record Demand(double need, double[] value) {
    /** What a mix of stock holds at most. */
    double held(int[] mix) {
        double sum = 0;
        for (int t = 0; t < mix.length; t++) {
            sum += mix[t] * value[t];
        }
        return sum;
    }
}
