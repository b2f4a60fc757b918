package scantling.shop;

import java.util.List;

/** Takes acts back and does them again. Taking back is an act itself: doing again takes back the taking back. */
final class UndoActs {
    private final Changes changes;
    private final Shelves shelves;

    UndoActs(Changes changes, Shelves shelves) {
        this.changes = changes;
        this.shelves = shelves;
    }

    Effect undo(String id) {
        Row act = find(id);
        if (act.number("undone_by") != 0) {
            throw Refusal.of("\"%s\" has already been taken back.".formatted(act.text("words")), "");
        }
        if (act.number("undoes") != 0) {
            throw Refusal.of("This act took another one back.", "Do the other one again instead.");
        }
        if (act.text("kind").equals("add job")) {
            standsAlone(act);
        }
        takeBack(act);
        return new Effect("undo", "took back: " + act.text("words"), act.text("job"), act.text("subject"));
    }

    Effect redo(String id) {
        Row act = find(id);
        long by = act.number("undone_by");
        if (by == 0) {
            throw Refusal.of("\"%s\" has not been taken back.".formatted(act.text("words")), "");
        }
        takeBack(changes.rows().where(ShopTable.ACT, "seq = ?", by).get(0));
        changes.rows().update(ShopTable.ACT, act.number("seq"), Row.empty().with("undone_by", 0));
        return new Effect("redo", "did again: " + act.text("words"), act.text("job"), act.text("subject"));
    }

    private Row find(String id) {
        return shelves.findAct(id)
                .filter(act -> act.text("refused").isEmpty())
                .orElseThrow(() -> Refusal.of("There is no act (%s) to take back or do again.".formatted(id), ""));
    }

    /** A job with a history cannot vanish under it. */
    private void standsAlone(Row act) {
        List<Row> later = changes.rows()
                .where(
                        ShopTable.ACT,
                        "job = ? AND seq > ? AND undone_by = 0 AND undoes = 0 AND refused = '' AND kind <> 'redo'",
                        act.text("job"),
                        act.number("seq"));
        List<Row> others =
                later.stream().filter(row -> row.number("seq") != changes.act()).toList();
        if (!others.isEmpty()) {
            throw Refusal.of(
                    "The job has gone on since: \"%s\"."
                            .formatted(others.get(others.size() - 1).text("words")),
                    "Take that back first, or put the job away.");
        }
    }

    private void takeBack(Row act) {
        if (!changes.takeBack(act.number("seq"))) {
            throw Refusal.of(
                    "What \"%s\" changed has been changed again since.".formatted(act.text("words")),
                    "Take the later change back first.");
        }
        changes.rows().update(ShopTable.ACT, act.number("seq"), Row.empty().with("undone_by", changes.act()));
        changes.rows().update(ShopTable.ACT, changes.act(), Row.empty().with("undoes", act.number("seq")));
    }
}
