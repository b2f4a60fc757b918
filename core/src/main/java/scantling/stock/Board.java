package scantling.stock;

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
 */
public record Board(
        String id,
        String material,
        RoughClass roughClass,
        Length thickness,
        Length width,
        Length length,
        Optional<Grade> grade)
        implements Stock {
    /** Checks that it has positive sizes. */
    public Board {
        Stock.check(id, material, thickness, width, length);
    }

    /** A rough board as thick as its class. */
    public static Board rough(String id, String material, RoughClass roughClass, Length width, Length length) {
        return new Board(id, material, roughClass, roughClass.rough().value(), width, length, Optional.empty());
    }

    /** Board feet as paid, not rounded. */
    public double boardFeet() {
        return BoardMeasure.boardFeet(roughClass, width, length);
    }
}
