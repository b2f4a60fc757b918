package scantling.piece;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.measure.Length;
import scantling.measure.LengthReader;
import scantling.measure.Unit;

/**
 * Reads what the bench says:
 *
 * <pre>{@code
 * measured:
 *   drawers / drawer 2 / opening / width: 444.2
 * cut:
 *   left end / top rail: as planned
 *   drawers / drawer 1 / front: {width: 125.6}
 * }</pre>
 */
public final class BenchLogReader {
    private static final List<String> SIZES = List.of("length", "width", "thickness");

    private final Unit unit;
    private final Problems problems = new Problems();
    private final List<BenchLog.Measured> measured = new ArrayList<>();
    private final List<BenchLog.Cut> cut = new ArrayList<>();

    private BenchLogReader(Unit unit) {
        this.unit = unit;
    }

    /** What became of reading. @param log there only when nothing is wrong @param problems everything that is wrong */
    public record Result(Optional<BenchLog> log, List<Problem> problems) {}

    /** Reads a text. @param unit of lengths that name none: the piece's */
    public static Result read(String text, Unit unit) {
        BenchLogReader reader = new BenchLogReader(unit);
        YamlTree.read(text, reader.problems).ifPresent(reader::root);
        List<Problem> wrong = reader.problems.list();
        return new Result(
                wrong.isEmpty() ? Optional.of(new BenchLog(reader.measured, reader.cut)) : Optional.empty(), wrong);
    }

    private void root(Node root) {
        for (Node.Entry entry : entries(root, "\"measured\" and \"cut\"")) {
            switch (entry.key().text()) {
                case "measured" -> entries(entry.value(), "name: size").forEach(this::measured);
                case "cut" -> cut(entry.value());
                default -> problems.add(
                        entry.key().span(),
                        "%s is not something the bench says."
                                .formatted(Problems.quoted(entry.key().text())),
                        "Say \"measured\" or \"cut\".");
            }
        }
    }

    private List<Node.Entry> entries(Node node, String expected) {
        if (node instanceof Node.Fields fields) {
            return fields.entries();
        }
        if (!node.isEmpty() && !(node instanceof Node.Refused)) {
            problems.add(node.span(), "Here stands %s.".formatted(node.word()), "Write %s.".formatted(expected));
        }
        return List.of();
    }

    private void measured(Node.Entry entry) {
        length(entry.value())
                .ifPresent(size -> measured.add(new BenchLog.Measured(
                        entry.key().text(), size, entry.key().span())));
    }

    private void cut(Node node) {
        if (node instanceof Node.Items items) {
            for (Node item : items.items()) {
                if (item instanceof Node.Scalar scalar) {
                    cut.add(new BenchLog.Cut(scalar.text(), Map.of(), scalar.span()));
                } else {
                    problems.add(item.span(), "Here stands %s.".formatted(item.word()), "Write the name of a part.");
                }
            }
        } else {
            entries(node, "names of parts").forEach(this::cutPart);
        }
    }

    private void cutPart(Node.Entry entry) {
        Map<String, Length> sizes = new LinkedHashMap<>();
        boolean asPlanned = entry.value().isEmpty()
                || entry.value() instanceof Node.Scalar word && word.text().equals("as planned");
        if (!asPlanned) {
            for (Node.Entry size : entries(entry.value(), "\"as planned\" or {length: ..., width: ...}")) {
                cutSize(size, sizes);
            }
        }
        cut.add(new BenchLog.Cut(entry.key().text(), sizes, entry.key().span()));
    }

    private void cutSize(Node.Entry size, Map<String, Length> sizes) {
        if (SIZES.contains(size.key().text())) {
            length(size.value())
                    .ifPresent(length -> sizes.put(size.key().text(), length));
        } else {
            problems.add(
                    size.key().span(),
                    "A part has no %s.".formatted(Problems.quoted(size.key().text())),
                    "Say length, width or thickness.");
        }
    }

    private Optional<Length> length(Node node) {
        Optional<Length> length = node instanceof Node.Scalar scalar
                ? LengthReader.read(scalar.text(), unit).filter(Length::isPositive)
                : Optional.empty();
        if (length.isEmpty() && !(node instanceof Node.Refused)) {
            problems.add(
                    node.span(),
                    "%s is no size that can be measured.".formatted(node.word()),
                    "Write a length greater than zero, such as 444.2 or 17 1/2 in.");
        }
        return length;
    }
}
