package scantling.piece;

import scantling.measure.Dim;

/** One of the sizes that a space is divided into: fixed, or so many shares of what is left. */
public sealed interface Portion {
    /** A size of its own. */
    record Fixed(Dim size) implements Portion {}

    /** So many shares of what the fixed ones leave: {@code rest} is one, {@code 2 shares} two. */
    record Shares(int count) implements Portion {}
}
