package scantling.bench.trust;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import scantling.shop.Act;
import scantling.shop.Job;
import scantling.shop.Sent;
import scantling.shop.ShopStore;

/**
 * Tells a server to stop (SIGTERM) while a desk writes, pages listen, phones that have fallen asleep do not take the page they
 * asked for, and a search for better saw plans goes on. Tells how long it takes to end, and looks whether every answered act is
 * there and the file is sound.
 */
public final class StopSuite {
    private static final int LISTENERS = 12;
    private static final int ASLEEP = 6;
    /** So many that no buffer on the way takes them all. */
    private static final int PAGES = 20;

    private static final int SMALL = 1024;
    private static final int GO_ON_MILLIS = 3000;

    private final Path data;
    private final Hand hand;
    private final Writer writer;
    private final Map<String, String> jobs = new TreeMap<>();
    private final List<Double> seconds = new ArrayList<>();
    private final List<String> faults = new ArrayList<>();
    private final long[] lost = new long[1];

    private StopSuite(Path data, long seed) {
        this.data = data;
        this.hand = new Hand(seed);
        this.writer = new Writer("desk", seed);
    }

    /** @param args how many stops, seed */
    public static void main(String[] args) throws IOException, InterruptedException {
        int stops = args.length > 0 ? Integer.parseInt(args[0]) : 20;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 1;
        Path place = Files.createTempDirectory("stop");
        StopSuite suite = new StopSuite(place.resolve("shop"), seed);
        suite.begin();
        for (int stop = 0; stop < stops && suite.faults.isEmpty(); stop++) {
            suite.one(place.resolve("server.log"));
        }
        suite.tell();
        Folders.delete(place);
        System.exit(suite.faults.isEmpty() ? 0 : 1);
    }

    private void begin() {
        try (ShopStore store = ShopStore.open(data)) {
            for (String starter : List.of("wall-shelf", "sideboard")) {
                store.take(Sent.fromDesk(
                        "stop-suite-" + starter,
                        new Act.AddJob(starter, "", Optional.empty(), Texts.starter(starter))));
            }
            store.jobs().stream()
                    .map(Job::id)
                    .forEach(id -> jobs.put(id.startsWith("wall") ? "shelf" : "sideboard", id));
        }
    }

    private void one(Path log) throws IOException, InterruptedException {
        List<Socket> open = new ArrayList<>();
        String sideboard = "/jobs/" + jobs.get("sideboard");
        try (Served server = Served.start(data, List.of(), log)) {
            new Caller(server.port()).get(sideboard);
            for (int i = 0; i < LISTENERS; i++) {
                open.add(asked(server.port(), sideboard + "/watch", "text/event-stream", 1));
            }
            for (int i = 0; i < ASLEEP; i++) {
                open.add(asked(server.port(), sideboard, "text/html", PAGES));
            }
            Thread desk = new Thread(() -> write(server), "desk");
            desk.start();
            Thread.sleep(GO_ON_MILLIS + hand.below(GO_ON_MILLIS));
            seconds.add(server.stop());
            desk.join();
        }
        for (Socket socket : open) {
            socket.close();
        }
        faults.addAll(new Ledgered(data).compare(List.of(writer), lost));
    }

    /** Asks and never reads what comes. */
    private static Socket asked(int port, String path, String kind, int times) throws IOException {
        Socket socket = new Socket();
        socket.setReceiveBufferSize(SMALL);
        socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), port));
        String request = "GET %s HTTP/1.1\r\nHost: localhost:%d\r\nAccept: %s\r\n\r\n".formatted(path, port, kind);
        socket.getOutputStream().write(request.repeat(times).getBytes(StandardCharsets.US_ASCII));
        return socket;
    }

    private void write(Served server) {
        try {
            writer.writeUntilGone(
                    () -> new Caller(server.port()),
                    Optional.ofNullable(jobs.get("shelf")).orElseThrow());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private void tell() {
        double[] sorted = seconds.stream().mapToDouble(each -> each).sorted().toArray();
        System.out.printf(
                Locale.ROOT,
                "%d stops: median %.2f s, longest %.2f s; %d acts answered, %d lost, %d faults%n",
                sorted.length,
                sorted[sorted.length / 2],
                sorted[sorted.length - 1],
                writer.answered().size(),
                lost[0],
                faults.size());
        faults.stream().limit(20).forEach(System.out::println);
    }
}
