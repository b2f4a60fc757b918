package scantling.shop;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Takes acts as they arrive: each once, those of a counting device strictly in turn. Safe for many threads. */
final class Journal {
    private final Database database;
    private final Clock clock;

    Journal(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /** The answer is on the disk when this returns. */
    Answer take(Sent sent) {
        try {
            return database.write(handle -> taken(handle, sent));
        } catch (Refusal no) {
            return sent.number() == 0 ? no.answer() : database.write(handle -> counted(handle, sent, no));
        }
    }

    private Answer taken(Handle handle, Sent sent) {
        Rows rows = new Rows(handle);
        Optional<Row> known = new Shelves(rows).findAct(sent.id());
        if (known.isPresent()) {
            return again(known.get());
        }
        if (sent.number() > 0) {
            long expected = 1 + rows.number("SELECT coalesce(max(number), 0) FROM act WHERE device = ?", sent.device());
            if (sent.number() != expected) {
                return new Answer.OutOfTurn(expected);
            }
        }
        long seq = rows.append(ShopTable.ACT, act(sent, ""));
        Effect effect = new Acting(new Changes(rows, seq)).take(sent.act());
        rows.update(
                ShopTable.ACT,
                seq,
                Row.empty()
                        .with("kind", effect.kind())
                        .with("words", effect.words())
                        .with("job", effect.job())
                        .with("subject", effect.subject()));
        return new Answer.Taken(
                Records.recorded(new Shelves(rows).findAct(sent.id()).orElseThrow()));
    }

    private static Answer again(Row act) {
        String refused = act.text("refused");
        return refused.isEmpty() ? new Answer.Taken(Records.recorded(act)) : new Answer.Refused(refused, "", List.of());
    }

    /** A refused act of a counting device takes its turn all the same, or everything behind it would wait for ever. */
    private Answer counted(Handle handle, Sent sent, Refusal no) {
        Rows rows = new Rows(handle);
        if (new Shelves(rows).findAct(sent.id()).isEmpty()) {
            rows.append(ShopTable.ACT, act(sent, sentence(no.answer())));
        }
        return no.answer();
    }

    private static String sentence(Answer answer) {
        if (answer instanceof Answer.Refused refused) {
            return (refused.sentence() + " " + refused.remedy()).strip();
        }
        return "The text was changed by somebody else meanwhile.";
    }

    private Row act(Sent sent, String refused) {
        return Row.empty()
                .with("id", sent.id())
                .with("device", sent.device())
                .with("number", sent.number())
                .with("at", clock.instant().truncatedTo(ChronoUnit.SECONDS).toString())
                .with("kind", "")
                .with("words", "")
                .with("job", "")
                .with("subject", "")
                .with("refused", refused)
                .with("undoes", 0)
                .with("undone_by", 0);
    }
}
