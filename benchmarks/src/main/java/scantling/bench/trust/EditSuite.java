package scantling.bench.trust;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import scantling.shop.Act;
import scantling.shop.Sent;
import scantling.shop.ShopStore;

/**
 * From an edit to the page: one window changes the width of a piece, another looks at the same job. Tells how long it takes
 * from sending the new width until the first window has the last changed strand, and until the second has it, which heard
 * of the change by itself.
 */
public final class EditSuite {
    private static final double MILLION = 1e6;
    private static final long PATIENCE_SECONDS = 30;
    private static final int REST_MILLIS = 400;

    private final Desk desk;
    private final LinkedBlockingQueue<Desk.Arrived> arrived;

    private EditSuite(Desk desk, LinkedBlockingQueue<Desk.Arrived> arrived) {
        this.desk = desk;
        this.arrived = arrived;
    }

    /** @param args which starter, how many edits, how many before them to warm up, then options for the server's Java */
    public static void main(String[] args) throws IOException, InterruptedException {
        String starter = args.length > 0 ? args[0] : "bedside-chest";
        int edits = args.length > 1 ? Integer.parseInt(args[1]) : 40;
        int before = args.length > 2 ? Integer.parseInt(args[2]) : 20;
        List<String> options = Arrays.asList(args).subList(Math.min(3, args.length), args.length);
        Path place = Files.createTempDirectory("edit");
        String text = Texts.starter(starter);
        try (ShopStore store = ShopStore.open(place.resolve("shop"))) {
            store.take(Sent.fromDesk("edit-suite-first", new Act.AddJob("Piece", "", Optional.empty(), text)));
        }
        try (Served server = Served.start(place.resolve("shop"), options, place.resolve("server.log"))) {
            LinkedBlockingQueue<Desk.Arrived> arrived = new LinkedBlockingQueue<>();
            EditSuite suite = new EditSuite(Desk.open(server.port(), "/jobs/piece", text, arrived::add), arrived);
            suite.run(starter, edits, before);
            System.out.printf(Locale.ROOT, "server resident %d MB%n", server.resident());
        }
        Folders.delete(place);
    }

    private void run(String starter, int edits, int before) throws IOException, InterruptedException {
        List<Double> own = new ArrayList<>();
        List<Double> others = new ArrayList<>();
        long sent = 0;
        for (int edit = 1 - before; edit <= edits; edit++) {
            arrived.clear();
            long start = System.nanoTime();
            HttpResponse<String> answer = desk.change(edit + before);
            long done = System.nanoTime();
            desk.check(answer);
            Optional<Desk.Arrived> there = Optional.ofNullable(arrived.poll(PATIENCE_SECONDS, TimeUnit.SECONDS));
            if (edit > 0) {
                own.add((done - start) / MILLION);
                others.add(
                        there.map(each -> (each.nanoTime() - start) / MILLION).orElse(Double.POSITIVE_INFINITY));
                sent += answer.body().length();
            }
            Thread.sleep(REST_MILLIS);
        }
        tell(starter + ", own window", own);
        tell(starter + ", other window", others);
        System.out.printf(Locale.ROOT, "sent to each, mean %,d characters%n", sent / Math.max(1, edits));
    }

    private static void tell(String what, List<Double> millis) {
        double[] sorted = millis.stream().mapToDouble(each -> each).sorted().toArray();
        System.out.printf(
                Locale.ROOT,
                "%-30s %d edits: median %.0f ms, nine of ten within %.0f ms, longest %.0f ms%n",
                what,
                sorted.length,
                sorted[sorted.length / 2],
                sorted[(int) Math.ceil(sorted.length * 0.9) - 1],
                sorted[sorted.length - 1]);
    }
}
