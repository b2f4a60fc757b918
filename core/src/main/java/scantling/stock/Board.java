package scantling.stock;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import scantling.measure.Length;

/**
 * A rough or surfaced board of random width and length.
 *
 * @param id what is written on it
 * @param material the wood
 * @param roughClass the thickness it was sold as
 * @param thickness as it is now
 * @param width the narrowest that counts
 * @param length the clear length
 * @param grade its grade, if known
 * @param defects what no part may have, from the near end of the board; empty for a clear board
 */
public record Board(
        String id,
        String material,
        RoughClass roughClass,
        Length thickness,
        Length width,
        Length length,
        Optional<Grade> grade,
        List<Defect> defects)
        implements Stock {
    /** Checks that it has positive sizes. */
    public Board {
        Stock.check(id, material, thickness, width, length);
        defects = List.copyOf(defects);
    }

    /** A clear board. */
    public Board(
            String id,
            String material,
            RoughClass roughClass,
            Length thickness,
            Length width,
            Length length,
            Optional<Grade> grade) {
        this(id, material, roughClass, thickness, width, length, grade, List.of());
    }

    /** A rough board as thick as its class. */
    public static Board rough(String id, String material, RoughClass roughClass, Length width, Length length) {
        return new Board(id, material, roughClass, roughClass.rough().value(), width, length, Optional.empty());
    }

    /** The same board with defects marked on it, or none. */
    public Board marked(List<Defect> others) {
        return new Board(id, material, roughClass, thickness, width, length, grade, others);
    }

    /** The same board of a grade. */
    public Board graded(Optional<Grade> other) {
        return new Board(id, material, roughClass, thickness, width, length, other, defects);
    }

    /**
     * What is left between the ends.
     *
     * @param from how far from the near end it begins
     * @param length how long it is; zero or less when nothing is left
     * @param defects those that lie in it, from where it begins
     */
    public record Usable(Length from, Length length, List<Defect> defects) {}

    /** What is left when so much is cut off each end, and all of a defect that lies over the whole width there. */
    public Usable usable(Length ends) {
        Length start = ends;
        Length end = length.minus(ends);
        for (Defect one :
                defects.stream().sorted(Comparator.comparing(Defect::from)).toList()) {
            boolean whole = one.edge() == Defect.Edge.WHOLE;
            start = whole && one.from().compareTo(start) <= 0 ? start.max(one.to()) : start;
        }
        for (Defect one : defects.stream()
                .sorted(Comparator.comparing(Defect::to).reversed())
                .toList()) {
            boolean whole = one.edge() == Defect.Edge.WHOLE;
            end = whole && one.to().compareTo(end) >= 0 ? end.min(one.from()) : end;
        }
        Length from = start;
        Length left = end.minus(start);
        return new Usable(
                from,
                left,
                defects.stream()
                        .filter(one -> left.isPositive())
                        .flatMap(one -> one.within(from, Length.ZERO, left, width, width).stream())
                        .toList());
    }

    /** Board feet as paid, not rounded. */
    public double boardFeet() {
        return BoardMeasure.boardFeet(roughClass, width, length);
    }
}
