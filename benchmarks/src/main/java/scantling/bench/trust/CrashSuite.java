package scantling.bench.trust;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import scantling.shop.Act;
import scantling.shop.Job;
import scantling.shop.Sent;
import scantling.shop.ShopStore;

/**
 * Kills the server with SIGKILL at seeded moments while a desk and a paired phone write, and looks at what is left: every
 * answered act is there, none by halves, the file is sound, and so is every back-up. With {@code full} it also fills the disk
 * it is on, which must then be a small one of its own; with {@code rename} nothing can be renamed in the folder of back-ups,
 * so that the back-up that every server begins with fails at its last step.
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
    private final Phone phone = new Phone();
    private final Set<String> modes;
    private String job = "";

    private CrashSuite(Path place, long seed, Set<String> modes) {
        this.modes = modes;
        this.data = place.resolve("shop");
        this.said = place.resolve("server.log");
        this.hand = new Hand(seed);
        this.writers = List.of(new Writer("desk", seed + 1), new Writer("phone", seed + 2));
    }

    /** @param args how many kills, seed, then a folder to work in and the words full, rename or both */
    public static void main(String[] args) throws IOException, InterruptedException {
        int kills = args.length > 0 ? Integer.parseInt(args[0]) : 300;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 1;
        Path place = args.length > 2 ? Path.of(args[2]) : Files.createTempDirectory("crash");
        Set<String> modes = new TreeSet<>(Arrays.asList(args).subList(Math.min(3, args.length), args.length));
        boolean full = modes.contains("full");
        CrashSuite suite = new CrashSuite(place, seed, modes);
        long start = System.nanoTime();
        suite.run(kills);
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

    private void run(int kills) throws IOException, InterruptedException {
        boolean full = modes.contains("full");
        try (ShopStore store = ShopStore.open(data)) {
            store.take(Sent.fromDesk(
                    "crash-suite-first", new Act.AddJob("Shelf", "", Optional.empty(), Texts.starter("wall-shelf"))));
            job = store.jobs().stream().map(Job::id).findFirst().orElseThrow();
        }
        if (modes.contains("rename")) {
            forbidRenames();
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

    /** A folder that only takes new files lets none be renamed. */
    private void forbidRenames() throws IOException, InterruptedException {
        Path backups = Files.createDirectories(data.resolve("back-ups"));
        int said = new ProcessBuilder("chattr", "+a", backups.toString())
                .inheritIO()
                .start()
                .waitFor();
        if (said != 0) {
            throw new IOException("renames cannot be forbidden in " + backups);
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
            server = Served.onNetwork(data, said);
        } catch (IOException noRoom) {
            if (full) {
                return;
            }
            throw noRoom;
        }
        List<Thread> threads = new ArrayList<>();
        threads.add(new Thread(() -> write(writers.get(0), () -> new Caller(server.port())), "desk"));
        threads.add(new Thread(() -> write(writers.get(1), () -> phone.caller(server)), "phone"));
        threads.forEach(Thread::start);
        waitForAnAnswer(server, hand.oneIn(6));
        // the back-up that a server begins with is made after five seconds
        Thread.sleep(hand.below(modes.contains("rename") || hand.oneIn(8) ? 7000 : full ? 1500 : 400));
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

    private void write(Writer writer, Writer.Way way) {
        try {
            writer.writeUntilGone(way, job);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
