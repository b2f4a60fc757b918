package scantling.bench.trust;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import scantling.shop.Act;
import scantling.shop.Job;
import scantling.shop.Sent;
import scantling.shop.ShopStore;

/**
 * Twenty phones and desks at one server: pages, finds, texts checked, measurements, notes from the bench, each with a pause as
 * people make it; one of them changes the width of the sideboard again and again while another window looks on, for which the
 * search for better saw plans goes on all the time. Tells times by kind, errors, and the server's memory.
 */
public final class LoadSuite {
    private static final double MILLION = 1e6;
    private static final int PAUSE = 400;
    private static final int DESK_PAUSE = 3000;
    private static final int SLOWEST = 12;

    private final List<String> jobs = new ArrayList<>();
    private final Map<String, ConcurrentLinkedQueue<Double>> times = new TreeMap<>();
    private final AtomicInteger errors = new AtomicInteger();
    private final ConcurrentLinkedQueue<String> said = new ConcurrentLinkedQueue<>();
    private final ConcurrentLinkedQueue<Page> pages = new ConcurrentLinkedQueue<>();
    private final long began = System.nanoTime();
    private final int port;
    private final long until;

    /** One page. @param at milliseconds after the first @param took milliseconds */
    private record Page(String path, double at, double took) {}

    private LoadSuite(int port, long until, List<String> jobs) {
        this.port = port;
        this.until = until;
        this.jobs.addAll(jobs);
        for (String kind : List.of("page", "find", "number", "check", "edit", "size", "bench")) {
            times.put(kind, new ConcurrentLinkedQueue<>());
        }
    }

