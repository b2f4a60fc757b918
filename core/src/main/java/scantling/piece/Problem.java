package scantling.piece;

import scantling.measure.Span;

/**
 * Something in the text that cannot be read or built.
 *
 * @param span where
 * @param message what is wrong, with the value
 * @param remedy what to do: what is allowed, the nearest right spelling; may be empty
 */
public record Problem(Span span, String message, String remedy) {
    /** For people: {@code line 3, column 9: ... Maybe ...}. */
    @Override
    public String toString() {
        return span + ": " + message + (remedy.isEmpty() ? "" : " " + remedy);
    }
}
