package scantling.shop;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * Hardware or finish on hand.
 *
 * @param id short and fixed
 * @param kind hardware or finish
 * @param name what it is
 * @param amount how much there is, not negative
 * @param unit of the amount: {@code pieces}, {@code pairs}, {@code litres}
 * @param price of one unit, in the money of the shop
 * @param place where it is; may be empty
 */
public record Supply(
        String id, Kind kind, String name, BigDecimal amount, String unit, Optional<Long> price, String place) {
    /** What sort of supply. */
    public enum Kind {
        /** Slides, hinges, screws. */
        HARDWARE,
        /** Oils, lacquers, stains. */
        FINISH
    }
}
