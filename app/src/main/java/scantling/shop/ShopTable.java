package scantling.shop;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The tables, with their columns in order, the key first. Names of tables and columns come from here and nowhere else. */
enum ShopTable {
    CLIENT("client", "id", "name", "contact", "note"),
    JOB("job", "id", "title", "client", "due", "price", "state", "revision#"),
    RACK(
            "rack",
            "id",
            "nr#",
            "form",
            "material",
            "rough",
            "thickness",
            "measured",
            "length",
            "width",
            "grade",
            "grain",
            "cut_from",
            "price",
            "place"),
    SUPPLY("supply", "id", "kind", "name", "amount", "unit", "price", "place"),
    SETTING("setting", "id", "section", "name", "value"),
    ACT(
            "act",
            "seq#",
            "id",
            "device",
            "number#",
            "at",
            "kind",
            "words",
            "job",
            "subject",
            "refused",
            "undoes#",
            "undone_by#"),
    REVISION("revision", "job", "number#", "act#", "text"),
    BENCH("bench", "seq#", "act#", "job", "kind", "subject", "body"),
    CHANGE("change", "act#", "nr#", "place", "row", "before", "after");

    /** Tables whose rows an act changes and an undo puts back. */
    static final List<ShopTable> CHANGING = List.of(CLIENT, JOB, RACK, SUPPLY, SETTING);

    private final String word;
    private final List<Column> columns;

    /** A column. @param number whether it holds whole numbers, else text */
    record Column(String name, boolean number) {}

    ShopTable(String word, String... columns) {
        this.word = word;
        this.columns = Stream.of(columns)
                .map(column -> new Column(column.replace("#", ""), column.endsWith("#")))
                .toList();
    }

    String word() {
        return word;
    }

    List<Column> columns() {
        return columns;
    }

    String key() {
        return columns.get(0).name();
    }

    /** Columns that order its rows. */
    String order() {
        return this == REVISION || this == CHANGE
                ? key() + ", " + columns.get(1).name()
                : key();
    }

    static Optional<ShopTable> find(String word) {
        return Stream.of(values()).filter(table -> table.word.equals(word)).findFirst();
    }
}
