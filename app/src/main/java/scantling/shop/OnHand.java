package scantling.shop;

import java.util.Optional;
import scantling.stock.Stock;

/**
 * A piece of stock in the rack.
 *
 * @param stock what it is
 * @param price what it cost, in the money of the shop
 * @param place where it lies; may be empty
 */
public record OnHand(Stock stock, Optional<Long> price, String place) {
    /** Without a price or a place. */
    public static OnHand of(Stock stock) {
        return new OnHand(stock, Optional.empty(), "");
    }
}
