package scantling.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.SqlLogger;
import org.jdbi.v3.core.statement.SqlStatements;
import org.jdbi.v3.core.statement.StatementContext;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import scantling.measure.Length;

/**
 * No value ever becomes part of a question to the database: Jdbi itself tells the text of every statement that it sends while
 * acts and questions carry words that would break out of a quoted text.
 */
class BoundValuesTest {
    private static final String MARK = "zqx";
    private static final String HOSTILE = "'); DROP TABLE job; -- \" " + MARK + " \\ ? :name";
    private static final Pattern QUOTED = Pattern.compile("\"([a-z_]+)\"");

    @TempDir
    Path folder;

    private final List<String> sent = new ArrayList<>();

    private final class Ear implements SqlLogger {
        @Override
        public void logBeforeExecution(StatementContext context) {
            sent.add(context.getRenderedSql() + " / " + context.getRawSql());
        }
    }

    private void listen(Handle handle) {
        handle.getConfig(SqlStatements.class).setSqlLogger(new Ear());
    }

    private TestShop listened() {
        TestShop shop = new TestShop(folder);
        shop.store().database().write(handle -> {
            listen(handle);
            return 0;
        });
        shop.store().database().read(handle -> {
            listen(handle);
            return 0;
        });
        return shop;
    }

    @Test
    void hostileWordsInActsAreValues() {
        try (TestShop shop = listened()) {
            String job = shop.addJob("wall-shelf");
            for (Act act : acts(job)) {
                shop.says(act);
            }
            shop.store().take(new Sent(HOSTILE, HOSTILE, 1, new Act.AddClient(new Client("", HOSTILE, "", ""))));
            assertEquals(
                    HOSTILE,
                    shop.store().clients().get(0).name(),
                    "what was written is what was said, letter by letter");
            assertEquals(1, shop.store().jobs().size());
        }
        check(40);
    }

    private static List<Act> acts(String job) {
        List<Act> acts = new ArrayList<>(List.of(
                new Act.AddClient(new Client("", HOSTILE, HOSTILE, HOSTILE)),
                new Act.ChangeClient(new Client(HOSTILE, HOSTILE, HOSTILE, HOSTILE)),
                new Act.AddJob(HOSTILE, HOSTILE, Optional.empty(), TestShop.starter("wall-shelf")),
                new Act.EditText(job, 1, TestShop.starter("wall-shelf") + "# " + HOSTILE + "\n", HOSTILE),
                new Act.EditText(HOSTILE, 1, TestShop.starter("wall-shelf"), HOSTILE),
                new Act.PutOnRack(new OnHand(TestShop.board(HOSTILE, 180, 2400), Optional.empty(), HOSTILE)),
                new Act.ChangeOnRack(new OnHand(TestShop.board(HOSTILE, 170, 2400), Optional.of(1L), HOSTILE)),
                new Act.TakeOffRack(HOSTILE, HOSTILE),
                new Act.PutSupply(new Supply(
                        HOSTILE, Supply.Kind.FINISH, HOSTILE, BigDecimal.ONE, HOSTILE, Optional.empty(), HOSTILE)),
                new Act.TakeSupply(HOSTILE),
                new Act.Set(new Setting(Section.ALLOWANCE, HOSTILE, HOSTILE)),
                new Act.Undo(HOSTILE),
                new Act.Redo(HOSTILE)));
        for (BenchEntry entry : entries()) {
            acts.add(new Act.Log(job, entry));
            acts.add(new Act.Log(HOSTILE, entry));
        }
        return acts;
    }

    private static List<BenchEntry> entries() {
        return List.of(
                new BenchEntry.Done(HOSTILE),
                new BenchEntry.Undone(HOSTILE),
                new BenchEntry.Measured(HOSTILE, Length.mm(20)),
                new BenchEntry.Spoilt(HOSTILE, HOSTILE),
                new BenchEntry.Note(HOSTILE, HOSTILE, Optional.of(HOSTILE)),
                new BenchEntry.Minutes(HOSTILE, 5),
                new BenchEntry.Cut(HOSTILE, Map.of("length", Length.mm(20))));
    }

    @Test
    void hostileWordsInQuestionsAreValues() {
        try (TestShop shop = listened()) {
            ShopStore store = shop.store();
            assertTrue(store.job(HOSTILE).isEmpty());
            assertTrue(store.text(HOSTILE).isEmpty());
            assertTrue(store.revisions(HOSTILE).isEmpty());
            assertTrue(store.revision(HOSTILE, 1).isEmpty());
            assertTrue(store.turned(HOSTILE).isEmpty());
            assertTrue(store.bench(HOSTILE).isEmpty());
            assertTrue(store.photo(HOSTILE).isEmpty());
            assertTrue(store.jobBook().planOf(HOSTILE).isEmpty());
            assertEquals(0, store.lastActOf(HOSTILE));
            assertEquals(HOSTILE, store.devices().pair(HOSTILE).device().name());
            assertTrue(store.devices().find(HOSTILE).isEmpty());
            assertFalse(store.devices().revoke(HOSTILE));
        }
        check(10);
    }

    /** Every statement is of words known beforehand. @param least so many must have been heard, or nobody listened */
    private void check(int least) {
        assertTrue(sent.size() >= least, sent.size() + " statements heard");
        Set<String> names = new TreeSet<>();
        Map<String, String> strange = new LinkedHashMap<>();
        for (ShopTable table : ShopTable.values()) {
            table.columns().forEach(column -> names.add(column.name()));
        }
        for (String sql : sent) {
            if (sql.contains(MARK)) {
                strange.put(sql, "holds a value");
            }
            QUOTED.matcher(sql)
                    .results()
                    .filter(found -> !names.contains(found.group(1)))
                    .forEach(found -> strange.put(sql, "names " + found.group(1)));
        }
        assertEquals(Map.of(), strange);
    }
}
