package scantling.shop;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Starters;
import scantling.measure.Length;
import scantling.plan.Plan;
import scantling.stock.Board;
import scantling.stock.RoughClass;

/** A shop in a folder of its own, and short ways to act in it. Acts are named a1, a2 ... */
final class TestShop implements AutoCloseable {
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-02T08:00:00Z"), ZoneOffset.UTC);

    private final ShopStore store;
    private int acts;

    TestShop(Path folder) {
        this(ShopStore.open(folder, CLOCK));
    }

    TestShop(ShopStore store) {
        this.store = store;
        this.acts = (int) store.version();
    }

    ShopStore store() {
        return store;
    }

    static String starter(String name) {
        try (InputStream in = Starters.open(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static Board board(String id, int width, int length) {
        return Board.rough(id, "black cherry", RoughClass.get("4/4"), Length.mm(width), Length.mm(length));
    }

    Answer says(Act act) {
        acts++;
        return store.take(Sent.fromDesk("a" + acts, act));
    }

    /** The id of the act. */
    String does(Act act) {
        return assertInstanceOf(Answer.Taken.class, says(act)).act().id();
    }

    Answer.Refused refuses(Act act) {
        return assertInstanceOf(Answer.Refused.class, says(act));
    }

    String addJob(String starter) {
        Answer answer = says(new Act.AddJob(starter.replace('-', ' '), "", Optional.empty(), starter(starter)));
        return assertInstanceOf(Answer.Taken.class, answer).act().subject();
    }

    String log(String job, BenchEntry entry) {
        return does(new Act.Log(job, entry));
    }

    Plan plan(String job) {
        return planned(job).plan();
    }

    /** Worked out anew, not remembered. */
    JobPlan.Planned planned(String job) {
        store.jobBook().forget();
        return assertInstanceOf(
                JobPlan.Planned.class, store.jobBook().planOf(job).orElseThrow());
    }

    /** All that the shop knows, as values: what two states are compared by. */
    Map<String, Object> state() {
        Map<String, Object> state = new LinkedHashMap<>();
        state.put("jobs", store.jobs());
        state.put("clients", store.clients());
        state.put("rack", store.onHand());
        state.put("supplies", store.supplies());
        state.put("settings", store.settings());
        for (Job job : store.jobs()) {
            List<BenchEntry> inForce = store.bench(job.id()).stream()
                    .filter(Logged::inForce)
                    .map(Logged::entry)
                    .toList();
            state.put("bench of " + job.id(), inForce);
            state.put("text of " + job.id(), store.text(job.id()).orElseThrow());
        }
        return state;
    }

    @Override
    public void close() {
        store.close();
    }
}
