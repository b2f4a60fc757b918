package scantling.piece;

import java.util.List;
import java.util.Optional;
import scantling.measure.Span;

/** A document as a tree in which everything knows where it stands. */
sealed interface Node {
    /** Where it stands. */
    Span span();

    /**
     * One value.
     *
     * @param text what it says, quotes and escapes removed
     * @param plain whether it stands without quotes on a line of its own
     * @param inside where its text stands letter for letter in the document, or -1 when quoting or folding changed it
     */
    record Scalar(String text, boolean plain, Span span, int inside) implements Node {
        /** A value that stands in no document: a usual one. */
        static Scalar usual(String text, Span span) {
            return new Scalar(text, true, span, -1);
        }

        /** Where a stretch of its text stands. */
        Span part(int from, int to) {
            return inside < 0
                    ? span
                    : new Span(span.line(), span.column() + inside - span.start() + from, inside + from, inside + to);
        }
    }

    /** A list. */
    record Items(List<Node> items, Span span) implements Node {}

    /** Keys with values. */
    record Fields(List<Entry> entries, Span span) implements Node {
        /** The value of a key. */
        Optional<Node> find(String key) {
            return entries.stream()
                    .filter(entry -> entry.key().text().equals(key))
                    .map(Entry::value)
                    .findFirst();
        }
    }

    /** Something that was refused and reported already. */
    record Refused(Span span) implements Node {}

    /** A key with its value. */
    record Entry(Scalar key, Node value) {}

    /** Whether nothing was written there. */
    default boolean isEmpty() {
        return this instanceof Scalar scalar && scalar.plain() && scalar.text().isEmpty();
    }

    /** What it is, for people. */
    default String word() {
        if (this instanceof Items) {
            return "a list";
        }
        if (this instanceof Fields) {
            return "keys with values";
        }
        return this instanceof Scalar scalar && !scalar.text().isEmpty()
                ? Problems.quoted(scalar.text())
                : "nothing at all";
    }
}
