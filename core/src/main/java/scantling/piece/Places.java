package scantling.piece;

import java.util.Optional;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import scantling.measure.Span;

/** Turns the marks of the YAML parser, which counts code points, into places in the maker's text. */
final class Places {
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private final String text;
    private final int skipped;
    /** By code point, when some characters take two units; else empty. */
    private final int[] offsets;

    Places(String text) {
        this.text = text;
        this.skipped = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? 1 : 0;
        this.offsets = text.codePoints().anyMatch(Character::isSupplementaryCodePoint) ? table(yaml()) : new int[0];
    }

    private static int[] table(String yaml) {
        int[] table = new int[yaml.codePointCount(0, yaml.length()) + 1];
        int offset = 0;
        for (int i = 0; i < table.length - 1; i++) {
            table[i] = offset;
            offset += Character.charCount(yaml.codePointAt(offset));
        }
        table[table.length - 1] = offset;
        return table;
    }

    /** The text without a byte order mark. */
    String yaml() {
        return text.substring(skipped);
    }

    /** From the start of one event to the end of another. */
    Span span(Event first, Event last) {
        Optional<Mark> start = first.getStartMark();
        Optional<Mark> end = last.getEndMark();
        return start.isEmpty() || end.isEmpty()
                ? at(0)
                : new Span(
                        start.get().getLine() + 1,
                        start.get().getColumn() + 1,
                        offset(start.get().getIndex()),
                        Math.max(
                                offset(start.get().getIndex()), offset(end.get().getIndex())));
    }

    /** The single character at a mark. */
    Span at(Mark mark) {
        int offset = Math.min(offset(mark.getIndex()), text.length());
        return new Span(mark.getLine() + 1, mark.getColumn() + 1, offset, Math.min(offset + 1, text.length()));
    }

    /** The single character at a code point. */
    Span at(int codePoint) {
        int offset = Math.min(offset(codePoint), text.length());
        int line =
                (int) text.substring(0, offset).chars().filter(c -> c == '\n').count() + 1;
        int column = offset - (text.lastIndexOf('\n', offset - 1) + 1) + 1;
        return new Span(line, column, offset, Math.min(offset + 1, text.length()));
    }

    /** The line that a place is on, for messages. */
    String line(Span span) {
        int start = text.lastIndexOf('\n', span.start() - 1) + 1;
        int end = text.indexOf('\n', span.start());
        return text.substring(Math.min(start, text.length()), end < start ? text.length() : end)
                .strip();
    }

    /** A value with its place. */
    Node.Scalar scalar(ScalarEvent event) {
        Span span = span(event, event);
        int quote = event.isPlain() ? 0 : 1;
        boolean oneLine = event.getScalarStyle() != ScalarStyle.LITERAL
                && event.getScalarStyle() != ScalarStyle.FOLDED
                && event.getValue().indexOf('\n') < 0;
        int start = span.start() + quote;
        boolean letterForLetter = oneLine
                && text.startsWith(event.getValue(), start)
                && start + event.getValue().length() + quote == span.end();
        return new Node.Scalar(event.getValue(), event.isPlain(), span, letterForLetter ? start : -1);
    }

    private int offset(int codePoint) {
        return skipped + (offsets.length == 0 ? codePoint : offsets[Math.min(codePoint, offsets.length - 1)]);
    }
}
