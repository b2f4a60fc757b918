package scantling.shop;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Whether rows that came from outside mean something, one by one and together. */
final class ImportCheck {
    private final Rows rows;
    private final Consumer<String> fault;

    ImportCheck(Rows rows, Consumer<String> fault) {
        this.rows = rows;
        this.fault = fault;
    }

    /** @throws IllegalArgumentException for a row that cannot be what its table says */
    static void readable(ShopTable table, Row row) {
        switch (table) {
            case CLIENT -> Records.client(row);
            case JOB -> safeName(Records.job(row).id());
            case RACK -> RackRows.onHand(row);
            case SUPPLY -> Records.supply(row);
            case SETTING -> Records.setting(row);
            case ACT -> act(row);
            case CHANGE -> change(row);
            case REVISION -> safeName(row.text("job"));
            case BENCH -> BenchRows.entry(row);
        }
    }

    /** A name that is part of a path. */
    static void safeName(String name) {
        if (!name.matches("[a-z0-9]{1,60}(-[a-z0-9]{1,60}){0,20}")) {
            throw new IllegalArgumentException("a job cannot be called (%s)".formatted(name));
        }
    }

    private static void act(Row row) {
        Records.recorded(row);
        if (row.number("seq") < 1) {
            throw new IllegalArgumentException("acts are counted from 1");
        }
    }

    private static void change(Row row) {
        ShopTable table = ShopTable.find(row.text("place"))
                .filter(ShopTable.CHANGING::contains)
                .orElseThrow(
                        () -> new IllegalArgumentException("nothing is kept in (%s)".formatted(row.text("place"))));
        Row before = Row.ofJson(row.text("before"));
        Row after = Row.ofJson(row.text("after"));
        Set<String> known = table.columns().stream().map(ShopTable.Column::name).collect(Collectors.toSet());
        boolean same = before.isEmpty()
                || after.isEmpty()
                || before.values().keySet().equals(after.values().keySet());
        if (!same || !Stream.of(before, after).allMatch(side -> fits(table, known, side))) {
            throw new IllegalArgumentException("it does not say what was changed");
        }
    }

    private static boolean fits(ShopTable table, Set<String> known, Row side) {
        return known.containsAll(side.values().keySet())
                && table.columns().stream()
                        .filter(column -> side.values().containsKey(column.name()))
                        .allMatch(column -> column.number() == side.get(column.name()) instanceof Long);
    }

    /** What one row cannot know of another. */
    void check() {
        none("an act took back one that is not there", """
            SELECT count(*) FROM act a WHERE (a.undoes <> 0 AND NOT EXISTS (SELECT 1 FROM act b WHERE b.seq = a.undoes))
            OR (a.undone_by <> 0 AND NOT EXISTS (SELECT 1 FROM act b WHERE b.seq = a.undone_by))\
            """);
        none("a job has no such text as the one that counts", """
            SELECT count(*) FROM job j WHERE NOT EXISTS
            (SELECT 1 FROM revision r WHERE r.job = j.id AND r.number = j.revision)\
            """);
        none("a job is for a client who is not there", """
            SELECT count(*) FROM job WHERE client <> '' AND client NOT IN (SELECT id FROM client)\
            """);
        none("two pieces in the rack have one place in its order", """
            SELECT count(*) - count(DISTINCT nr) FROM rack\
            """);
        none("something names an act that is not there", """
            SELECT (SELECT count(*) FROM revision WHERE act NOT IN (SELECT seq FROM act))
            + (SELECT count(*) FROM bench WHERE act NOT IN (SELECT seq FROM act))
            + (SELECT count(*) FROM change WHERE act NOT IN (SELECT seq FROM act))\
            """);
        photos();
    }

    private void none(String what, String count) {
        if (rows.number(count) != 0) {
            fault.accept(what);
        }
    }

    private void photos() {
        Set<String> missing = new TreeSet<>();
        List<Row> notes = rows.where(ShopTable.BENCH, "kind = 'note'");
        for (Row row : notes) {
            if (BenchRows.entry(row) instanceof BenchEntry.Note note) {
                note.photo()
                        .filter(photo -> rows.number("SELECT count(*) FROM photo WHERE id = ?", photo) == 0)
                        .ifPresent(missing::add);
            }
        }
        missing.forEach(photo -> fault.accept("the photo (%s) is not there".formatted(photo)));
    }
}
