package scantling.bench.trust;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import scantling.bench.Curve;
import scantling.construct.Construction;
import scantling.piece.PieceEditor;
import scantling.shop.Act;
import scantling.shop.Sent;
import scantling.shop.ShopStore;

/**
 * An hour's work of a busy shop without the pauses: one after the other, six jobs are looked at, changed, measured, noted at,
 * searched and taken back, as often as a desk and two phones do it in an hour when each does something every seven seconds.
 * Tells the server's memory as it goes, and draws it.
 */
public final class HourSuite {
    private static final List<String> STARTERS =
            List.of("wall-shelf", "bookcase", "bedside-chest", "sideboard", "dining-table", "kitchen");
    private static final Pattern VERSION = Pattern.compile("data-version=\"([^\"]*)\" data-revision=\"(\\d+)\"");
    private static final Pattern NUMBER = Pattern.compile("data-path=\"([^\"]+ / (?:width|length))\"");
    private static final int HOUR = 1_550;
    private static final int ROUNDS = 62;

    private final Caller caller;
    private final Hand hand;
    private final String stamp;
    private final Map<String, Job> jobs;
    private int errors;
    private int noted;

    /** A job of the shop. @param path of its sheet @param at where its width stands @param width as written */
    private record Job(String path, int at, String width) {}

    private HourSuite(int port, long seed, Map<String, Job> jobs) throws IOException, InterruptedException {
        this.caller = new Caller(port);
        this.hand = new Hand(seed);
        this.jobs = jobs;
        this.stamp = caller.stamp();
    }

    /** @param args how many hours, seed, where to draw (or -), then options for the server's Java */
    public static void main(String[] args) throws IOException, InterruptedException {
        double hours = args.length > 0 ? Double.parseDouble(args[0]) : 1;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 1;
        String drawn = args.length > 2 ? args[2] : "-";
        List<String> options = Arrays.asList(args).subList(Math.min(3, args.length), args.length);
        Path place = Files.createTempDirectory("hour");
        Map<String, Job> jobs = shop(place.resolve("shop"));
        List<Curve.Point> memory = new ArrayList<>();
        int errors;
        try (Served server = Served.start(place.resolve("shop"), options, place.resolve("server.log"))) {
            HourSuite suite = new HourSuite(server.port(), seed, jobs);
            int acts = (int) Math.round(HOUR * hours);
            System.out.println("| acts | resident MB | seconds |");
            System.out.println("| --- | --- | --- |");
            long start = System.nanoTime();
            for (int act = 1; act <= acts; act++) {
                suite.one();
                if (act == 1 || act % Math.max(1, acts / ROUNDS) == 0) {
                    memory.add(new Curve.Point(act, server.resident(), ""));
                    System.out.printf(
                            Locale.ROOT,
                            "| %,d | %d | %.0f |%n",
                            act,
                            server.resident(),
                            (System.nanoTime() - start) / 1e9);
                }
            }
            System.out.printf(Locale.ROOT, "%d acts, %d errors%n", acts, suite.errors);
            if (!drawn.equals("-")) {
                new Curve("The server's memory over an hour's work", "acts", "resident memory, MB", false)
                        .write(Path.of(drawn), memory, 0);
            }
            errors = suite.errors;
        }
        Folders.delete(place);
        System.exit(errors == 0 ? 0 : 1);
    }

    private static Map<String, Job> shop(Path data) {
        Map<String, Job> jobs = new LinkedHashMap<>();
        try (ShopStore store = ShopStore.open(data)) {
            for (String starter : STARTERS) {
                String text = Texts.starter(starter);
                store.take(Sent.fromDesk("hour-suite-" + starter, new Act.AddJob(starter, "", Optional.empty(), text)));
                PieceEditor.givens(text, Construction.language()).stream()
                        .filter(given -> given.path().equals("size / width"))
                        .findFirst()
                        .ifPresent(given -> jobs.put(
                                starter,
                                new Job("/jobs/" + starter, given.span().start(), given.value())));
            }
        }
        return jobs;
    }

    private void one() throws IOException, InterruptedException {
        Job job = hand.of(List.copyOf(jobs.values()));
        int share = hand.below(100);
        if (share < 30) {
            check(caller.get(hand.oneIn(2) ? job.path() + "/bench" : job.path()));
        } else if (share < 45) {
            width(job);
        } else if (share < 60) {
            measure(job);
        } else if (share < 75) {
            note(job);
        } else if (share < 85) {
            check(caller.get(job.path() + "/find?q=left"));
        } else if (share < 90) {
            check(caller.get(hand.oneIn(2) ? "/" : job.path() + "/text"));
        } else if (share < 95) {
            check(caller.get(job.path() + "/versions"));
        } else {
            check(caller.get(job.path() + "/round.json"));
        }
    }

    /** Another width, told from a page that shows the sheet as it is. */
    private void width(Job job) throws IOException, InterruptedException {
        String page = caller.get(job.path()).body();
        Matcher shown = VERSION.matcher(page);
        if (!shown.find()) {
            errors++;
            return;
        }
        String value = hand.oneIn(3) ? job.width() : job.width() + "." + (1 + hand.below(9));
        check(caller.part(
                job.path() + "/given",
                stamp,
                Map.of("at", "" + job.at(), "value", value, "revision", shown.group(2), "version", shown.group(1))));
    }

    /** A size that the sheet names, as the plan has it or a little off, and sometimes taken back. */
    private void measure(Job job) throws IOException, InterruptedException {
        Matcher number = NUMBER.matcher(caller.get(job.path()).body());
        List<String> names = new ArrayList<>();
        while (number.find() && names.size() < 60) {
            names.add(number.group(1).replace("&amp;", "&"));
        }
        if (names.isEmpty()) {
            errors++;
            return;
        }
        String name = hand.of(names);
        check(caller.part(
                job.path() + "/measured", stamp, Map.of("name", name, "size", 300 + hand.below(200) + " mm")));
        check(caller.part(job.path() + "/unmeasured", stamp, Map.of("name", name)));
    }

    private void note(Job job) throws IOException, InterruptedException {
        noted++;
        String id = "hour-note-%06d".formatted(noted);
        check(caller.json(
                job.path() + "/bench/acts",
                stamp,
                "{\"queue\":\"queue%010d\",\"acts\":[{\"id\":\"%s\",\"n\":1,\"kind\":\"note\",\"subject\":\"\",\"text\":\"dry\"}]}"
                        .formatted(noted, id)));
    }

    /** A size that the piece cannot have is rightly refused; whatever else is refused is an error. */
    private void check(HttpResponse<String> answer) {
        if (answer.statusCode() >= 400 && !answer.body().contains("Nothing was written down")) {
            errors++;
            System.out.println(answer.statusCode() + " "
                    + answer.body()
                            .lines()
                            .filter(line -> !line.isBlank())
                            .limit(2)
                            .toList());
        }
    }
}
