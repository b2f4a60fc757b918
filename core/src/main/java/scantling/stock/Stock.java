package scantling.stock;

import scantling.measure.Length;

/** One piece of material in the rack. */
public sealed interface Stock permits Board, Sheet, Stick, Offcut {
    /** What is written on it; no two pieces in a rack share it. */
    String id();

    /** The wood or sheet it is of, as the tables of timber name it. */
    String material();

    /** Along the grain, or the longer side of a sheet. */
    Length length();

    /** Across the grain. */
    Length width();

    /** As it is now. */
    Length thickness();

    /** Checks that a piece has a name, a material and positive sizes. */
    static void check(String id, String material, Length... sizes) {
        if (id.isBlank() || material.isBlank()) {
            throw new IllegalArgumentException(
                    "A piece of stock needs an id (%s) and a material (%s).".formatted(id, material));
        }
        for (Length size : sizes) {
            if (!size.isPositive()) {
                throw new IllegalArgumentException(
                        "The size (%s) of stock (%s) must be greater than zero.".formatted(size, id));
            }
        }
    }
}
