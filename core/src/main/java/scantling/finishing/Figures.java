package scantling.finishing;

import scantling.timber.Table;

/** Single numbers of this room, each with its source in {@code finishing/figures.csv}. */
final class Figures {
    private static final Table TABLE = Table.read("finishing/figures.csv");

    private Figures() {}

    static double of(String name) {
        return TABLE.getRow("name", name).number("value");
    }

    static String sourceOf(String name) {
        return TABLE.getRow("name", name).source();
    }
}
