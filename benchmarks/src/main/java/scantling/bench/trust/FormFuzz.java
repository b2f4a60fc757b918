package scantling.bench.trust;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import scantling.shop.Act;
import scantling.shop.Job;
import scantling.shop.Sent;
import scantling.shop.ShopStore;
import scantling.web.WebServer;

/**
 * Sends every form and asks for every page of a shop that is open on this machine, with fields that are right, nearly right,
 * wrong, missing or doubled. An answer of the 500s is a fault; so is none; a second is too slow.
 */
public final class FormFuzz {
    private static final int MOST_TO_A_SHOP = 1_000;
    private static final double NANOS = 1e9;
    private static final int SERVER_FAULT = 500;
    private static final int MOST_FIELD = 3000;
    private static final int MOST_BEFORE = 4;
    private static final int MOST_WORDS = 400;

    private static final List<String> PAGES = List.of(
            "/",
            "/new",
            "/bench",
            "/devices",
            "/pair",
            "/assets/x.js",
            "/photos/x",
            "/jobs/{job}",
            "/jobs/{job}/since",
            "/jobs/{job}/find?q={q}",
            "/jobs/{job}/number?name={q}",
            "/jobs/{job}/follows?name={q}&size={q}",
            "/jobs/{job}/given?at={q}",
            "/jobs/{job}/ask",
            "/jobs/{job}/bench",
            "/jobs/{job}/round",
            "/jobs/{job}/round.json",
            "/jobs/{job}/text",
            "/jobs/{job}/papers",
            "/jobs/{job}/papers/files?only=tables&only={q}&paper={q}&from={q}",
            "/jobs/{job}/ways?part={q}&size={q}",
            "/jobs/{job}/agreed?price={q}",
            "/jobs/{job}/versions?from={q}&to={q}",
            "/clients",
            "/clients/{q}",
            "/rack",
            "/onhand",
            "/settings?section={q}",
            "/guide/{q}");

