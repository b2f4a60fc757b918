package scantling.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Makes saw plans. Each is anytime (a first plan at once, better ones until the effort is spent, the caller says stop, or the
 * plan is proven best), repeatable (same job, seed and steps, same plan, as long as it is not stopped) and checked.
 */
public final class SawPlans {
    private SawPlans() {}

    /**
     * Plans sheets.
     *
     * @param stop asked once a step; when it says true the best plan so far is given
     * @throws IllegalArgumentException if the stock is not sheets
     */
    public static CutPlan sheets(CutJob job, Effort effort, BooleanSupplier stop) {
        demand(job, Stock.SheetStock.class, "sheets");
        return plan(job, effort, stop);
    }

    /**
     * Plans boards: crosscut to lengths first, then ripped to widths, a last cut to length where a strip is longer than its
     * part.
     *
     * @throws IllegalArgumentException if the stock is not boards
     */
    public static CutPlan boards(CutJob job, Effort effort, BooleanSupplier stop) {
        demand(job, Stock.BoardStock.class, "boards");
        return plan(job, effort, stop);
    }

    /**
     * Plans sticks: only length counts.
     *
     * @throws IllegalArgumentException if the stock is not sticks
     */
    public static CutPlan sticks(CutJob job, Effort effort, BooleanSupplier stop) {
        demand(job, Stock.StickStock.class, "sticks");
        return plan(job, effort, stop);
    }

    /** Plans whatever kind of stock the job has. */
    public static CutPlan plan(CutJob job, Effort effort, BooleanSupplier stop) {
        return plan(job, List.of(), effort, stop);
    }

    /** Plans what is left of a plan that is being cut; never dearer than going on as the old plan says, where that can be. */
    public static CutPlan rest(Rest rest, Effort effort, BooleanSupplier stop) {
        return plan(rest.job(), rest.begun(), effort, stop);
    }

    private static CutPlan plan(CutJob job, List<Rest.Begun> begun, Effort effort, BooleanSupplier stop) {
        List<String> odd = Rows.problems(job);
        if (!odd.isEmpty()) {
            throw new IllegalArgumentException(String.join(" ", odd));
        }
        Rows rows = Rows.endToEnd(job);
        Rows sides = Rows.sideBySide(rows.merged());
        CutPlan plan = rows.isEmpty() && sides.isEmpty()
                ? searched(job, begun, effort, stop)
                : rows.apart(sides.apart(matched(job, rows, sides, effort, stop)));
        List<String> wrong = SawCheck.problems(job, plan);
        if (!wrong.isEmpty()) {
            throw new IllegalStateException("A saw plan failed its check: " + wrong);
        }
        return plan;
    }

    /** Rows that leave something over hold room that the search does not see: what no plan can cost less is told without them. */
    private static CutPlan matched(CutJob job, Rows rows, Rows sides, Effort effort, BooleanSupplier stop) {
        CutPlan plan = searched(sides.merged(), List.of(), effort, stop);
        if (rows.areEven() && sides.areEven()) {
            return plan;
        }
        CutJob free = rows.areEven() ? sides.evenMerged() : rows.evenMerged();
        long bound = Math.min(plan.lowerBound(), new Bounds(new Problem(free, 0, FirstCut.ANY)).cost());
        CutPlan.Status status =
                plan.status() == CutPlan.Status.OPTIMAL && bound < plan.cost() ? CutPlan.Status.SOUND : plan.status();
        return new CutPlan(status, plan.cost(), bound, plan.used(), plan.leftOut(), plan.byMoney());
    }

    private static CutPlan searched(CutJob job, List<Rest.Begun> begun, Effort effort, BooleanSupplier stop) {
        Problem problem = new Problem(job, stagesFor(job), firstCutFor(job));
        Search search = new Search(problem, effort, stop, Tuning.USUAL);
        if (!begun.isEmpty()) {
            search.begin(begun);
        }
        Layout layout = search.run();
        return written(problem, layout, search);
    }

    /** Whether a plan is better than another of the same job: cheaper, or as cheap and easier to cut, or better proven. */
    public static boolean isBetter(CutJob job, CutPlan plan, CutPlan than) {
        if (plan.leftOut().size() != than.leftOut().size()) {
            return plan.leftOut().size() < than.leftOut().size();
        }
        if (plan.cost() != than.cost()) {
            return plan.cost() < than.cost();
        }
        int easier = Double.compare(Handling.of(job, plan), Handling.of(job, than));
        return easier < 0 || easier == 0 && plan.lowerBound() > than.lowerBound();
    }

    private static CutPlan written(Problem problem, Layout layout, Search search) {
        long bound = search.bound();
        List<CutPlan.LeftOut> leftOut = leftOut(problem, layout);
        CutPlan.Status status = !leftOut.isEmpty()
                ? CutPlan.Status.PARTS_LEFT_OUT
                : layout.cost <= bound ? CutPlan.Status.OPTIMAL : CutPlan.Status.SOUND;
        Optional<CutPlan.Handled> byMoney = search.byMoney()
                .filter(first -> first.cost == layout.cost)
                .map(first -> CutPlan.Handled.of(new PlanWriter(problem).pieces(first)));
        return new CutPlan(status, layout.cost, bound, new PlanWriter(problem).pieces(layout), leftOut, byMoney);
    }

    private static List<CutPlan.LeftOut> leftOut(Problem problem, Layout layout) {
        int[] large = new int[problem.job.parts().size()];
        int[] short_ = new int[problem.job.parts().size()];
        for (int i = 0; i < problem.items; i++) {
            if (!problem.fitsSomewhere(i)) {
                large[problem.partOf[i]]++;
            }
        }
        layout.out.forEach(i -> short_[problem.partOf[i]]++);
        List<CutPlan.LeftOut> all = new ArrayList<>();
        for (int p = 0; p < large.length; p++) {
            CutPart part = problem.job.parts().get(p);
            if (large[p] > 0) {
                all.add(tooLarge(part, large[p]));
            }
            if (short_[p] > 0) {
                all.add(new CutPlan.LeftOut(part, short_[p], "There is not enough stock for this."));
            }
        }
        return all;
    }

    private static CutPlan.LeftOut tooLarge(CutPart part, int count) {
        String name = part.name().replace("%", "%%");
        return part.width().isZero()
                ? new CutPlan.LeftOut(
                        part, count, name + ", %s, is longer than any stock after trimming.", List.of(part.length()))
                : new CutPlan.LeftOut(
                        part,
                        count,
                        name + ", %s by %s, is larger than any stock after trimming.",
                        List.of(part.length(), part.width()));
    }

    private static void demand(CutJob job, Class<? extends Stock> kind, String name) {
        if (!job.stock().stream().allMatch(kind::isInstance)) {
            throw new IllegalArgumentException("The stock of this job must be %s.".formatted(name));
        }
    }

    private static boolean boards(CutJob job) {
        return !job.stock().isEmpty() && job.stock().get(0) instanceof Stock.BoardStock;
    }

    /** Boards are crosscut, then ripped; sheets as the saw says. */
    static int stagesFor(CutJob job) {
        return boards(job) ? 2 : job.saw().stages();
    }

    static FirstCut firstCutFor(CutJob job) {
        return boards(job) ? FirstCut.ACROSS : job.saw().firstCut();
    }
}
