package scantling.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.measure.LengthReader;
import scantling.measure.Unit;

/**
 * A stretch of a board that no part may have, as the maker marks it: a knot, a check, sapwood along an edge. Measured from
 * the near end of the board; its near edge is the one that goes against the fence.
 *
 * @param from where it begins
 * @param to where it ends, further than it begins
 * @param edge the whole width, or one edge only
 * @param deep how far in from that edge; zero for the whole width
 */
public record Defect(Length from, Length to, Edge edge, Length deep) {
    /** Further than any board is long: for a defect that runs to the end. */
    public static final Length END = Length.mm(1_000_000);

    private static final Pattern STRETCH = Pattern.compile("(.+?)\\s+to\\s+([^,]+?)(?:\\s*,\\s*(.+))?");
    private static final Pattern EDGE = Pattern.compile("(.+?)\\s+(?:off|from|in from)\\s+the\\s+(near|far)\\s+edge");

    /** Which part of the width a defect takes. */
    public enum Edge {
        /** All of it. */
        WHOLE,
        /** From the edge against the fence. */
        NEAR,
        /** From the other edge. */
        FAR
    }

    /** Checks its sizes. */
    public Defect {
        if (from.isNegative() || to.compareTo(from) <= 0 || (edge == Edge.WHOLE) == deep.isPositive()) {
            throw new IllegalArgumentException(
                    "A defect from (%s) to (%s), (%s) deep (%s): it must end beyond where it begins, and one at an edge needs a depth."
                            .formatted(from, to, edge, deep));
        }
    }

    /** One over the whole width. */
    public static Defect across(Length from, Length to) {
        return new Defect(from, to, Edge.WHOLE, Length.ZERO);
    }

    /**
     * Reads {@code 300 to 420}, {@code 2300 to end}, {@code 900 to 1100, 40 off the near edge}; empty for anything else.
     *
     * @param unit of lengths that name none
     */
    public static Optional<Defect> read(String text, Unit unit) {
        Matcher said = STRETCH.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!said.matches()) {
            return Optional.empty();
        }
        Optional<Length> from = LengthReader.read(said.group(1), unit);
        Optional<Length> to = said.group(2).equals("end") ? Optional.of(END) : LengthReader.read(said.group(2), unit);
        if (from.isEmpty()
                || to.isEmpty()
                || from.get().isNegative()
                || to.get().compareTo(from.get()) <= 0) {
            return Optional.empty();
        }
        return said.group(3) == null
                ? Optional.of(across(from.get(), to.get()))
                : edge(said.group(3), unit, across(from.get(), to.get()));
    }

    private static Optional<Defect> edge(String text, Unit unit, Defect across) {
        Matcher said = EDGE.matcher(text.strip());
        return !said.matches()
                ? Optional.empty()
                : LengthReader.read(said.group(1), unit)
                        .filter(Length::isPositive)
                        .map(deep -> new Defect(
                                across.from,
                                across.to,
                                Edge.valueOf(said.group(2).toUpperCase(Locale.ROOT)),
                                deep));
    }

    /** Reads several, with semicolons between; empty when one of them cannot be read. */
    public static Optional<List<Defect>> readAll(String text, Unit unit) {
        List<Defect> all = new ArrayList<>();
        for (String one : text.isBlank() ? new String[0] : text.split(";", -1)) {
            Optional<Defect> read = read(one, unit);
            if (read.isEmpty()) {
                return Optional.empty();
            }
            all.add(read.get());
        }
        return Optional.of(List.copyOf(all));
    }

    /** As {@link #read} reads it, in the unit of the format. */
    public String words(LengthFormat format) {
        String stretch = "%s to %s".formatted(format.format(from), to.equals(END) ? "end" : format.formatWithUnit(to));
        return edge == Edge.WHOLE
                ? stretch
                : "%s, %s off the %s edge"
                        .formatted(
                                stretch,
                                format.formatWithUnit(deep),
                                edge.name().toLowerCase(Locale.ROOT));
    }

    /** Several as {@link #readAll} reads them, exact. */
    public static String written(List<Defect> defects) {
        List<String> all = new ArrayList<>();
        for (Defect one : defects) {
            String stretch = one.from + " to " + (one.to.equals(END) ? "end" : one.to);
            all.add(
                    one.edge == Edge.WHOLE
                            ? stretch
                            : "%s, %s off the %s edge"
                                    .formatted(
                                            stretch, one.deep, one.edge.name().toLowerCase(Locale.ROOT)));
        }
        return String.join("; ", all);
    }

    /** The same on a piece cut from the board: what of it lies there, measured from the piece's own end and edge. */
    public Optional<Defect> within(Length x, Length y, Length length, Length width, Length boardWidth) {
        Length start = from.max(x);
        Length end = to.min(x.plus(length));
        if (end.compareTo(start) <= 0) {
            return Optional.empty();
        }
        Length low = (edge == Edge.FAR ? boardWidth.minus(deep) : Length.ZERO).max(y);
        Length high = (edge == Edge.NEAR ? deep : boardWidth).min(y.plus(width));
        if (high.compareTo(low) <= 0) {
            return Optional.empty();
        }
        Length left = start.minus(x);
        Length right = end.minus(x);
        boolean near = low.compareTo(y) <= 0;
        boolean far = high.compareTo(y.plus(width)) >= 0;
        if (near && far) {
            return Optional.of(across(left, right));
        }
        return Optional.of(
                far
                        ? new Defect(left, right, Edge.FAR, y.plus(width).minus(low))
                        : new Defect(left, right, Edge.NEAR, high.minus(y)));
    }
}
