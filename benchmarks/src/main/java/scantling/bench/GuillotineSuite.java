package scantling.bench;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import scantling.cutting.CutJob;
import scantling.cutting.CutPlan;
import scantling.cutting.Effort;
import scantling.cutting.FirstCut;
import scantling.cutting.SawPlans;

/**
 * Runs the 500 published two-dimensional instances on one thread and prints totals per class beside published ones. Arguments:
 * seconds of processor time an instance, then a variant: turned, fixed, turned3, fixed3 (three stages, first cut along), then optionally to run
 * only every n-th instance.
 */
public final class GuillotineSuite {
    private static final String FORMAT = "%5s %5s %8s %8s %8s %8s%n";

    private record Sums(int sheets, int bound, int best, int proven, int measured) {
        Sums plus(Sums o) {
            return new Sums(
                    sheets + o.sheets, bound + o.bound, best + o.best, proven + o.proven, measured + o.measured);
        }
    }

    private GuillotineSuite() {}

    /** The command line. */
    public static void main(String[] args) throws IOException {
        double seconds = Double.parseDouble(args[0]);
        String variant = args.length > 1 ? args[1] : "turned";
        int every = args.length > 2 ? Integer.parseInt(args[2]) : 1;
        boolean turn = variant.startsWith("turned");
        boolean three = variant.endsWith("3");
        Map<String, CutJob> jobs = PublishedSets.sheets(turn, three ? 3 : 0, three ? FirstCut.ALONG : FirstCut.ANY);
        String key = three ? (turn ? "3NHR" : "3NHO") : turn ? "2BP|R|G" : "2BP|O|G";
        Map<String, Integer> best = column("guillotine-best-known.csv", key, 0, 1, 2);
        Map<String, Integer> measured = column("guillotine-measured-10s.csv", key, 1, 0, 2);
        Map<String, Sums> classes = new TreeMap<>();
        AtomicInteger number = new AtomicInteger();
        jobs.forEach((name, job) -> {
            if (number.getAndIncrement() % every == 0) {
                classes.merge(
                        group(name),
                        run(job, seconds, Objects.requireNonNull(best.get(name), name), measured.getOrDefault(name, 0)),
                        Sums::plus);
            }
        });
        print(variant, seconds, classes);
    }

    private static Sums run(CutJob job, double seconds, int best, int measured) {
        CutPlan plan = SawPlans.sheets(job, Effort.untilStopped(1), PublishedSets.after(seconds));
        int cost = (int) plan.cost();
        if (!plan.leftOut().isEmpty()) {
            throw new IllegalStateException("Parts left out of an instance with unlimited sheets.");
        }
        return new Sums(cost, (int) plan.lowerBound(), best, plan.status() == CutPlan.Status.OPTIMAL ? 1 : 0, measured);
    }

    private static void print(String variant, double seconds, Map<String, Sums> classes) {
        System.out.printf(Locale.ROOT, "%s, %s s of processor time an instance, one thread%n", variant, seconds);
        System.out.printf(FORMAT, "class", "here", "bound", "proven", "best", "10s-ref");
        Sums all = new Sums(0, 0, 0, 0, 0);
        for (Map.Entry<String, Sums> e : classes.entrySet()) {
            line(e.getKey(), e.getValue());
            all = all.plus(e.getValue());
        }
        line("all", all);
    }

    private static void line(String name, Sums s) {
        System.out.printf(FORMAT, name, s.sheets(), s.bound(), s.proven(), s.best(), s.measured());
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
