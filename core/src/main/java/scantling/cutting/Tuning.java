package scantling.cutting;

/** The numbers the search was tuned with. */
record Tuning(int removed, int wholePercent, int pairPercent, int climbPercent, int blink, int memory, double weight) {
    static final Tuning USUAL = new Tuning(10, 5, 30, 35, 10, 200, 0.02);
}
