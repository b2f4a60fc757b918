package scantling.piece;

import java.util.ArrayList;
import java.util.List;
import scantling.measure.Span;

/**
 * Reads a text of plain settings: keys with values, some under a heading. What the keys mean is for whoever asks; where
 * they stand is kept, so that what is wrong can be told with its place.
 */
public final class SettingsText {
    private SettingsText() {}

    /** One setting. @param heading the key it stands under, empty at the top @param key its key @param value its words @param span where the value stands */
    public record Entry(String heading, String key, String value, Span span) {}

    /** What was read. @param entries in the order of the text @param problems all that cannot be read */
    public record Result(List<Entry> entries, List<Problem> problems) {
        /** Takes its own copies. */
        public Result {
            entries = List.copyOf(entries);
            problems = List.copyOf(problems);
        }
    }

    /** Reads the bytes of a file. */
    public static Result readBytes(byte[] bytes) {
        PieceBytes read = PieceBytes.of(bytes);
        return read.text()
                .map(SettingsText::read)
                .orElseGet(() -> new Result(List.of(), read.problem().stream().toList()));
    }

    /** Reads a text. */
    public static Result read(String text) {
        Problems problems = new Problems();
        List<Entry> entries = new ArrayList<>();
        YamlTree.read(text, problems).ifPresent(root -> fields(root, "", entries, problems));
        return new Result(problems.isEmpty() ? entries : List.of(), problems.list());
    }

    static void fields(Node node, String heading, List<Entry> entries, Problems problems) {
        if (!(node instanceof Node.Fields fields)) {
            problems.add(node.span(), "Here stands %s.".formatted(node.word()), "Write keys with values.");
            return;
        }
        for (Node.Entry entry : fields.entries()) {
            String key = entry.key().text();
            if (entry.value() instanceof Node.Scalar scalar && !scalar.text().isBlank()) {
                entries.add(new Entry(heading, key, scalar.text().strip(), scalar.span()));
            } else if (heading.isEmpty() && entry.value() instanceof Node.Fields) {
                fields(entry.value(), key, entries, problems);
            } else if (!(entry.value() instanceof Node.Refused)) {
                problems.add(
                        entry.key().span(),
                        "%s has %s for a value."
                                .formatted(Problems.quoted(key), entry.value().word()),
                        "Write one value behind it.");
            }
        }
    }
}
