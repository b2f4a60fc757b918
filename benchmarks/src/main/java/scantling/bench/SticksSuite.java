package scantling.bench;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import scantling.cutting.CutJob;
import scantling.cutting.CutPlan;
import scantling.cutting.Effort;
import scantling.cutting.SawPlans;

/**
 * Runs the published one-dimensional instances and prints, per set, the sticks used, the bound, how many are proven optimal
 * here, and the optimal values. Options: {@code --seconds} of processor time an instance (10), {@code --every} n-th instance
 * only (1), {@code --threads} (1: each instance is searched by one thread), {@code --only}
 * those with this in their name.
 */
public final class SticksSuite {
    private record Sums(int count, int sticks, int bound, int proven, int best, int worst) {
        Sums plus(Sums o) {
            return new Sums(
                    count + o.count,
                    sticks + o.sticks,
                    bound + o.bound,
                    proven + o.proven,
                    best + o.best,
                    Math.max(worst, o.worst));
        }
    }

    private SticksSuite() {}

    /** The command line. */
    public static void main(String[] args) throws IOException {
        Options options = Options.of(args, List.of("seconds", "every", "threads", "only"));
        double seconds = options.number("seconds", 10);
        int every = options.whole("every", 1);
        String only = options.text("only", "");
        Map<String, Callable<String>> work = new LinkedHashMap<>();
        int number = 0;
        for (Map.Entry<String, CutJob> one : PublishedSets.sticks().entrySet()) {
            if (one.getKey().contains(only) && number++ % every == 0) {
                work.put(one.getKey(), () -> run(one.getValue(), seconds));
            }
        }
        Map<String, Integer> best = new TreeMap<>();
        for (String[] row : PublishedSets.rows("sticks-best-known.csv")) {
            best.put(row[0], Integer.parseInt(row[1]));
        }
        Map<String, Sums> sets = new TreeMap<>();
        for (String[] row :
                Runs.open("sticks-" + seconds, options.whole("threads", 1)).measure(work)) {
            int cost = Integer.parseInt(row[1]);
            int bound = Integer.parseInt(row[2]);
            int known = best.getOrDefault(row[0], 0);
            Sums one = new Sums(1, cost, bound, cost == bound ? 1 : 0, known, cost - known);
            sets.merge(row[0].substring(0, row[0].lastIndexOf('/')), one, Sums::plus);
            sets.merge("all", one, Sums::plus);
        }
        print(seconds, sets);
    }

    private static String run(CutJob job, double seconds) {
        CutPlan plan = SawPlans.sticks(job, Effort.untilStopped(1), PublishedSets.after(seconds));
        return "%d,%d".formatted(plan.cost(), plan.lowerBound());
    }

    private static void print(double seconds, Map<String, Sums> sets) {
        System.out.printf(Locale.ROOT, "%n%s s of processor time an instance, one thread each%n%n", seconds);
        System.out.println("| set | instances | here | bound | proven | optimum | worst |");
        System.out.println("| --- | --- | --- | --- | --- | --- | --- |");
        sets.forEach((name, s) -> System.out.printf(
                "| %s | %d | %,d | %,d | %d | %,d | %d |%n",
                name, s.count(), s.sticks(), s.bound(), s.proven(), s.best(), s.worst()));
    }
}
