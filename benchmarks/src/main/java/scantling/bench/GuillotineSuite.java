package scantling.bench;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import scantling.cutting.CutJob;
import scantling.cutting.CutPlan;
import scantling.cutting.Effort;
import scantling.cutting.FirstCut;
import scantling.cutting.SawPlans;

/**
 * Runs the 500 published two-dimensional instances and prints totals per class, as a table for {@code docs/benchmarks.md},
 * beside published ones. Options: {@code --seconds} of processor time an instance (1), {@code --variant} turned, fixed, turned3 or
 * fixed3 (three stages, first cut along), {@code --every} n-th instance only (1), {@code --threads} (1: how many instances are
 * taken at once; each is searched by one thread, beside which a second one puts plans together now and then),
 * {@code --only} those with this in their name.
 */
public final class GuillotineSuite {
    private record Sums(int count, int sheets, int bound, int best, int proven, int measured) {
        static final Sums NONE = new Sums(0, 0, 0, 0, 0, 0);

        Sums plus(Sums o) {
            return new Sums(
                    count + o.count,
                    sheets + o.sheets,
                    bound + o.bound,
                    best + o.best,
                    proven + o.proven,
                    measured + o.measured);
        }
    }

    private GuillotineSuite() {}

    /** The command line. */
    public static void main(String[] args) throws IOException {
        Options options = Options.of(args, List.of("seconds", "variant", "every", "threads", "only"));
        double seconds = options.number("seconds", 1);
        String variant = options.text("variant", "turned");
        int every = options.whole("every", 1);
        String only = options.text("only", "");
        boolean turn = variant.startsWith("turned");
        boolean three = variant.endsWith("3");
        Map<String, Callable<String>> work = new LinkedHashMap<>();
        int number = 0;
        for (Map.Entry<String, CutJob> one : PublishedSets.sheets(
                        turn, three ? 3 : 0, three ? FirstCut.ALONG : FirstCut.ANY)
                .entrySet()) {
            if (one.getKey().contains(only) && number++ % every == 0) {
                work.put(one.getKey(), () -> run(one.getValue(), seconds));
            }
        }
        Runs runs = Runs.open("sheets-%s-%s".formatted(variant, seconds), options.whole("threads", 1));
        String key = three ? (turn ? "3NHR" : "3NHO") : turn ? "2BP|R|G" : "2BP|O|G";
        print(variant, seconds, sums(runs.measure(work), key));
    }

    private static String run(CutJob job, double seconds) {
        CutPlan plan = SawPlans.sheets(job, Effort.untilStopped(1), PublishedSets.after(seconds));
        if (!plan.leftOut().isEmpty()) {
            throw new IllegalStateException("Parts left out of an instance with unlimited sheets.");
        }
        return "%d,%d".formatted(plan.cost(), plan.lowerBound());
    }

    private static Map<String, Sums> sums(List<String[]> results, String key) throws IOException {
        Map<String, Integer> best = column("guillotine-best-known.csv", key, 0, 1, 2);
        Map<String, Integer> measured = column("guillotine-measured-10s.csv", key, 1, 0, 2);
        Map<String, Sums> classes = new TreeMap<>();
        for (String[] row : results) {
            int cost = Integer.parseInt(row[1]);
            int bound = Integer.parseInt(row[2]);
            int known = Objects.requireNonNull(best.get(row[0]), row[0]);
            if (bound > known) {
                throw new IllegalStateException("A bound of (%d) above a known plan: %s.".formatted(bound, row[0]));
            }
            Sums one = new Sums(1, cost, bound, known, cost == bound ? 1 : 0, measured.getOrDefault(row[0], 0));
            classes.merge(group(row[0]), one, Sums::plus);
        }
        return classes;
    }

    private static void print(String variant, double seconds, Map<String, Sums> classes) {
        System.out.printf(Locale.ROOT, "%n%s, %s s of processor time an instance%n%n", variant, seconds);
        System.out.println("| class | instances | here | bound | proven | best known | 10 s |");
        System.out.println("| --- | --- | --- | --- | --- | --- | --- |");
        classes.forEach(GuillotineSuite::line);
        line("all", classes.values().stream().reduce(Sums.NONE, Sums::plus));
    }

    private static void line(String name, Sums s) {
        System.out.printf(
                "| %s | %d | %,d | %,d | %d | %,d | %,d |%n",
                name, s.count(), s.sheets(), s.bound(), s.proven(), s.best(), s.measured());
    }

    private static String group(String instance) {
        int at = instance.indexOf("Class_") + 6;
        return instance.substring(at, at + 2);
    }

    private static Map<String, Integer> column(String file, String variant, int name, int kind, int value)
            throws IOException {
        Map<String, Integer> found = new LinkedHashMap<>();
        for (String[] row : PublishedSets.rows(file)) {
            if (row[kind].equals(variant)) {
                found.put(row[name], Integer.parseInt(row[value]));
            }
        }
        return found;
    }
}
