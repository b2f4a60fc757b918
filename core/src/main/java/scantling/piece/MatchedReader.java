package scantling.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Reads which parts are matched: a list of rows, each a list of paths of parts, or one path with a star in it, end to end; or
 * {@code {beside: ...}}, side by side, where a list among the others is a row of its own.
 */
final class MatchedReader {
    /** The key of parts that lie side by side. */
    static final String BESIDE = "beside";

    private static final String WANTED = "rows, as in [[upper door / panel, lower door / panel],"
            + " {beside: [drawer 1 / front, drawer 2 / front]}, drawers / * / front]";
    private static final String LABEL = "matched";

    private final Reading reading;

    MatchedReader(Reading reading) {
        this.reading = reading;
    }

    List<Piece.Row> rows(Node node) {
        List<Piece.Row> rows = new ArrayList<>();
        for (Node row : reading.items(node, LABEL, WANTED).orElse(List.of())) {
            List<Piece.Line> lines = row instanceof Node.Fields fields ? beside(fields) : List.of(line(row, true));
            rows.add(new Piece.Row(lines, row.span()));
        }
        return List.copyOf(rows);
    }

    private List<Piece.Line> beside(Node.Fields fields) {
        List<Piece.Line> lines = new ArrayList<>();
        for (Node.Entry entry : fields.entries()) {
            if (entry.key().text().equals(BESIDE)) {
                each(entry.value()).forEach(one -> lines.add(line(one, one instanceof Node.Items)));
            } else {
                reading.unknownKey(entry.key(), LABEL, List.of(BESIDE));
            }
        }
        return lines;
    }

    private Piece.Line line(Node node, boolean endToEnd) {
        List<String> parts = each(node)
                .flatMap(name -> reading.scalar(name, LABEL, "the path of a part").stream())
                .map(name -> name.text().strip())
                .toList();
        return new Piece.Line(parts, endToEnd);
    }

    private static Stream<Node> each(Node node) {
        return node instanceof Node.Items list ? list.items().stream() : Stream.of(node);
    }
}
