package scantling.bench.trust;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import scantling.shop.Act;
import scantling.shop.Job;
import scantling.shop.Sent;
import scantling.shop.ShopStore;

/**
 * Kills the server with SIGKILL at seeded moments while two pages write, and looks at what is left: every answered act is
 * there, none by halves, the file is sound. With {@code full} it also fills the disk it is on, which must then be a small
 * one of its own.
 */
public final class CrashSuite {
    private static final double NANOS = 1e9;
    private static final double PATIENCE_SECONDS = 30;

    private final Path data;
    private final Path said;
    private final Hand hand;
    private final List<Writer> writers;
    private final List<String> faults = new ArrayList<>();
    private final long[] lost = new long[1];
    private String job = "";

    private CrashSuite(Path place, long seed) {
        this.data = place.resolve("shop");
        this.said = place.resolve("server.log");
        this.hand = new Hand(seed);
        this.writers = List.of(new Writer("desk", seed + 1), new Writer("phone", seed + 2));
    }

    /** @param args how many kills, seed, then for a small disk of its own: its folder and the word full */
    public static void main(String[] args) throws IOException, InterruptedException {
        int kills = args.length > 0 ? Integer.parseInt(args[0]) : 300;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 1;
        Path place = args.length > 2 ? Path.of(args[2]) : Files.createTempDirectory("crash");
        boolean full = args.length > 3 && args[3].equals("full");
        CrashSuite suite = new CrashSuite(place, seed);
        long start = System.nanoTime();
        suite.run(kills, full);
        long answered = suite.writers.stream()
                .mapToLong(writer -> writer.answered().size())
                .sum();
        long refused = suite.writers.stream()
                .mapToLong(writer -> writer.refused().size())
                .sum();
        System.out.printf(
                Locale.ROOT,
                "%d kills in %.0f s: %d acts answered, %d refused, %d lost, %d faults%n",
                kills,
                (System.nanoTime() - start) / NANOS,
                answered,
                refused,
                suite.lost[0],
                suite.faults.size());
        suite.faults.stream().limit(20).forEach(System.out::println);
        if (args.length <= 2) {
            Folders.delete(place);
        }
        System.exit(suite.faults.isEmpty() && answered > 0 && (!full || refused > 0) ? 0 : 1);
    }

    private void run(int kills, boolean full) throws IOException, InterruptedException {
        try (ShopStore store = ShopStore.open(data)) {
            store.take(Sent.fromDesk(
                    "crash-suite-first", new Act.AddJob("Shelf", "", Optional.empty(), Texts.starter("wall-shelf"))));
            job = store.jobs().stream().map(Job::id).findFirst().orElseThrow();
        }
        for (int kill = 1; kill <= kills && faults.isEmpty(); kill++) {
            Optional<Path> ballast = full && kill % 2 == 0 ? Optional.of(fill()) : Optional.empty();
            writeAndKill(ballast.isPresent());
            if (ballast.isPresent()) {
                Files.delete(ballast.get());
            }
            faults.addAll(new Ledgered(data).compare(writers, lost));
        }
    }

    /** Takes all room but a little. */
    private Path fill() throws IOException {
        Path ballast = data.resolveSibling("ballast");
        long room = Files.getFileStore(data).getUsableSpace() - 60_000 - hand.below(200_000);
        Files.write(ballast, new byte[(int) Math.max(0, Math.min(room, 1 << 26))]);
        return ballast;
    }

    private void writeAndKill(boolean full) throws IOException, InterruptedException {
        Served server;
        try {
            server = Served.start(data, List.of("-Xmx256m"), said);
        } catch (IOException noRoom) {
            if (full) {
                return;
            }
            throw noRoom;
        }
        List<Thread> threads = new ArrayList<>();
        for (Writer writer : writers) {
            Thread thread = new Thread(() -> write(writer, server.port()), "writer");
            thread.start();
            threads.add(thread);
        }
        waitForAnAnswer(server, hand.oneIn(6));
        Thread.sleep(hand.below(full ? 1500 : 400));
        server.kill();
        for (Thread thread : threads) {
            thread.join();
        }
    }

    /** Most kills fall while acts are being answered; some before the first. */
    private void waitForAnAnswer(Served server, boolean early) throws InterruptedException {
        long start = System.nanoTime();
        long before = said();
        while (!early
                && said() == before
                && server.isAlive()
                && (System.nanoTime() - start) / NANOS < PATIENCE_SECONDS) {
            Thread.sleep(1);
        }
    }

    private long said() {
        return writers.stream().mapToLong(Writer::said).sum();
    }

    private void write(Writer writer, int port) {
        try {
            writer.writeUntilGone(port, job);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