    /** @param args seconds, how many clients, seed, then options for the server's Java */
    public static void main(String[] args) throws IOException, InterruptedException {
        int seconds = args.length > 0 ? Integer.parseInt(args[0]) : 60;
        int clients = args.length > 1 ? Integer.parseInt(args[1]) : 20;
        long seed = args.length > 2 ? Long.parseLong(args[2]) : 1;
        List<String> options = Arrays.asList(args).subList(Math.min(3, args.length), args.length);
        Path place = Files.createTempDirectory("load");
        List<String> jobs = shop(place.resolve("shop"));
        int errors;
        try (Served server = Served.start(place.resolve("shop"), options, place.resolve("server.log"))) {
            warm(server.port(), jobs);
            LoadSuite suite = new LoadSuite(server.port(), System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds), jobs);
            List<Long> memory = suite.run(server, clients, seed);
            suite.tell(memory, seconds, clients);
            Files.readAllLines(place.resolve("server.log")).stream().limit(5).forEach(System.out::println);
            errors = suite.errors.get();
        }
        Folders.delete(place);
        System.exit(errors == 0 ? 0 : 1);
    }

    private static List<String> shop(Path data) {
        try (ShopStore store = ShopStore.open(data)) {
            int number = 0;
            for (String starter : List.of("wall-shelf", "bookcase", "bedside-chest", "sideboard")) {
                store.take(Sent.fromDesk(
                        "load-suite-" + number++,
                        new Act.AddJob(starter, "", Optional.empty(), Texts.starter(starter))));
            }
            return store.jobs().stream().map(Job::id).toList();
        }
    }

    /** A server that has been open for a while. */
    private static void warm(int port, List<String> jobs) throws IOException, InterruptedException {
        Caller caller = new Caller(port);
        for (int i = 0; i < 2; i++) {
            for (String job : jobs) {
                caller.get("/jobs/" + job);
                caller.get("/jobs/" + job + "/bench");
            }
        }
    }

    private List<Long> run(Served server, int clients, long seed) throws IOException, InterruptedException {
        List<Thread> threads = new ArrayList<>();
        for (int i = 1; i < clients; i++) {
            int number = i;
            Thread thread = new Thread(() -> client(number, new Hand(seed * 1000 + number)), "client " + i);
            thread.start();
            threads.add(thread);
        }
        Thread desk = new Thread(this::desk, "desk");
        desk.start();
        threads.add(desk);
        List<Long> memory = new ArrayList<>();
        while (System.nanoTime() < until) {
            memory.add(server.resident());
            Thread.sleep(1000);
        }
        for (Thread thread : threads) {
            thread.join();
        }
        memory.add(server.resident());
        return memory;
    }

    private void client(int number, Hand hand) {
        try {
            Caller caller = new Caller(port);
            String stamp = caller.stamp();
            Thread.sleep(hand.below(PAUSE));
            for (int n = 1; System.nanoTime() < until; n++) {
                one(caller, stamp, number, n, hand);
                Thread.sleep(hand.below(2 * PAUSE));
            }
        } catch (IOException failed) {
            errors.incrementAndGet();
            said.add(String.valueOf(failed));
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** Every change begins a long search anew; the other window hears of each better plan. */
    private void desk() {
        try {
            String job = "/jobs/" + job("sideboard");
            Desk desk = Desk.open(port, job, Texts.starter("sideboard"), each -> {});
            for (int edit = 1; System.nanoTime() < until; edit++) {
                int number = edit;
                desk.check(timed("edit", () -> desk.change(number)));
                Thread.sleep(DESK_PAUSE);
            }
        } catch (IOException failed) {
            errors.incrementAndGet();
            said.add(String.valueOf(failed));
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** What is asked. */
    private interface Ask {
        HttpResponse<String> send() throws IOException, InterruptedException;
    }

    private void one(Caller caller, String stamp, int number, int n, Hand hand)
            throws IOException, InterruptedException {
        String job = "/jobs/" + hand.of(jobs);
        String id = "load-%d-%06d".formatted(number, n);
        int share = hand.below(100);
        if (share < 55) {
            String page = hand.oneIn(3) ? job + "/bench" : job;
            long asked = System.nanoTime();
            timed("page", () -> caller.get(page));
            pages.add(new Page(page, (asked - began) / MILLION, (System.nanoTime() - asked) / MILLION));
        } else if (share < 65) {
            timed("find", () -> caller.get(job + "/find?q=left"));
        } else if (share < 75) {
            timed("number", () -> caller.get("/jobs/" + shelf() + "/number?name=left+side+%2F+width"));
        } else if (share < 80) {
            String text = Texts.starter("wall-shelf") + "# " + id + "\n";
            timed("check", () -> caller.form("/jobs/" + shelf() + "/text/check", stamp, Map.of("text", text)));
        } else if (share < 90) {
            Map<String, String> size =
                    Map.of("name", "left side / width", "size", "1%d mm".formatted(90 + hand.below(9)), "act", id);
            timed("size", () -> caller.form("/jobs/" + shelf() + "/measured", stamp, size));
        } else {
            String note =
                    "{\"queue\":\"queue%05d%06d\",\"acts\":[{\"id\":\"%s\",\"n\":1,\"kind\":\"note\",\"subject\":\"\",\"text\":\"dry\"}]}"
                            .formatted(number, n, id);
            timed("bench", () -> caller.json(job + "/bench/acts", stamp, note));
        }
    }

    /** The job whose sizes are measured. */
    private String shelf() {
        return job("wall");
    }

    private String job(String first) {
        return jobs.stream().filter(job -> job.startsWith(first)).findFirst().orElseThrow();
    }

    private HttpResponse<String> timed(String kind, Ask ask) throws IOException, InterruptedException {
        long start = System.nanoTime();
        HttpResponse<String> answer = ask.send();
        Optional.ofNullable(times.get(kind)).ifPresent(all -> all.add((System.nanoTime() - start) / MILLION));
        if (answer.statusCode() >= 400) {
            errors.incrementAndGet();
            said.add(kind + " " + answer.statusCode() + " "
                    + answer.body().lines().limit(2).toList());
        }
        return answer;
    }

    private void tell(List<Long> memory, int seconds, int clients) {
        System.out.printf(Locale.ROOT, "%d clients, %d s%n", clients, seconds);
        times.forEach((kind, all) -> {
            double[] sorted = all.stream().mapToDouble(each -> each).sorted().toArray();
            if (sorted.length > 0) {
                System.out.printf(
                        Locale.ROOT,
                        "%-7s %,6d  median %6.1f  p99 %6.1f  longest %6.1f ms%n",
                        kind,
                        sorted.length,
                        sorted[sorted.length / 2],
                        sorted[(int) Math.ceil(sorted.length * 0.99) - 1],
                        sorted[sorted.length - 1]);
            }
        });
        long[] each = memory.stream().mapToLong(one -> one).toArray();
        int third = Math.max(1, each.length / 3);
        System.out.printf(
                Locale.ROOT,
                "errors %d; resident MB at the start %d, mean of the second third %.0f, of the last third %.0f, most"
                        + " %d%n",
                errors.get(),
                each[0],
                Arrays.stream(each, third, Math.min(each.length, 2 * third))
                        .average()
                        .orElse(0),
                Arrays.stream(each, Math.min(each.length - 1, 2 * third), each.length)
                        .average()
                        .orElse(0),
                Arrays.stream(each).max().orElse(0));
        System.out.println("the slowest pages, and when they were asked for:");
        pages.stream()
                .sorted(Comparator.comparingDouble(Page::took).reversed())
                .limit(SLOWEST)
                .forEach(page -> System.out.printf(
                        Locale.ROOT, "%6.0f ms at %5.1f s %s%n", page.took(), page.at() / 1000, page.path()));
        said.stream().distinct().limit(8).forEach(System.out::println);
    }
}
