package scantling.construct;

import java.util.List;
import java.util.Optional;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.measure.Making;
import scantling.measure.Sensitivity;
import scantling.measure.Span;
import scantling.piece.Piece;

/** Makes changes to the text of a piece out of the numbers that follow from it. */
public final class Changes {
    private Changes() {}

    /**
     * The number that the maker typed, changed so that one which follows from it alone, one for one, comes to a wanted
     * value. Empty when several numbers make it, or a table gave it.
     */
    public static Optional<Change> bring(Dim number, Length wanted, Piece piece) {
        Dim source = number;
        while (source.making().inputs().size() == 1
                && source.making().inputs().get(0).effect() == 1) {
            source = source.making().inputs().get(0).dim();
        }
        return source.making() instanceof Making.Given given ? change(given, wanted, piece) : Optional.empty();
    }

    /** One typed number among those that make another, by more or less. @param label how its label ends */
    public static Optional<Change> shift(Dim number, String label, Length by, Piece piece) {
        List<Making.Given> given = sources(number).stream()
                .filter(each -> each.label().endsWith(label))
                .distinct()
                .toList();
        return given.size() == 1
                ? value(number, given.get(0)).flatMap(now -> change(given.get(0), now.plus(by), piece))
                : Optional.empty();
    }

    private static List<Making.Given> sources(Dim number) {
        return Sensitivity.toSources(number).effects().stream()
                .map(effect -> effect.source().making())
                .filter(Making.Given.class::isInstance)
                .map(Making.Given.class::cast)
                .toList();
    }

    private static Optional<Length> value(Dim number, Making.Given given) {
        return Sensitivity.toSources(number).effects().stream()
                .filter(effect -> effect.source().making().equals(given))
                .map(effect -> effect.source().value())
                .findFirst();
    }

    private static Optional<Change> change(Making.Given given, Length wanted, Piece piece) {
        LengthFormat format = LengthFormat.of(piece.written());
        String written = format.inches()
                ? format.format(wanted)
                : wanted.millimetres().stripTrailingZeros().toPlainString();
        boolean stands = given.span().end() <= piece.text().length()
                && piece.text()
                        .substring(given.span().start(), given.span().end())
                        .equals(given.text());
        return stands
                ? Optional.of(new Change(
                        "%s from %s to %s".formatted(given.label(), given.text(), written), given.span(), written))
                : Optional.empty();
    }

    /**
     * A new entry under a key at the top of the text. Empty when what stands there already goes on in a way that nothing can
     * safely be put into.
     */
    public static Optional<Change> enter(String key, String name, String value, Piece piece) {
        String text = piece.text();
        String entry = quoted(name) + ": " + quoted(value);
        int start = lineOf(text, key + ":");
        if (start < 0) {
            String before = text.isEmpty() || text.endsWith("\n") ? "" : "\n";
            return Optional.of(put(key, name, text.length(), before + key + ":\n  " + entry + "\n"));
        }
        int end = text.indexOf('\n', start) < 0 ? text.length() : text.indexOf('\n', start);
        String line = text.substring(start, end);
        String rest = line.substring(key.length() + 1).strip();
        if (rest.isEmpty() || rest.startsWith("#")) {
            return Optional.of(put(key, name, end, "\n" + indent(text, end) + entry));
        }
        boolean flows = rest.startsWith("{") && rest.endsWith("}");
        int brace = start + line.lastIndexOf('}');
        String comma = rest.replace(" ", "").equals("{}") ? "" : ", ";
        return flows ? Optional.of(put(key, name, brace, comma + entry)) : Optional.empty();
    }

    private static Change put(String key, String name, int at, String what) {
        return new Change("%s: %s".formatted(key, name), new Span(1, 1, at, at), what);
    }

    private static int lineOf(String text, String beginning) {
        if (text.startsWith(beginning)) {
            return 0;
        }
        int found = text.indexOf("\n" + beginning);
        return found < 0 ? -1 : found + 1;
    }

    /** As the next line is indented, or by two. */
    private static String indent(String text, int end) {
        int from = end + 1;
        int to = from;
        while (to < text.length() && text.charAt(to) == ' ') {
            to++;
        }
        return to > from ? text.substring(from, to) : "  ";
    }

    private static String quoted(String words) {
        return '"' + words.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
