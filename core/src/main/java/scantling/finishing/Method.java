package scantling.finishing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import scantling.timber.Names;
import scantling.timber.Table;

/**
 * A way to put a coat on.
 *
 * @param name brush, cloth, roller, high-volume low-pressure gun ...
 * @param aliases other words for it
 * @param transfer share that stays on the work, 0 to 1
 * @param sprays whether it makes mist
 * @param fan width of the fan of a gun in millimetres
 * @param overlap how much one pass laps over the last, 0 to 1
 * @param source who says so
 */
public record Method(
        String name,
        List<String> aliases,
        Amount transfer,
        boolean sprays,
        OptionalDouble fan,
        double overlap,
        String source) {
    private static final double PERCENT = 0.01;
    private static final List<Method> ALL =
            Table.read("finishing/methods.csv").rows().stream().map(Method::of).toList();
    private static final Names<Method> NAMES =
            Names.of(ALL, method -> Stream.concat(Stream.of(method.name()), method.aliases().stream()));

    /** Takes its own copy. */
    public Method {
        aliases = List.copyOf(aliases);
    }

    private static Method of(Table.Row row) {
        return new Method(
                row.text("method"),
                row.list("aliases"),
                Amount.between(row.number("transfer_low_pct"), row.number("transfer_high_pct"))
                        .times(PERCENT),
                row.text("sprays").equals("yes"),
                row.findNumber("fan_mm"),
                row.findNumber("overlap_pct").orElse(0) * PERCENT,
                row.source());
    }

    /** All of them in the order of the table. */
    public static List<Method> all() {
        return ALL;
    }

    /** The way that goes by this name. */
    public static Optional<Method> find(String name) {
        return NAMES.find(name);
    }

    /** Passes of a gun over a face so wide: the fan laps over the last pass; one pass for a face no wider than the fan. */
    public int passes(double widthMm) {
        double wide = fan.orElse(0);
        if (wide <= 0 || widthMm <= 0) {
            return 0;
        }
        return 1 + (int) Math.ceil(Math.max(0, widthMm - wide) / (wide * (1 - overlap)));
    }
}
