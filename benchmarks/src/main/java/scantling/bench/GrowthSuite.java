package scantling.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import scantling.cutting.CutJob;
import scantling.cutting.CutPart;
import scantling.cutting.CutPlan;
import scantling.cutting.Effort;
import scantling.cutting.FirstCut;
import scantling.cutting.Saw;
import scantling.cutting.SawPlans;
import scantling.cutting.Stock;
import scantling.cutting.Wishes;
import scantling.measure.Length;

/**
 * How the time to a plan at most 2 % above its bound grows with the number of parts: a made-up kitchen mix with kerf and trim,
 * searched with more and more steps until it is there. Options: {@code --most} parts (2,000), {@code --within} (0.02),
 * {@code --draw} a file for the curve.
 */
public final class GrowthSuite {
    private static final int[] PARTS = {50, 100, 200, 500, 1_000, 2_000};
    private static final long[] STEPS = {0, 250, 1_000, 4_000, 15_000, 60_000, 250_000};

    private GrowthSuite() {}

    /** The command line. */
    public static void main(String[] args) throws IOException {
        Options options = Options.of(args, List.of("most", "within", "draw"));
        double within = options.number("within", 0.02);
        System.out.println("| parts | steps | seconds | gap | exponent from the row before |");
        System.out.println("| --- | --- | --- | --- | --- |");
        run(job(50, 7), 4_000);
        List<Curve.Point> points = new ArrayList<>();
        double before = 0;
        int partsBefore = 0;
        for (int parts : PARTS) {
            if (parts <= options.whole("most", 2_000)) {
                double seconds = row(parts, within, partsBefore, before);
                partsBefore = parts;
                before = seconds;
                points.add(new Curve.Point(parts, seconds, String.format(Locale.ROOT, "%,d", parts)));
            }
        }
        String file = options.text("draw", "");
        if (!file.isEmpty()) {
            new Curve("Time to a saw plan near its bound", "parts", "seconds", true).write(Path.of(file), points, 0);
        }
    }

    private static double row(int parts, double within, int partsBefore, double before) {
        CutJob job = job(parts, parts);
        double seconds = 0;
        CutPlan plan = run(job, 0);
        long used = 0;
        for (long steps : STEPS) {
            long start = System.nanoTime();
            plan = run(job, steps);
            seconds = (System.nanoTime() - start) / 1e9;
            used = steps;
            if (plan.gap() <= within) {
                break;
            }
        }
        String exponent = before == 0
                ? ""
                : String.format(
                        Locale.ROOT, "%.2f", Math.log(seconds / before) / Math.log(parts / (double) partsBefore));
        System.out.printf(
                Locale.ROOT, "| %,d | %,d | %.3f | %.1f %% | %s |%n", parts, used, seconds, 100 * plan.gap(), exponent);
        return seconds;
    }

    private static CutPlan run(CutJob job, long steps) {
        return SawPlans.plan(job, new Effort(steps, 1), () -> false);
    }

    /** Sizes as kitchens have them: sides, floors, shelves, rails, fronts; each size several times. */
    private static CutJob job(int parts, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int[] lengths = {300, 330, 358, 450, 558, 564, 600, 715, 720, 764, 895};
        int[] widths = {80, 100, 120, 140, 280, 300, 320, 490, 510, 560, 578};
        List<CutPart> list = IntStream.range(0, parts)
                .mapToObj(i -> new CutPart(
                        "part " + i,
                        Length.mm(lengths[random.nextInt(lengths.length)]),
                        Length.mm(widths[random.nextInt(widths.length)]),
                        1,
                        random.nextInt(3) == 0))
                .toList();
        List<Stock> stock = List.of(
                new Stock.SheetStock("four by eight", Length.mm(2440), Length.mm(1220), OptionalInt.empty(), 70),
                new Stock.SheetStock("five by five", Length.mm(1525), Length.mm(1525), OptionalInt.empty(), 52));
        Saw saw = new Saw(Length.mm("3.2"), Length.mm(10), 0, FirstCut.ANY);
        return new CutJob(saw, CutJob.Keep.USUAL, stock, list, Wishes.MONEY_ONLY);
    }
}
