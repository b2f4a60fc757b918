package scantling.checks.lasting;

import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import scantling.measure.Length;
import scantling.timber.Table;

/** Single numbers of this room, each with its source in {@code checks/lasting-figures.csv}. */
public final class Figures {
    private static final Map<String, Figure> BY_NAME = Table.read("checks/lasting-figures.csv").rows().stream()
            .map(row -> new Figure(row.text("name"), row.number("value"), row.source()))
            .collect(Collectors.toUnmodifiableMap(Figure::name, Function.identity()));

    private Figures() {}

    private record Figure(String name, double value, String source) {}

    private static Figure get(String name) {
        Figure found = BY_NAME.get(name);
        if (found == null) {
            throw new IllegalStateException("No figure is called (%s).".formatted(name));
        }
        return found;
    }

    public static double of(String name) {
        return get(name).value();
    }

    static Length lengthOf(String name) {
        return Length.ofMillimetres(of(name));
    }

    public static String sourceOf(String name) {
        return get(name).source();
    }
}
