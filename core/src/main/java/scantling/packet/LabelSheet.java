package scantling.packet;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * A sheet of labels, all sizes in mm.
 *
 * @param name what one asks for it by: a4-24
 * @param paper it is on
 * @param columns of labels
 * @param rows of labels
 * @param width of a label
 * @param height of a label
 * @param left of the first label
 * @param top of the first label
 * @param columnGap between two columns
 * @param rowGap between two rows
 * @param source where its sizes come from
 */
public record LabelSheet(
        String name,
        Paper paper,
        int columns,
        int rows,
        double width,
        double height,
        double left,
        double top,
        double columnGap,
        double rowGap,
        String source) {
    /** Every sheet there is; the first of each paper is plain, to be cut apart. */
    public static List<LabelSheet> all() {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (var parser = format.parse(new StringReader(Resources.text("labels.csv")))) {
            return parser.stream().map(LabelSheet::of).toList();
        } catch (IOException e) {
            throw new UncheckedIOException("Text in memory could not be read.", e);
        }
    }

    /** The sheet of that name. */
    public static Optional<LabelSheet> find(String name) {
        return all().stream()
                .filter(sheet -> sheet.name().equalsIgnoreCase(name.strip()))
                .findFirst();
    }

    /** The plain sheet of a paper. */
    public static LabelSheet plain(Paper paper) {
        return all().stream()
                .filter(sheet -> sheet.paper() == paper && sheet.isPlain())
                .findFirst()
                .orElseThrow();
    }

    private static LabelSheet of(CSVRecord row) {
        return new LabelSheet(
                row.get("name"),
                Paper.valueOf(row.get("paper")),
                Integer.parseInt(row.get("columns")),
                Integer.parseInt(row.get("rows")),
                Double.parseDouble(row.get("width mm")),
                Double.parseDouble(row.get("height mm")),
                Double.parseDouble(row.get("left mm")),
                Double.parseDouble(row.get("top mm")),
                Double.parseDouble(row.get("column gap mm")),
                Double.parseDouble(row.get("row gap mm")),
                row.get("source"));
    }

    /** Whether it is cut from a plain sheet. */
    public boolean isPlain() {
        return name.startsWith("plain");
    }

    int perSheet() {
        return columns * rows;
    }

    double leftOf(int index) {
        return left + index % columns * (width + columnGap);
    }

    double topOf(int index) {
        return top + index / columns * (height + rowGap);
    }
}
