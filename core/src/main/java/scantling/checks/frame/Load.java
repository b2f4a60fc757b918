package scantling.checks.frame;

import java.util.List;
import scantling.timber.Table;

/**
 * One load of a published furniture test.
 *
 * @param name what it is called
 * @param words for the maker
 * @param where it is put
 * @param direction it pushes in: down, across, deep
 * @param newton how much
 * @param on which pieces: all, cabinet, drawers
 * @param source who says so
 */
public record Load(String name, String words, String where, String direction, double newton, String on, String source) {
    private static final List<Load> ALL = Table.read("checks/frame-loads.csv").rows().stream()
            .map(row -> new Load(
                    row.text("name"),
                    row.text("words"),
                    row.text("where"),
                    row.text("direction"),
                    row.number("newton"),
                    row.text("for"),
                    row.source()))
            .toList();

    /** All that are tabulated. */
    public static List<Load> all() {
        return ALL;
    }

    Vector force() {
        return switch (direction) {
            case "across" -> new Vector(newton, 0, 0);
            case "deep" -> new Vector(0, newton, 0);
            default -> new Vector(0, 0, -newton);
        };
    }
}
