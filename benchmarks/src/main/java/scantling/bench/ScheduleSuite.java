package scantling.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
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
 * Runs the published project instances and prints, per set, how many are at the best known makespan, how far the others are
 * from it, how many are proven here, and how many lie below a proven bound (which must be none). Arguments: the folder of the
 * sets with {@code best-known.csv}, seconds an instance, threads, then optionally to run only every n-th.
 */
public final class ScheduleSuite {
    private record Known(int makespan, int bound) {}

    private record Sums(int count, int atBest, int proven, int below, double above, double first, double slowest) {
        static final Sums NONE = new Sums(0, 0, 0, 0, 0, 0, 0);

        Sums plus(Sums o) {
            return new Sums(
                    count + o.count,
                    atBest + o.atBest,
                    proven + o.proven,
                    below + o.below,
                    above + o.above,
                    Math.max(first, o.first),
                    Math.max(slowest, o.slowest));
        }
    }

    private ScheduleSuite() {}

    /** The command line. */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        double seconds = Double.parseDouble(args[1]);
        int threads = Integer.parseInt(args[2]);
        int every = args.length > 3 ? Integer.parseInt(args[3]) : 1;
        Map<String, Sums> sets = new TreeMap<>();
        int number = 0;
        for (Map.Entry<String, Known> known : known(folder).entrySet()) {
            if (number++ % every == 0) {
                Sums sums = run(folder, known.getKey(), known.getValue(), Effort.until(seconds, threads));
                sets.merge(known.getKey().replaceAll("/.*", ""), sums, Sums::plus);
            }
        }
        System.out.printf(Locale.ROOT, "%s s an instance, %d threads%n", seconds, threads);
        System.out.printf(
                "%-6s %6s %8s %7s %7s %9s %9s %9s%n",
                "set", "count", "at best", "proven", "below", "above %", "first ms", "slowest s");
        sets.forEach((name, s) -> System.out.printf(
                Locale.ROOT,
                "%-6s %6d %8d %7d %7d %9.3f %9.0f %9.1f%n",
                name,
                s.count(),
                s.atBest(),
                s.proven(),
                s.below(),
                100 * s.above() / s.count(),
                s.first(),
                s.slowest()));
    }

    private static Map<String, Known> known(Path folder) throws IOException {
        Map<String, Known> known = new TreeMap<>();
        List<String> rows = new ArrayList<>(Files.readAllLines(folder.resolve("best-known.csv")));
        for (String row : rows.subList(1, rows.size())) {
            String[] cells = row.split(",");
            known.put(cells[0], new Known(Integer.parseInt(cells[1]), Integer.parseInt(cells[2])));
        }
        return known;
    }

    private static Sums run(Path folder, String name, Known known, Effort effort) throws IOException {
        Network network = PublishedNetwork.read(Files.readString(folder.resolve(name)));
        long start = System.nanoTime();
        Scheduler.schedule(network, Effort.FIRST);
        double first = (System.nanoTime() - start) / 1e6;
        Timetable found = Scheduler.schedule(network, effort);
        double took = (System.nanoTime() - start) / 1e9;
        int makespan = (int) found.score().finish();
        List<String> wrong = TimetableCheck.problems(network, found);
        if (!wrong.isEmpty()) {
            throw new IllegalStateException(name + ": " + wrong);
        }
        boolean contradicts = makespan < known.bound() || found.bound().finish() > known.makespan();
        if (makespan != known.makespan() || contradicts) {
            System.out.printf(
                    "%s: %d, best known %d, bound here %s%n", name, makespan, known.makespan(), found.bound());
        }
        return Sums.NONE.plus(new Sums(
                1,
                makespan == known.makespan() ? 1 : 0,
                found.status() == Timetable.Status.BEST ? 1 : 0,
                contradicts ? 1 : 0,
                (double) (makespan - known.makespan()) / known.makespan(),
                first,
                took));
    }
}
