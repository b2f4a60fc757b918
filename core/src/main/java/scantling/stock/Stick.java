package scantling.stock;

import scantling.measure.Length;

/**
 * Stock that is cut only to length: a moulding, a dowel rod, a surfaced square, edging.
 *
 * @param id what is written on it
 * @param material the wood
 * @param thickness its thickness
 * @param width its width
 * @param length its length
 */
public record Stick(String id, String material, Length thickness, Length width, Length length) implements Stock {
    /** Checks that it has positive sizes. */
    public Stick {
        Stock.check(id, material, thickness, width, length);
    }
}
