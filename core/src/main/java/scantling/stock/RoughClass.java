package scantling.stock;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.timber.Table;

/**
 * A thickness in which rough lumber is sold.
 *
 * @param name as the trade says it: {@code 4/4}, {@code 8/4}, {@code 3/8}
 * @param rough thickness off the saw
 * @param surfaced least thickness when surfaced on two sides (S2S), for grading
 * @param planesTo the thickest finished part that flat, short stock of this class can be counted on to give
 */
public record RoughClass(String name, Dim rough, Dim surfaced, Dim planesTo) {
    private static final String QUARTER = "/4";
    private static final List<RoughClass> ALL = Table.read("stock/rough-classes.csv").rows().stream()
            .map(RoughClass::of)
            .sorted(Comparator.comparing(RoughClass::rough))
            .toList();

    private static RoughClass of(Table.Row row) {
        String name = row.text("name");
        return new RoughClass(
                name,
                row.dim("rough", name + " rough"),
                row.dim("s2s", name + " surfaced two sides"),
                Dim.lookedUp(
                        row.length("planes_to"),
                        "stock/rough-classes.csv",
                        name + " planes to",
                        row.text("planes_to_source")));
    }

    /** All classes, thinnest first. */
    public static List<RoughClass> all() {
        return ALL;
    }

    /** The class of this name; {@code 8/4}. */
    public static Optional<RoughClass> find(String name) {
        String plain = name.strip().replace(" ", "");
        return ALL.stream().filter(one -> one.name.equals(plain)).findFirst();
    }

    /** The class that must be there. @throws IllegalArgumentException if the trade knows no such class */
    public static RoughClass get(String name) {
        return find(name)
                .orElseThrow(() -> new IllegalArgumentException("There is no rough class (%s).".formatted(name)));
    }

    /** The class with this many quarters of an inch: 4 is 4/4. */
    public static Optional<RoughClass> ofQuarters(int quarters) {
        return find(quarters + QUARTER);
    }

    /** Quarters of an inch, for the classes that are sold so; empty for 3/8, 1/2, 5/8; three for 3/4. */
    public Optional<Integer> quarters() {
        return name.endsWith(QUARTER)
                ? Optional.of(Integer.parseInt(name.substring(0, name.length() - QUARTER.length())))
                : Optional.empty();
    }

    /** Whether a part of this thickness can be planed from it. */
    public boolean gives(Length finished) {
        return finished.compareTo(planesTo.value()) <= 0;
    }

    /** The thinnest class that planes to a thickness; empty above the thickest, where stock must be laminated. */
    public static Optional<RoughClass> forFinished(Length finished) {
        return forFinished(finished, ALL);
    }

    /** The thinnest class among those a maker can buy. */
    public static Optional<RoughClass> forFinished(Length finished, List<RoughClass> sold) {
        return sold.stream().filter(one -> one.gives(finished)).min(Comparator.comparing(RoughClass::rough));
    }

    /** Thickness by which it is paid, in inches: stock under one inch is paid as one inch. */
    Length paid() {
        return rough.value().max(Length.inches(1));
    }

    /** The name. */
    @Override
    public String toString() {
        return name;
    }
}
