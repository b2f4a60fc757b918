package scantling.route;

import scantling.timber.Table;

/** Something used up. @param name what @param amount how much @param unit of what @param source who says how much */
public record Supply(String name, double amount, String unit, String source) {
    private static final Table TABLE = Table.read("route/supplies.csv");

    /** The row's supply for so many of its units of work. */
    static Supply of(Table.Row row, double units) {
        return new Supply(row.text("supply"), units * row.number("per_unit"), row.text("unit"), row.source());
    }

    /** As much more of the same. */
    Supply plus(Supply more) {
        return new Supply(name, amount + more.amount, unit, source);
    }

    /** Discs for so many square metres, by what they sand: {@code bare wood}, {@code between coats}. */
    static Supply discs(String sanded, String grit, double square) {
        Supply discs = of(TABLE.getRow("work", sanded), square);
        return new Supply("%s, %s grit".formatted(discs.name(), grit), discs.amount, discs.unit, discs.source);
    }
}
