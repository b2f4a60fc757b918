package scantling.joinery;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.LengthReader;
import scantling.measure.Unit;

/**
 * One row of a table as the shop writes it.
 *
 * @param heading what it stands under
 * @param name what the heading says behind the name of its table
 * @param said sizes in words, by their names
 */
record OwnRow(String heading, String name, Map<String, String> said) {
    /** Takes its own copy. */
    OwnRow {
        said = Map.copyOf(said);
    }

    boolean says(String size) {
        return said.containsKey(size);
    }

    String text(String size) {
        return said.getOrDefault(size, "");
    }

    /** A size: as said, else as in the row that it takes the place of. @throws IllegalArgumentException when neither is there */
    Dim size(String size, Optional<Dim> before) {
        return says(size) ? length(text(size), size) : before.orElseThrow(() -> missing(size));
    }

    /** Several sizes, likewise, shortest first. */
    List<Dim> sizes(String size, Optional<List<Dim>> before) {
        return says(size)
                ? Arrays.stream(text(size).split("[,;]", -1))
                        .map(one -> length(one.strip(), size))
                        .sorted()
                        .toList()
                : before.orElseThrow(() -> missing(size));
    }

    /** The size that the heading names the row by. */
    Dim nameAsSize() {
        return length(name, heading);
    }

    /** A whole number above nothing. */
    int number(String text) {
        if (!text.matches("[1-9][0-9]{0,2}")) {
            throw new IllegalArgumentException("(%s) of %s is no gauge: write 8.".formatted(text, heading));
        }
        return Integer.parseInt(text);
    }

    /** Reads its name and all that is said once, so that what is wrong is told where it stands. */
    void check() {
        if (heading.startsWith("screw")) {
            number(name);
        } else if (!heading.startsWith("biscuit")) {
            nameAsSize();
        }
        said.forEach((size, text) -> {
            switch (size) {
                case "gauge" -> number(text);
                case "lengths" -> sizes(size, Optional.empty());
                default -> length(text, size);
            }
        });
    }

    IllegalArgumentException missing(String size) {
        return new IllegalArgumentException("%s is not in the table, so it needs (%s).".formatted(heading, size));
    }

    private Dim length(String text, String size) {
        return Dim.lookedUp(
                LengthReader.read(text, Unit.MM)
                        .filter(Length::isPositive)
                        .orElseThrow(() -> new IllegalArgumentException(
                                "(%s) of %s is no length.".formatted(text, size.equals(heading) ? heading : size))),
                "shop",
                heading + ", " + size,
                "the shop's own");
    }
}
