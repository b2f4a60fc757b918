package scantling.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import scantling.route.schedule.Effort;
import scantling.route.schedule.Network;
import scantling.route.schedule.PublishedNetwork;
import scantling.route.schedule.Scheduler;
import scantling.route.schedule.Timetable;
import scantling.route.schedule.TimetableCheck;

/**
 * Runs the published project instances through the way that jobs of the shop go, judges every timetable, and prints a table
 * per set: how many are at the best known makespan, how far the others are from it, how many are proven here, and how many
 * contradict a proven bound (which must be none).
 *
 * <p>Arguments: the folder of the sets with {@code best-known.csv}, seconds an instance, threads; then in any order
 * {@code --every K} to run only every K-th instance, {@code --set j30} to run one set, and {@code --results FILE} to keep
 * every result as a line of that file: what stands there already is not run again, so that a long run can be broken off and
 * taken up.
 */
public final class ScheduleSuite {
    private static final String HEADER =
            "instance,seconds,threads,makespan,bound,best_known,best_bound,proven,first_makespan,first_ms,took_s";

    /** The published makespan and bound. */
    private record Known(int makespan, int bound) {}

    /** One result, a line of the file. */
    private record Result(
            String instance,
            double seconds,
            int threads,
            int makespan,
            long bound,
            Known known,
            boolean proven,
            int first,
            double firstMs,
            double took) {
        static Result of(String line) {
            String[] cell = line.split(",", -1);
            return new Result(
                    cell[0],
                    Double.parseDouble(cell[1]),
                    Integer.parseInt(cell[2]),
                    Integer.parseInt(cell[3]),
                    Long.parseLong(cell[4]),
                    new Known(Integer.parseInt(cell[5]), Integer.parseInt(cell[6])),
                    Boolean.parseBoolean(cell[7]),
                    Integer.parseInt(cell[8]),
                    Double.parseDouble(cell[9]),
                    Double.parseDouble(cell[10]));
        }

        String line() {
            return String.format(
                    Locale.ROOT,
                    "%s,%s,%d,%d,%d,%d,%d,%b,%d,%.1f,%.2f",
                    instance,
                    seconds,
                    threads,
                    makespan,
                    bound,
                    known.makespan(),
                    known.bound(),
                    proven,
                    first,
                    firstMs,
                    took);
        }

        boolean contradicts() {
            return makespan < known.bound() || bound > known.makespan();
        }

        double above() {
            return 100.0 * (makespan - known.makespan()) / known.makespan();
        }
    }

    private final Path folder;
    private final double seconds;
    private final int threads;
    private final Map<String, String> options;

    private ScheduleSuite(String[] args) {
        folder = Path.of(args[0]);
        seconds = Double.parseDouble(args[1]);
        threads = Integer.parseInt(args[2]);
        options = new LinkedHashMap<>();
        for (int k = 3; k + 1 < args.length; k += 2) {
            options.put(args[k], args[k + 1]);
        }
    }

    /** The command line. */
    public static void main(String[] args) throws IOException {
        new ScheduleSuite(args).run();
    }

    private void run() throws IOException {
        int every = Integer.parseInt(options.getOrDefault("--every", "1"));
        Map<String, Result> results = there();
        List<Result> wanted = new ArrayList<>();
        int number = 0;
        for (Map.Entry<String, Known> known : known().entrySet()) {
            boolean inSet = known.getKey().startsWith(options.getOrDefault("--set", ""));
            if (inSet && number++ % every == 0) {
                Result result = results.get(known.getKey());
                wanted.add(result != null ? result : kept(solved(known.getKey(), known.getValue())));
            }
        }
        print(wanted);
    }

    /** What an earlier run with the same seconds and threads has left. */
    private Map<String, Result> there() throws IOException {
        Map<String, Result> results = new TreeMap<>();
        Path file = Path.of(options.getOrDefault("--results", ""));
        if (options.containsKey("--results") && Files.exists(file)) {
            for (String line : Files.readAllLines(file)) {
                if (!line.equals(HEADER) && !line.isBlank()) {
                    Result result = Result.of(line);
                    if (result.seconds() == seconds && result.threads() == threads) {
                        results.put(result.instance(), result);
                    }
                }
            }
        }
        return results;
    }

    private Result kept(Result result) throws IOException {
        if (options.containsKey("--results")) {
            Path file = Path.of(options.get("--results"));
            String header = Files.exists(file) ? "" : HEADER + "\n";
            Files.writeString(
                    file,
                    header + result.line() + "\n",
                    StandardCharsets.UTF_8,
                    StandardOpenOption.CREATE,
                    StandardOpenOption.APPEND);
        }
        return result;
    }

    private Map<String, Known> known() throws IOException {
        Map<String, Known> known = new TreeMap<>();
        List<String> rows = new ArrayList<>(Files.readAllLines(folder.resolve("best-known.csv")));
        for (String row : rows.subList(1, rows.size())) {
            String[] cells = row.split(",", -1);
            known.put(cells[0], new Known(Integer.parseInt(cells[1]), Integer.parseInt(cells[2])));
        }
        return known;
    }

    private Result solved(String name, Known known) throws IOException {
        Network network = PublishedNetwork.read(Files.readString(folder.resolve(name)));
        long start = System.nanoTime();
        Timetable first = Scheduler.schedule(network, Effort.FIRST);
        double firstMs = (System.nanoTime() - start) / 1e6;
        Timetable found = Scheduler.schedule(network, Effort.until(seconds, threads));
        double took = (System.nanoTime() - start) / 1e9;
        List<String> wrong = TimetableCheck.problems(network, found);
        if (!wrong.isEmpty()) {
            throw new IllegalStateException(name + ": " + wrong);
        }
        return new Result(
                name,
                seconds,
                threads,
                (int) found.score().finish(),
                found.bound().finish(),
                known,
                found.status() == Timetable.Status.BEST,
                (int) first.score().finish(),
                firstMs,
                took);
    }

    private void print(List<Result> all) {
        Map<String, List<Result>> sets = new TreeMap<>();
        all.forEach(result -> sets.computeIfAbsent(result.instance().replaceAll("/.*", ""), k -> new ArrayList<>())
                .add(result));
        System.out.printf(Locale.ROOT, "%s s an instance, %d threads%n%n", seconds, threads);
        System.out.println("| set | count | at best known | proven here | above | first above | below | longest |");
        System.out.println("| --- | --- | --- | --- | --- | --- | --- | --- |");
        sets.forEach((name, results) -> System.out.printf(
                Locale.ROOT,
                "| %s | %d | %d | %d | %.2f %% | %.2f %% | %d | %.1f s |%n",
                name,
                results.size(),
                results.stream()
                        .filter(r -> r.makespan() == r.known().makespan())
                        .count(),
                results.stream().filter(Result::proven).count(),
                results.stream().mapToDouble(Result::above).average().orElse(0),
                results.stream()
                        .mapToDouble(r -> 100.0
                                * (r.first() - r.known().makespan())
                                / r.known().makespan())
                        .average()
                        .orElse(0),
                results.stream().filter(Result::contradicts).count(),
                results.stream().mapToDouble(Result::took).max().orElse(0)));
        all.stream()
                .filter(r -> r.makespan() != r.known().makespan() || r.contradicts())
                .forEach(r -> System.out.printf(
                        "%s: %d, best known %d, bound here %d%n",
                        r.instance(), r.makespan(), r.known().makespan(), r.bound()));
    }
}
