package scantling.measure;

/**
 * Where in the maker's text something was written.
 *
 * @param line the line, from 1
 * @param column the column of its first character, from 1
 * @param start offset of its first character in the text, from 0, in UTF-16 code units
 * @param end offset just behind its last character
 */
public record Span(int line, int column, int start, int end) {
    /** Checks that the span runs forward. */
    public Span {
        if (line < 1 || column < 1 || start < 0 || end < start) {
            throw new IllegalArgumentException(
                    "A span must run forward, not (%d:%d, %d to %d).".formatted(line, column, start, end));
        }
    }

    /** For people: {@code line 3, column 14}. */
    @Override
    public String toString() {
        return "line %d, column %d".formatted(line, column);
    }
}
