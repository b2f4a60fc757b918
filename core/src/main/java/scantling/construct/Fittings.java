package scantling.construct;

import java.util.List;
import java.util.Optional;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.timber.Table;

/** What slides, hinges and the usual joints of frames ask of the wood around them, from {@code fittings.csv}. */
final class Fittings {
    private static final String TABLE = "fittings.csv";
    private static final List<Row> ROWS = read();

    private record Row(String fitting, String value, Dim dim) {}

    private Fittings() {}

    /** A number that may be in the table. */
    static Optional<Dim> find(String fitting, String value) {
        return all(fitting, value).stream().findFirst();
    }

    /** A number of the table. @throws IllegalArgumentException when it is not there, which is a fault of the one who asks */
    static Dim of(String fitting, String value) {
        return find(fitting, value)
                .orElseThrow(() -> new IllegalArgumentException(
                        "No (%s) is known for the fitting (%s).".formatted(value, fitting)));
    }

    /** All numbers of that name, in the order of the table: the lengths a slide is sold in. */
    static List<Dim> all(String fitting, String value) {
        return ROWS.stream()
                .filter(row -> row.fitting().equals(fitting) && row.value().equals(value))
                .map(Row::dim)
                .toList();
    }

    private static List<Row> read() {
        return Table.read("construct/" + TABLE).rows().stream()
                .map(row -> {
                    String key = row.text("fitting") + ", " + row.text("value");
                    Dim dim = Dim.lookedUp(Length.mm(row.text("mm")), TABLE, key, row.source());
                    return new Row(row.text("fitting"), row.text("value"), dim);
                })
                .toList();
    }
}
