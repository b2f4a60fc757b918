package scantling.construct;

import scantling.measure.Span;

/**
 * A change to the text of a piece that does what a remedy says.
 *
 * @param words what it changes, for the maker: {@code materials / oak / thickness from 20 to 22}
 * @param span what it takes out of the text; empty where it only puts something in
 * @param replacement what it puts there
 */
public record Change(String words, Span span, String replacement) {
    /** The text after it. @throws IndexOutOfBoundsException for a text it was not made for */
    public String applyTo(String text) {
        return text.substring(0, span.start()) + replacement + text.substring(span.end());
    }
}
