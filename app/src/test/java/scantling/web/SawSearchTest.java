package scantling.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.javalin.Javalin;
import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import scantling.construct.Construction;
import scantling.construct.Starters;
import scantling.piece.BenchLog;
import scantling.piece.PieceReader;
import scantling.plan.Plan;
import scantling.plan.Planner;
import scantling.plan.Shop;
import scantling.plan.StandardWoods;

/** A search for better saw plans rests while nobody looks, and goes on where it was. */
class SawSearchTest {
    private static final int PATIENCE = 60;

    private final LinkedBlockingQueue<SawSearch.State> heard = new LinkedBlockingQueue<>();
    private final SawSearch.Ear ear = new SawSearch.Ear() {
        @Override
        public void stands(SawSearch.State state) {
            heard.add(state);
        }

        @Override
        public void better() {}
    };

    /** One whose saw plans are not proven best at once. */
    private static Plan plan() {
        try (var in = Starters.open("sideboard")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            var piece = PieceReader.read(text, Construction.language(), StandardWoods.standard())
                    .piece()
                    .orElseThrow();
            return Planner.plan(piece, BenchLog.EMPTY, Shop.usual()).plan();
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    private SawSearch.State next() throws InterruptedException {
        SawSearch.State state = heard.poll(PATIENCE, TimeUnit.SECONDS);
        assertTrue(state != null, "the search says nothing any more");
        return state;
    }

    private static void untilItRests(SawSearch search, Plan plan) throws InterruptedException {
        for (int i = 0; search.state(plan).running() && i < 100 * PATIENCE; i++) {
            Thread.sleep(10);
        }
        assertFalse(search.state(plan).running(), "the search goes on though nobody looks");
    }

    @Test
    void itRestsWhenNobodyLooksAndGoesOnWhereItWasWhenSomebodyDoes() throws InterruptedException {
        Plan plan = plan();
        try (SawSearch search = new SawSearch()) {
            search.begin("job", plan, ear);
            SawSearch.State before = next();
            while (before.share() < 1) {
                before = next();
            }
            search.rest("job");
            untilItRests(search, plan);
            assertFalse(search.state(plan).stopped(), "nobody said stop");
            SawSearch.State resting = search.state(plan);
            heard.clear();
            search.begin("job", plan, ear);
            SawSearch.State after = next();
            assertTrue(after.running(), after::toString);
            assertEquals(resting.round(), after.round());
            assertTrue(after.share() >= resting.share(), after + " after " + resting);
        }
    }

    @Test
    void itDoesNotGoOnByItselfWhereSomebodySaidStop() throws InterruptedException {
        Plan plan = plan();
        try (SawSearch search = new SawSearch()) {
            search.begin("job", plan, ear);
            next();
            search.stop("job");
            search.rest("job");
            untilItRests(search, plan);
            search.begin("job", plan, ear);
            assertFalse(search.state(plan).running());
            assertTrue(search.state(plan).stopped());
        }
    }

    @Test
    void itIsNoticedWhenTheLastPageOfAJobIsGone() throws Exception {
        CountDownLatch gone = new CountDownLatch(1);
        CountDownLatch one = new CountDownLatch(1);
        CountDownLatch both = new CountDownLatch(2);
        try (Watchers watchers = new Watchers(job -> gone.countDown(), 50)) {
            Javalin server = Javalin.create(config -> {
                config.startup.showJavalinBanner = false;
                config.jetty.host = "127.0.0.1";
                config.jetty.port = 0;
                config.routes.sse("/watch", client -> {
                    watchers.add("job", client, () -> {});
                    one.countDown();
                    both.countDown();
                });
            });
            server.start();
            try (Socket stays = listening(server.port())) {
                // else the other may be there and gone before this one is
                assertTrue(one.await(PATIENCE, TimeUnit.SECONDS), "the page never came");
                listening(server.port()).close();
                assertTrue(both.await(PATIENCE, TimeUnit.SECONDS), "the other page never came");
                assertFalse(gone.await(1, TimeUnit.SECONDS), "one of two pages is still there");
            }
            assertTrue(gone.await(PATIENCE, TimeUnit.SECONDS), "nobody noticed");
            server.stop();
        }
    }

    private static Socket listening(int port) throws IOException {
        Socket socket = new Socket("127.0.0.1", port);
        socket.getOutputStream()
                .write("GET /watch HTTP/1.1\r\nHost: localhost\r\nAccept: text/event-stream\r\n\r\n"
                        .getBytes(StandardCharsets.US_ASCII));
        return socket;
    }
}
