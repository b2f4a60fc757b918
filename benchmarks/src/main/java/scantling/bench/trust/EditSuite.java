package scantling.bench.trust;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import scantling.construct.Construction;
import scantling.piece.PieceEditor;
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
    private static final Pattern VERSION = Pattern.compile("data-version=\"([^\"]*)\" data-revision=\"(\\d+)\"");

    private final Caller first;
    private final Caller second;
    private final String job;
    private final String stamp;
    private final int at;
    private final LinkedBlockingQueue<Arrived> arrived = new LinkedBlockingQueue<>();
    private String version = "";
    private String revision = "";

    /** The second window has the change. @param when by the clock of {@link System#nanoTime} @param length of what it was sent */
    private record Arrived(long when, int length) {}

    private EditSuite(int port, String job, int at) throws IOException, InterruptedException {
        this.first = new Caller(port);
        this.second = new Caller(port);
        this.job = job;
        this.at = at;
        this.stamp = first.stamp();
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
        int at = PieceEditor.findSpan(text, Construction.language(), "size / width")
                .orElseThrow()
                .start();
        try (Served server = Served.start(place.resolve("shop"), options, place.resolve("server.log"))) {
            EditSuite suite = new EditSuite(server.port(), "/jobs/piece", at);
            suite.run(starter, edits, before);
            System.out.printf(Locale.ROOT, "server resident %d MB%n", server.resident());
        }
        Folders.delete(place);
    }

    private void run(String starter, int edits, int before) throws IOException, InterruptedException {
        note(first.get(job).body());
        listen(version);
        List<Double> own = new ArrayList<>();
        List<Double> others = new ArrayList<>();
        long sent = 0;
        for (int edit = 1 - before; edit <= edits; edit++) {
            arrived.clear();
            long start = System.nanoTime();
            HttpResponse<String> answer = first.part(
                    job + "/given",
                    stamp,
                    Map.of("at", "" + at, "value", width(edit + before), "revision", revision, "version", version));
            long done = System.nanoTime();
            check(answer);
            Optional<Arrived> there = Optional.ofNullable(arrived.poll(PATIENCE_SECONDS, TimeUnit.SECONDS));
            if (edit > 0) {
                own.add((done - start) / MILLION);
                others.add(there.map(each -> (each.when() - start) / MILLION).orElse(Double.POSITIVE_INFINITY));
                sent += answer.body().length();
            }
            Thread.sleep(REST_MILLIS);
        }
        tell(starter + ", own window", own);
        tell(starter + ", other window", others);
        System.out.printf(Locale.ROOT, "sent to each, mean %,d characters%n", sent / Math.max(1, edits));
    }

    /** Never the same twice, with as many digits as before. */
    private static String width(int edit) {
        return "5%02d.%d".formatted(edit / 9 % 100, 1 + edit % 9);
    }

    private void check(HttpResponse<String> answer) throws IOException {
        if (answer.statusCode() != 200 || !answer.body().contains("in place of")) {
            throw new IOException("not taken: " + answer.statusCode() + " "
                    + answer.body().lines().limit(3).toList());
        }
        note(answer.body());
    }

    private void note(String body) throws IOException {
        Matcher found = VERSION.matcher(body);
        if (!found.find()) {
            throw new IOException("the page does not say which sheet it shows");
        }
        version = found.group(1);
        revision = found.group(2);
    }

    /** The other window: it hears of a change and asks for what it lacks, as the page's script does. */
    private void listen(String shown) {
        Thread ear = new Thread(() -> hear(shown), "other window");
        ear.setDaemon(true);
        ear.start();
    }

    private void hear(String shown) {
        String own = shown;
        try {
            for (String news : (Iterable<String>) second.heard(job + "/watch", "sheet")::iterator) {
                if (!news.equals(own)) {
                    HttpResponse<String> answer = second.part(job + "/since?version=" + Caller.coded(own));
                    Matcher found = VERSION.matcher(answer.body());
                    own = found.find() ? found.group(1) : own;
                    arrived.add(new Arrived(System.nanoTime(), answer.body().length()));
                }
            }
        } catch (IOException | UncheckedIOException closed) {
            return;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
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
