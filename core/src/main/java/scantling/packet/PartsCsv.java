package scantling.packet;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import scantling.measure.Dim;

/** The list of parts as comma-separated values by RFC 4180, one row to a mark, sizes in millimetres. */
public final class PartsCsv {
    /** The heads of the columns, in order. */
    static final String[] HEADS = {
        "mark", "parts", "count", "material", "of", "length mm", "width mm", "thickness mm", "cut to fit"
    };

    private static final String FORMULA_STARTS = "=+-@\t\r";

    private PartsCsv() {}

    /** Writes it. */
    public static String of(PacketContent content) {
        StringBuilder out = new StringBuilder();
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader(HEADS).get();
        try (CSVPrinter printer = new CSVPrinter(out, format)) {
            for (PartGroup group : content.groups()) {
                printer.printRecord(row(group));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("Text in memory could not be written.", e);
        }
        return out.toString();
    }

    private static Object[] row(PartGroup group) {
        return new Object[] {
            group.mark(),
            safe(String.join("; ", group.paths())),
            group.count(),
            safe(group.sample().material().name()),
            safe(group.sample().material().of()),
            mm(group.sample().length()),
            mm(group.sample().width()),
            mm(group.sample().thickness()),
            group.sample().fitted() ? "yes" : "no"
        };
    }

    /** Text that a spreadsheet would run as a formula is made text by a quote before it. */
    static String safe(String text) {
        return !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }

    private static String mm(Dim dim) {
        return dim.value().millimetres().toPlainString();
    }
}
