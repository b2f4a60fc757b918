package scantling.checks.frame;

import java.util.Map;
import java.util.stream.Collectors;
import scantling.timber.Table;

/** Single numbers of this room, each with its source in {@code checks/frame-figures.csv}. */
final class Numbers {
    private static final Table TABLE = Table.read("checks/frame-figures.csv");
    private static final Map<String, Double> VALUES = TABLE.rows().stream()
            .collect(Collectors.toUnmodifiableMap(row -> row.text("name"), row -> row.number("value")));

    private Numbers() {}

    static double of(String name) {
        Double value = VALUES.get(name);
        if (value == null) {
            throw new IllegalStateException("No figure is called (%s).".formatted(name));
        }
        return value;
    }

    static String sourceOf(String name) {
        return TABLE.getRow("name", name).source();
    }
}
