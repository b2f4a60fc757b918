package scantling.finishing;

/** The air a finish dries in. @param celsius temperature @param humidity relative humidity in % */
record Air(double celsius, double humidity) {
    static Air usual() {
        return new Air(Figures.of("reference air"), Figures.of("reference humidity"));
    }

    /**
     * How many times longer a coat takes to dry than its figures say, which are for 21 C and 50 %: twice for so many
     * degrees colder; waterborne coats twice for so much more humidity. Never counted shorter.
     */
    Amount slower(Coat coat) {
        double damp = coat.isWaterborne()
                ? Math.pow(
                        2,
                        Math.max(0, humidity - Figures.of("reference humidity"))
                                / Figures.of("water doubles per humidity"))
                : 1;
        double colder = Math.max(0, Figures.of("reference air") - celsius);
        Amount step = coat.find("doubles per").orElse(Amount.exactly(10));
        return new Amount(
                Math.pow(2, colder / step.high()) * damp,
                Math.pow(2, colder / step.likely()) * damp,
                Math.pow(2, colder / step.low()) * damp);
    }
}
