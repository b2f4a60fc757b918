package scantling.piece;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import scantling.measure.Span;

/**
 * Changes one given value in the text of a piece and leaves every other character as it is, comments and layout included.
 * Paths are said as a maker would: {@code size / width}, {@code materials / veneered / measured},
 * {@code top / overhang / front}, {@code build / 2 / rows / sizes / 1}; items count from 1, an element's word may stand
 * for its number, the word build in front may be left out.
 */
public final class PieceEditor {
    private static final Span START = new Span(1, 1, 0, 0);
    private static final Pattern BREAKS = Pattern.compile("\\p{Cntrl}");

    private final String text;
    private final Node.Fields root;
    private final GivenPaths paths;

    private PieceEditor(String text, Node.Fields root, Language language) {
        this.text = text;
        this.root = root;
        this.paths = new GivenPaths(root, language);
    }

    /** Something given. @param path how it is found @param value as written, without quotes @param span where it stands */
    public record Given(String path, String value, Span span) {}

    /** Everything given, in the order of the text; nothing when the text cannot be taken apart. */
    public static List<Given> givens(String text, Language language) {
        return open(text, language, new Problems())
                .map(editor -> editor.paths.all().stream()
                        .flatMap(path -> editor.paths.find(path).flatMap(GivenPaths.Spot::value).stream()
                                .map(phrase -> new Given(path, phrase.text(), phrase.span())))
                        .toList())
                .orElse(List.of());
    }

    /** The paths of everything given, in the order of the text; none when the text cannot be taken apart. */
    public static List<String> givenPaths(String text, Language language) {
        return open(text, language, new Problems())
                .map(editor -> editor.paths.all())
                .orElse(List.of());
    }

    /** Where the value of a path stands. */
    public static Optional<Span> findSpan(String text, Language language, String path) {
        return open(text, language, new Problems())
                .flatMap(editor -> editor.paths.find(path))
                .flatMap(GivenPaths.Spot::value)
                .map(Phrase::span);
    }

    /**
     * Puts a new value in place of a given one.
     *
     * @return the new text; or what is wrong with the path, or with the piece as it would then read
     */
    public static EditResult replace(String text, Language language, Woods woods, String path, String newValue) {
        Problems problems = new Problems();
        Optional<PieceEditor> editor = open(text, language, problems);
        Optional<String> edited = editor.flatMap(open -> open.edited(path, newValue.strip(), problems));
        if (edited.isEmpty()) {
            return new EditResult(Optional.empty(), problems.list());
        }
        ReadResult result = PieceReader.read(edited.get(), language, woods);
        return new EditResult(result.problems().isEmpty() ? edited : Optional.empty(), result.problems());
    }

    private static Optional<PieceEditor> open(String text, Language language, Problems problems) {
        if (PieceBytes.isTooLong(text.length())) {
            return problems.fail(START, PieceBytes.TOO_LONG, PieceBytes.TOO_LONG_REMEDY);
        }
        Optional<Node> tree = YamlTree.read(text, problems);
        if (tree.isEmpty() || !(tree.get() instanceof Node.Fields fields)) {
            return problems.isEmpty()
                    ? problems.fail(START, "The text is no description of a piece.", "")
                    : Optional.empty();
        }
        return Optional.of(new PieceEditor(text, fields, language));
    }

    private Optional<String> edited(String path, String value, Problems problems) {
        Optional<GivenPaths.Spot> spot = paths.find(path);
        Optional<Phrase> given = spot.flatMap(GivenPaths.Spot::value);
        if (given.isEmpty()) {
            return problems.fail(
                    spot.map(found -> found.node().span()).orElse(START),
                    spot.isPresent()
                            ? "%s is not one value.".formatted(Problems.quoted(path))
                            : "Nothing is given at %s.".formatted(Problems.quoted(path)),
                    Suggestions.remedy(path, paths.all()));
        }
        Phrase phrase = given.get();
        if (BREAKS.matcher(value).find() || value.isEmpty()) {
            return problems.fail(phrase.span(), "A new value stands on one line.", "");
        }
        return candidates(phrase, value)
                .filter(edit -> takes(edit, phrase, value))
                .map(Edit::whole)
                .findFirst()
                .or(() -> problems.fail(
                        phrase.span(),
                        "%s cannot stand in place of %s here."
                                .formatted(Problems.quoted(value), Problems.quoted(phrase.text())),
                        "Change it by hand."));
    }

    /** A text as it would be. */
    private record Edit(String whole) {}

    private Stream<Edit> candidates(Phrase phrase, String value) {
        Node.Scalar scalar = phrase.scalar();
        Span span = scalar.span();
        boolean all = phrase.from() == 0 && phrase.to() == scalar.text().length();
        if (!all) {
            return scalar.inside() < 0
                    ? Stream.empty()
                    : Stream.of(with(phrase.span().start(), phrase.span().end(), value));
        }
        String air = span.start() == span.end() ? " " : "";
        Stream<String> written = !keepsQuotes(scalar)
                ? Stream.of(air + value, air + single(value))
                : Stream.of(text.charAt(span.start()) == '\'' ? single(value) : twice(value));
        return written.map(words -> with(span.start(), span.end(), words));
    }

    /**
     * Quotes stay unless they are single ones that only the old text needed: those are what this editor itself puts, so
     * that an edit taken back gives the same bytes.
     */
    private boolean keepsQuotes(Node.Scalar scalar) {
        if (scalar.plain() || text.charAt(scalar.span().start()) == '"') {
            return !scalar.plain();
        }
        Edit bare = with(scalar.span().start(), scalar.span().end(), scalar.text());
        return text.charAt(scalar.span().start()) == '\''
                && takes(bare, new Phrase(scalar, 0, scalar.text().length()), scalar.text());
    }

    private Edit with(int start, int end, String words) {
        return new Edit(text.substring(0, start) + words + text.substring(end));
    }

    private static String single(String value) {
        return "'" + value.replace("'", "''") + "'";
    }

    private static String twice(String value) {
        return '"' + value.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    /** Whether the text with the edit says the new value, and all else as before. */
    private boolean takes(Edit edit, Phrase phrase, String value) {
        String old = phrase.scalar().text();
        String wanted = old.substring(0, phrase.from()) + value + old.substring(phrase.to());
        Problems problems = new Problems();
        Optional<Node> tree = YamlTree.read(edit.whole(), problems);
        return problems.isEmpty()
                && tree.filter(after -> same(root, after, phrase.scalar(), wanted))
                        .isPresent();
    }

    private static boolean same(Node before, Node after, Node.Scalar changed, String wanted) {
        if (before instanceof Node.Scalar scalar) {
            String text = scalar.span().equals(changed.span()) ? wanted : scalar.text();
            return after instanceof Node.Scalar other && other.text().equals(text);
        }
        if (before instanceof Node.Items list) {
            return after instanceof Node.Items other
                    && list.items().size() == other.items().size()
                    && Streams.zip(list.items(), other.items())
                            .allMatch(pair -> same(pair.a(), pair.b(), changed, wanted));
        }
        if (before instanceof Node.Fields fields && after instanceof Node.Fields other) {
            return fields.entries().size() == other.entries().size()
                    && Streams.zip(fields.entries(), other.entries())
                            .allMatch(pair ->
                                    pair.a().key().text().equals(pair.b().key().text())
                                            && same(pair.a().value(), pair.b().value(), changed, wanted));
        }
        return false;
    }
}
