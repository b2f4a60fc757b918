package scantling.piece;

import scantling.measure.Span;

/** A stretch of a value's text that knows where it stands. */
record Phrase(Node.Scalar scalar, int from, int to) {
    /** The whole value. */
    static Phrase of(Node.Scalar scalar) {
        return new Phrase(scalar, 0, scalar.text().length()).strip();
    }

    String text() {
        return scalar.text().substring(from, to);
    }

    /** Where it stands. */
    Span span() {
        return scalar.part(from, to);
    }

    /** A stretch of this stretch. */
    Phrase sub(int start, int end) {
        return new Phrase(scalar, from + start, from + end);
    }

    /** Without the white space around it. */
    Phrase strip() {
        int start = from;
        int end = to;
        while (start < end && Character.isWhitespace(scalar.text().charAt(start))) {
            start++;
        }
        while (end > start && Character.isWhitespace(scalar.text().charAt(end - 1))) {
            end--;
        }
        return new Phrase(scalar, start, end);
    }
}
