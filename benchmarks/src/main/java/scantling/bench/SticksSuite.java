package scantling.bench;

import java.io.IOException;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import scantling.cutting.CutJob;
import scantling.cutting.CutPlan;
import scantling.cutting.Effort;
import scantling.cutting.SawPlans;

/**
 * Runs the published one-dimensional instances on one thread and prints, per set, the sticks used, the bound, how many are
 * proven optimal here, and the optimal values. Arguments: seconds of processor time an instance, then optionally to run only
 * every n-th.
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
        double seconds = Double.parseDouble(args[0]);
        int every = args.length > 1 ? Integer.parseInt(args[1]) : 1;
        Map<String, Integer> best = new TreeMap<>();
        for (String[] row : PublishedSets.rows("sticks-best-known.csv")) {
            best.put(row[0], Integer.parseInt(row[1]));
        }
        Map<String, Sums> sets = new TreeMap<>();
        AtomicInteger number = new AtomicInteger();
        PublishedSets.sticks().forEach((name, job) -> {
            if (number.getAndIncrement() % every == 0) {
                Sums sums = run(job, seconds, best.getOrDefault(name, 0));
                sets.merge(name.substring(0, name.lastIndexOf('/')), sums, Sums::plus);
                sets.merge("all", sums, Sums::plus);
            }
        });
        System.out.printf(Locale.ROOT, "%s s of processor time an instance, one thread%n", seconds);
        System.out.printf(
                "%-34s %6s %7s %7s %7s %7s %6s%n", "set", "count", "here", "bound", "proven", "best", "worst");
        sets.forEach((name, s) -> System.out.printf(
                "%-34s %6d %7d %7d %7d %7d %6d%n",
                name, s.count(), s.sticks(), s.bound(), s.proven(), s.best(), s.worst()));
    }

    private static Sums run(CutJob job, double seconds, int best) {
        CutPlan plan = SawPlans.sticks(job, Effort.untilStopped(1), PublishedSets.after(seconds));
        int proven = plan.status() == CutPlan.Status.OPTIMAL ? 1 : 0;
        return new Sums(1, (int) plan.cost(), (int) plan.lowerBound(), proven, best, (int) plan.cost() - best);
    }
}
