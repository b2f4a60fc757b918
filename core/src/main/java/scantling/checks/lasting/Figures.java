package scantling.checks.lasting;

import scantling.measure.Length;
import scantling.timber.Table;

/** Single numbers of this room, each with its source in {@code checks/lasting-figures.csv}. */
final class Figures {
    private static final Table TABLE = Table.read("checks/lasting-figures.csv");

    private Figures() {}

    static double of(String name) {
        return TABLE.getRow("name", name).number("value");
    }

    static Length lengthOf(String name) {
        return Length.ofMillimetres(of(name));
    }

    static String sourceOf(String name) {
        return TABLE.getRow("name", name).source();
    }
}
