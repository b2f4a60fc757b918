package scantling.shop;

import java.util.List;
import java.util.Optional;

/** What one act changes: each row as it was and as it is, so that the act can be taken back to the letter. */
final class Changes {
    private final Rows rows;
    private final long act;
    private int count;

    Changes(Rows rows, long act) {
        this.rows = rows;
        this.act = act;
    }

    Rows rows() {
        return rows;
    }

    long act() {
        return act;
    }

    /** A row as it is to be, new or in place of the one with its key. */
    void put(ShopTable table, Row row) {
        String key = row.text(table.key());
        Optional<Row> old = rows.find(table, key);
        if (old.isEmpty()) {
            rows.insert(table, row);
            note(table, key, Row.empty(), row);
            return;
        }
        Row changed = row.differing(old.get());
        if (!changed.isEmpty()) {
            rows.update(table, key, changed);
            note(table, key, old.get().only(changed.values().keySet()), changed);
        }
    }

    /** No row with that key any more. */
    void remove(ShopTable table, String key) {
        rows.find(table, key).ifPresent(old -> {
            rows.delete(table, key);
            note(table, key, old, Row.empty());
        });
    }

    private void note(ShopTable table, String key, Row before, Row after) {
        count++;
        rows.insert(
                ShopTable.CHANGE,
                Row.empty()
                        .with("act", act)
                        .with("nr", count)
                        .with("place", table.word())
                        .with("row", key)
                        .with("before", before.json())
                        .with("after", after.json()));
    }

    /**
     * Puts back what another act changed.
     *
     * @return false, with half the work done, when something was changed again since; then the transaction must be given up
     */
    boolean takeBack(long other) {
        List<Row> changes = rows.where(ShopTable.CHANGE, "act = ?", other);
        for (int i = changes.size() - 1; i >= 0; i--) {
            if (!takeBack(changes.get(i))) {
                return false;
            }
        }
        return true;
    }

    private boolean takeBack(Row change) {
        ShopTable table = ShopTable.find(change.text("place")).orElseThrow();
        String key = change.text("row");
        Row before = Row.ofJson(change.text("before"));
        Row after = Row.ofJson(change.text("after"));
        Optional<Row> now = rows.find(table, key);
        boolean asLeft = now.isEmpty()
                ? after.isEmpty()
                : !after.isEmpty() && after.differing(now.get()).isEmpty();
        if (!asLeft) {
            return false;
        }
        if (before.isEmpty()) {
            remove(table, key);
        } else {
            Row whole = now.orElse(Row.empty());
            for (String column : before.values().keySet()) {
                whole = before.get(column) instanceof Long number
                        ? whole.with(column, number)
                        : whole.with(column, before.text(column));
            }
            put(table, whole);
        }
        return true;
    }
}
