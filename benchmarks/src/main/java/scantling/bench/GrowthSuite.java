package scantling.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import scantling.cutting.CutJob;
import scantling.cutting.CutPlan;
import scantling.cutting.Effort;
import scantling.cutting.SawPlans;

/**
 * How the time to a plan near its bound grows with the number of parts: some made-up kitchens of every size, each searched with
 * more and more steps until it is there. Options: {@code --mix} cabinets or scattered, {@code --kitchens} of every size (3),
 * {@code --most} parts (2,000), {@code --within} (0.02), {@code --draw} a file for the curve.
 */
public final class GrowthSuite {
    private static final int[] PARTS = {50, 100, 200, 500, 1_000, 2_000};
    private static final long[] STEPS = {0, 1_000, 4_000, 15_000, 60_000, 250_000};

    /** What came of one kitchen: the time of the search that was long enough, or of the longest. */
    private record Run(long steps, double seconds, double gap) {}

    private GrowthSuite() {}

    /** The command line. */
    public static void main(String[] args) throws IOException {
        Options options = Options.of(args, List.of("mix", "kitchens", "most", "within", "draw"));
        KitchenMix mix = KitchenMix.valueOf(options.text("mix", "cabinets").toUpperCase(Locale.ROOT));
        double within = options.number("within", 0.02);
        System.out.println("| parts | there | steps | seconds | above the bound | at most | exponent |");
        System.out.println("| --- | --- | --- | --- | --- | --- | --- |");
        search(mix.job(50, 7), 8_000);
        List<Curve.Point> points = new ArrayList<>();
        for (int parts : PARTS) {
            if (parts <= options.whole("most", 2_000)) {
                Run[] runs = runs(mix, parts, options.whole("kitchens", 3), within);
                double seconds =
                        median(Arrays.stream(runs).mapToDouble(Run::seconds).toArray());
                String exponent = points.isEmpty() ? "" : exponent(points.get(points.size() - 1), parts, seconds);
                points.add(new Curve.Point(parts, seconds, String.format(Locale.ROOT, "%,d", parts)));
                print(parts, runs, within, seconds, exponent);
            }
        }
        String file = options.text("draw", "");
        if (!file.isEmpty()) {
            new Curve("Time to a saw plan near its bound", "parts", "seconds", true).write(Path.of(file), points, 0);
        }
    }

    private static Run[] runs(KitchenMix mix, int parts, int kitchens, double within) {
        Run[] runs = new Run[kitchens];
        for (int k = 0; k < kitchens; k++) {
            CutJob job = mix.job(parts, parts + (long) k);
            runs[k] = search(job, 0);
            for (int s = 1; s < STEPS.length && runs[k].gap() > within; s++) {
                runs[k] = search(job, STEPS[s]);
            }
        }
        return runs;
    }

    private static Run search(CutJob job, long steps) {
        long start = System.nanoTime();
        CutPlan plan = SawPlans.plan(job, new Effort(steps, 1), () -> false);
        return new Run(steps, (System.nanoTime() - start) / 1e9, plan.gap());
    }

    private static double median(double[] of) {
        Arrays.sort(of);
        return of[of.length / 2];
    }

    private static String exponent(Curve.Point before, int parts, double seconds) {
        return String.format(Locale.ROOT, "%.2f", Math.log(seconds / before.y()) / Math.log(parts / before.x()));
    }

    private static void print(int parts, Run[] runs, double within, double seconds, String exponent) {
        double[] gaps = Arrays.stream(runs).mapToDouble(Run::gap).toArray();
        System.out.printf(
                Locale.ROOT,
                "| %,d | %d of %d | %,.0f | %.2f | %.1f %% | %.1f %% | %s |%n",
                parts,
                Arrays.stream(gaps).filter(gap -> gap <= within).count(),
                runs.length,
                median(Arrays.stream(runs).mapToDouble(Run::steps).toArray()),
                seconds,
                100 * median(gaps),
                100 * gaps[gaps.length - 1],
                exponent);
    }
}
