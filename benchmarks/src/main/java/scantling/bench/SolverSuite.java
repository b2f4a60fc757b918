package scantling.bench;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.IntVar;
import scantling.cutting.CutJob;
import scantling.cutting.CutPart;
import scantling.cutting.CutPlan;
import scantling.cutting.Effort;
import scantling.cutting.FirstCut;
import scantling.cutting.SawPlans;
import scantling.measure.Length;

/**
 * The saw plans beside a general constraint solver on the same published instances of 20 and 40 parts and the same time, in
 * one run, not turned. The solver is asked for less: its parts must not overlap, but need not come off by cuts edge to edge.
 * Options: {@code --seconds} (10), {@code --instances} (30).
 */
public final class SolverSuite {
    private SolverSuite() {}

    /** The command line. */
    public static void main(String[] args) throws IOException {
        Options options = Options.of(args, List.of("seconds", "instances"));
        double seconds = options.number("seconds", 10);
        Map<String, Callable<String>> work = new LinkedHashMap<>();
        for (Map.Entry<String, CutJob> one :
                chosen(options.whole("instances", 30)).entrySet()) {
            work.put(one.getKey(), () -> run(one.getValue(), seconds));
        }
        List<String[]> rows = Runs.open("solver-" + seconds, 1).measure(work);
        System.out.println("| instance | here | bound | solver |");
        System.out.println("| --- | --- | --- | --- |");
        int[] sums = new int[3];
        int worse = 0;
        for (String[] row : rows) {
            System.out.printf("| %s | %s | %s | %s |%n", row[0], row[1], row[2], row[3]);
            for (int i = 0; i < sums.length; i++) {
                sums[i] += Integer.parseInt(row[i + 1]);
            }
            worse += Integer.parseInt(row[1]) > Integer.parseInt(row[3]) ? 1 : 0;
        }
        System.out.printf("| all | %d | %d | %d |%n%nWorse than the solver: %d.%n", sums[0], sums[1], sums[2], worse);
    }

    /** Spread over the ten classes, those of 20 and of 40 parts by turns. */
    private static Map<String, CutJob> chosen(int count) throws IOException {
        List<Map.Entry<String, CutJob>> small = PublishedSets.sheets(false, 0, FirstCut.ANY).entrySet().stream()
                .filter(one -> one.getValue().parts().size() <= 40)
                .toList();
        Map<String, CutJob> chosen = new LinkedHashMap<>();
        for (int i = 0; i < count; i++) {
            Map.Entry<String, CutJob> one = small.get((int) ((long) i * small.size() / count));
            chosen.put(one.getKey(), one.getValue());
        }
        return chosen;
    }

    private static String run(CutJob job, double seconds) {
        CutPlan plan = SawPlans.sheets(job, Effort.untilStopped(1), PublishedSets.after(seconds));
        return "%d,%d,%d".formatted(plan.cost(), plan.lowerBound(), solver(job, plan.lowerBound(), seconds));
    }

    /** Sheets lie one after the other along a line; a part keeps within its sheet. @return as many sheets as parts when it finds none */
    private static int solver(CutJob job, long bound, double seconds) {
        Model model = new Model();
        int length = millimetres(job.stock().get(0).length());
        int width = millimetres(job.stock().get(0).width());
        List<CutPart> parts = job.parts();
        int n = parts.size();
        IntVar[] sheet = model.intVarArray("sheet", n, 0, n - 1);
        IntVar[] along = new IntVar[n];
        IntVar[] across = new IntVar[n];
        IntVar[] longs = new IntVar[n];
        IntVar[] wides = new IntVar[n];
        for (int i = 0; i < n; i++) {
            int l = millimetres(parts.get(i).length());
            int w = millimetres(parts.get(i).width());
            IntVar within = model.intVar("in sheet " + i, 0, length - l);
            along[i] = model.intVar("along " + i, 0, n * length);
            across[i] = model.intVar("across " + i, 0, width - w);
            longs[i] = model.intVar(l);
            wides[i] = model.intVar(w);
            model.arithm(along[i], "=", model.intScaleView(sheet[i], length), "+", within)
                    .post();
        }
        model.diffN(along, across, longs, wides, true).post();
        IntVar used = model.intVar("used", (int) bound, n);
        IntVar last = model.intVar("last", 0, n - 1);
        model.max(last, sheet).post();
        model.arithm(used, "=", last, "+", 1).post();
        return best(model, used, variables(sheet, along, across), seconds);
    }

    private static IntVar[] variables(IntVar[] sheet, IntVar[] along, IntVar[] across) {
        List<IntVar> all = new ArrayList<>();
        for (int i = 0; i < sheet.length; i++) {
            all.addAll(List.of(sheet[i], along[i], across[i]));
        }
        return all.toArray(IntVar[]::new);
    }

    private static int best(Model model, IntVar used, IntVar[] variables, double seconds) {
        model.setObjective(Model.MINIMIZE, used);
        Solver solver = model.getSolver();
        solver.setSearch(Search.lastConflict(Search.inputOrderLBSearch(variables)));
        solver.limitTime((long) (seconds * 1000));
        int best = used.getUB();
        while (solver.solve()) {
            best = used.getValue();
        }
        return best;
    }

    private static int millimetres(Length length) {
        return (int) Math.round(length.toMillimetres());
    }
}
