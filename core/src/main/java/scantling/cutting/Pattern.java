package scantling.cutting;

/**
 * One way to cut a piece of stock.
 *
 * @param type which kind of stock
 * @param cost what the stock costs
 * @param counts how many of each size; {@code -1} in one place, and cost 0, means 'one too many of this size'
 */
record Pattern(int type, double cost, int[] counts) {
    boolean within(int[] demand) {
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > demand[i]) {
                return false;
            }
        }
        return true;
    }

    double worth(double[] price) {
        double sum = 0;
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] != 0) {
                sum += counts[i] * price[i];
            }
        }
        return sum;
    }
}
