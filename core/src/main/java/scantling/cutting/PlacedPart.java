package scantling.cutting;

import scantling.measure.Length;

/**
 * One copy of a part on a piece of stock. Measured on the stock from its near end (x) and its reference edge (y).
 *
 * @param part which
 * @param copy counted from 1
 * @param x to its near end
 * @param y to its near edge
 * @param length along the stock's length
 * @param width across the stock's length
 * @param turned lies across the stock, so that the part's own length is the width here
 */
public record PlacedPart(CutPart part, int copy, Length x, Length y, Length length, Length width, boolean turned) {}
