package scantling.stock;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import scantling.measure.Dim;
import scantling.timber.Names;
import scantling.timber.Table;

/**
 * A hardwood grade by the NHLA rules: minimums for the poorer face of a rough board.
 *
 * @param name {@code FAS}, {@code No. 1 Common}
 * @param aliases other names it goes by
 * @param leastWidth narrowest board
 * @param leastLength shortest board
 * @param cuttings the smallest clear pieces that count, as the rules print them: {@code 4 in x 5 ft}
 * @param yieldTwelfths clear cutting units required for each foot of surface measure, of twelve
 * @param extraTwelfths the same where one more cutting is allowed
 * @param note what else the rules say
 * @param source who says so
 */
public record Grade(
        String name,
        List<String> aliases,
        Dim leastWidth,
        Dim leastLength,
        List<String> cuttings,
        double yieldTwelfths,
        OptionalDouble extraTwelfths,
        String note,
        String source) {
    private static final double UNITS = 12;
    private static final List<Grade> ALL =
            Table.read("stock/grades.csv").rows().stream().map(Grade::of).toList();
    private static final Names<Grade> NAMES =
            Names.of(ALL, grade -> Stream.concat(Stream.of(grade.name()), grade.aliases().stream()));

    /** Takes its own copies. */
    public Grade {
        aliases = List.copyOf(aliases);
        cuttings = List.copyOf(cuttings);
    }

    private static Grade of(Table.Row row) {
        String name = row.text("name");
        return new Grade(
                name,
                row.list("aliases"),
                row.dim("board_width", name + " least width"),
                row.dim("board_length", name + " least length"),
                row.list("cuttings"),
                row.number("yield_twelfths"),
                row.findNumber("extra_twelfths"),
                row.text("note"),
                row.source());
    }

    /** All grades, best first. */
    public static List<Grade> all() {
        return ALL;
    }

    /** The grade of this name or a usual short form. */
    public static Optional<Grade> find(String name) {
        return NAMES.find(name);
    }

    /** Share of the face that must be clear, 0 to 1. */
    public double clearYield() {
        return yieldTwelfths / UNITS;
    }

    /** The same where one more cutting is allowed. */
    public OptionalDouble extraYield() {
        return extraTwelfths.isPresent()
                ? OptionalDouble.of(extraTwelfths.getAsDouble() / UNITS)
                : OptionalDouble.empty();
    }
}
