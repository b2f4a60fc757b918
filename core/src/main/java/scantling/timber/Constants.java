package scantling.timber;

/** The constants of the formulas, read from their table. */
final class Constants {
    private static final Table TABLE = Table.read("timber/constants.csv");

    static final double FIBRE_SATURATION = of("fibre saturation");

    private Constants() {}

    static double of(String name) {
        return TABLE.getRow("name", name).number("value");
    }
}