    private static final OperatingSystemMXBean PROCESS =
            ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);

    private final Hand hand;
    private final Texts texts;
    private final Tally tally;
    private final Caller caller;
    private final String stamp;
    private final List<String> jobs;
    private final Map<String, List<String>> forms = forms();
    private final Deque<String> before = new ArrayDeque<>();

    private FormFuzz(Hand hand, Tally tally, int port, List<String> jobs) throws IOException, InterruptedException {
        this.hand = hand;
        this.tally = tally;
        this.texts = new Texts(hand);
        this.caller = new Caller(port);
        this.stamp = caller.stamp();
        this.jobs = jobs;
        PageForms.of(caller).forEach((sent, fields) -> forms.put(general(sent), List.copyOf(fields)));
    }

    /** A path for any job. */
    private String general(String path) {
        String general = path;
        for (String job : jobs) {
            general = general.replaceFirst("^/jobs/" + job + "/", "/jobs/{job}/");
        }
        return general;
    }

    /** Forms that scripts send, or that stand only on pages that come after others. */
    private static Map<String, List<String>> forms() {
        Map<String, List<String>> forms = new LinkedHashMap<>();
        forms.put("/jobs", List.of("from", "title", "due", "act"));
        forms.put("/jobs/{job}/state", List.of("state", "back"));
        forms.put("/jobs/{job}/units", List.of("unit", "back"));
        forms.put("/jobs/{job}/measured", List.of("name", "size", "act"));
        forms.put("/jobs/{job}/unmeasured", List.of("name"));
        forms.put("/jobs/{job}/given", List.of("revision", "at", "from", "value", "act"));
        forms.put("/jobs/{job}/text", List.of("revision", "text", "act"));
        forms.put("/jobs/{job}/text/check", List.of("text"));
        forms.put("/jobs/{job}/text/complete", List.of("text", "at"));
        forms.put("/jobs/{job}/ask/drawer", List.of("bank", "height"));
        forms.put("/jobs/{job}/ask/shelves", List.of("place", "of", "count"));
        forms.put("/jobs/{job}/undo", List.of("of"));
        forms.put("/jobs/{job}/redo", List.of("of"));
        forms.put("/jobs/{job}/saw/stop", List.of("quiet"));
        forms.put("/jobs/{job}/again", List.of("part", "act"));
        forms.put("/devices/code", List.of());
        forms.put("/devices/revoke", List.of("device"));
        forms.put("/pair", List.of("code", "name"));
        return forms;
    }

    /** @param args how many inputs, seed */
    public static void main(String[] args) throws IOException, InterruptedException {
        long inputs = args.length > 0 ? Long.parseLong(args[0]) : 50_000;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 1;
        Path place = Files.createTempDirectory("fuzz");
        System.out.print(run(inputs, seed, place));
        Folders.delete(place);
    }

    /** Sends so many. @param place an empty folder for the shops */
    public static Tally run(long inputs, long seed, Path place) throws IOException, InterruptedException {
        Tally tally = new Tally();
        for (long sent = 0; sent < inputs; sent += MOST_TO_A_SHOP) {
            Path shop = place.resolve("shop-" + sent);
            runInOne(Math.min(MOST_TO_A_SHOP, inputs - sent), new Hand(seed + sent), shop, tally);
            tally.weigh();
            Folders.delete(shop);
        }
        return tally;
    }

    /** In a shop of its own, which therefore never holds so many jobs that one act takes long for all of them. */
    private static void runInOne(long inputs, Hand hand, Path place, Tally tally)
            throws IOException, InterruptedException {
        try (ShopStore store = ShopStore.open(place);
                WebServer server = WebServer.start(store, new WebServer.Options(0, false), Clock.systemUTC())) {
            int number = 0;
            for (String starter : List.of("wall-shelf", "bookcase", "bedside-chest")) {
                store.take(Sent.fromDesk(
                        "form-fuzz-" + number++,
                        new Act.AddJob(starter, "", Optional.empty(), Texts.starter(starter))));
            }
            List<String> jobs = store.jobs().stream().map(Job::id).toList();
            FormFuzz fuzz = new FormFuzz(hand, tally, server.port(), jobs);
            for (long i = 0; i < inputs; i++) {
                fuzz.one();
            }
        }
    }

    private void one() throws InterruptedException {
        int share = hand.below(10);
        if (share < 3) {
            String path = filled(hand.of(PAGES));
            send("page", path, () -> caller.get(path));
        } else if (share < 8) {
            String form = hand.of(List.copyOf(forms.keySet()));
            String path = filled(form);
            Map<String, String> fields = fields(forms.getOrDefault(form, List.of()));
            String with = hand.oneIn(40) ? word() : stamp;
            send("form", path + " " + fields, () -> caller.form(path, clean(with), fields));
        } else {
            String path = filled("/jobs/{job}/bench/acts");
            String body = acts();
            send("bench", path + " " + body, () -> caller.json(path, stamp, body));
        }
    }

    /** What is sent. */
    private interface Request {
        HttpResponse<String> send() throws IOException, InterruptedException;
    }

    private void send(String kind, String input, Request request) throws InterruptedException {
        long start = System.nanoTime();
        long worked = PROCESS.getProcessCpuTime();
        boolean taken = false;
        try {
            HttpResponse<String> answer = request.send();
            taken = answer.statusCode() < 400;
            if (answer.statusCode() >= SERVER_FAULT) {
                tally.fault(kind, input, answer.statusCode() + " " + answer.body());
            }
        } catch (IOException none) {
            tally.fault(kind, input, none);
        }
        double seconds = (System.nanoTime() - start) / NANOS;
        worked = PROCESS.getProcessCpuTime() - worked;
        String of = String.format(Locale.ROOT, "%n  %.3f s of processor time", worked / NANOS);
        tally.note(kind, input + of + after(), taken, seconds);
        if (taken && !kind.equals("page")) {
            before.addLast(input.lines().findFirst().orElse(""));
            while (before.size() > MOST_BEFORE) {
                before.removeFirst();
            }
        }
    }

    /** What the shop last took before. */
    private String after() {
        return before.stream()
                .map(taken -> "%n  after %s".formatted(taken.substring(0, Math.min(MOST_WORDS, taken.length()))))
                .collect(Collectors.joining());
    }

    private String filled(String path) {
        String job = hand.oneIn(20) ? Caller.coded(clean(word())) : hand.of(jobs);
        String filled = path.replace("{job}", job.isEmpty() ? "x" : job);
        while (filled.contains("{q}")) {
            filled = filled.replaceFirst("\\{q}", Caller.coded(word()).replace("$", "%24"));
        }
        return filled;
    }

    private Map<String, String> fields(List<String> names) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (String name : names) {
            if (!hand.oneIn(15)) {
                fields.put(name, hand.oneIn(12) ? word() : value(name));
            }
        }
        return fields;
    }

    private String value(String name) {
        return switch (name) {
            case "revision", "at", "place", "count", "part" -> String.valueOf(hand.below(60));
            case "text" -> texts.piece();
            case "size", "value", "height", "length", "width", "thickness" -> texts.length();
            case "amount", "price" -> String.valueOf(hand.below(9_000) / 10.0);
            case "material" -> hand.of(List.of("black cherry", "birch plywood", "white oak", "string"));
            case "from" -> hand.of(List.of("wall-shelf", "job:" + hand.of(jobs), "../x", "job:"));
            case "unit" -> hand.of(List.of("mm", "in"));
            case "name" -> hand.of(List.of("left side / length", "top / width", "shelf / thickness", "height"));
            case "state" -> hand.of(List.of("asked", "in hand", "done", "put away"));
            case "due" -> hand.of(List.of("2026-12-24", "2026-02-31", "soon"));
            case "act" -> "act-" + hand.below(1_000_000);
            default -> word();
        };
    }

    private String word() {
        return hand.one(
                () -> hand.of(Texts.TOKENS),
                texts::length,
                () -> "../../etc/passwd",
                () -> "<script>x</script>",
                () -> "' OR 1=1 --",
                () -> "x".repeat(hand.below(MOST_FIELD)),
                () -> String.valueOf(hand.below(100) - 50),
                () -> "");
    }

    /** What a header may hold. */
    private static String clean(String text) {
        return text.chars()
                .filter(letter -> letter > 32 && letter < 127)
                .mapToObj(letter -> String.valueOf((char) letter))
                .collect(Collectors.joining());
    }

    private String acts() {
        String kinds = hand
                .some(
                        3,
                        () ->
                                "{\"id\":\"%s\",\"n\":%d,\"kind\":\"%s\",\"subject\":\"%s\",\"text\":\"%s\",\"minutes\":%d,\"size\":\"%s\",\"photo\":\"%s\"}"
                                        .formatted(
                                                "act-number-" + hand.below(1_000_000),
                                                hand.below(5),
                                                hand.of(List.of(
                                                        "done",
                                                        "undone",
                                                        "cut",
                                                        "spoilt",
                                                        "minutes",
                                                        "wait",
                                                        "note",
                                                        "measured",
                                                        "x")),
                                                hand.of(List.of("left side", "top", "left side / length", "nothing")),
                                                "x".repeat(hand.below(20)),
                                                hand.below(100) - 20,
                                                hand.below(2000) + " mm",
                                                hand.of(List.of("", "/9j/4AAQ", "AAAA", "not base 64!"))))
                .stream()
                .collect(Collectors.joining(","));
        String body = "{\"queue\":\"queue%04d\",\"acts\":[%s]}".formatted(hand.below(10_000), kinds);
        return hand.oneIn(4) ? hand.damaged(body, Texts.TOKENS) : body;
    }
}
