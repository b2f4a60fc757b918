package scantling.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.LongFunction;
import java.util.stream.Collectors;
import scantling.cutting.CutJob;
import scantling.cutting.CutPart;
import scantling.cutting.CutPiece;
import scantling.cutting.CutPlan;
import scantling.cutting.CutTree;
import scantling.cutting.Effort;
import scantling.cutting.PlacedPart;
import scantling.cutting.SawPlans;
import scantling.cutting.Stock;
import scantling.cutting.Wishes;
import scantling.measure.LengthFormat;

/** Why a saw plan is as it is, and what it would be otherwise: money first, then settings and cuts, then what is kept. */
public final class CutReasons {
    /** Enough for a plan to compare with; a plan for money alone ends as soon as none can be cheaper. */
    private static final Effort BRIEF = new Effort(200, 1);

    private final CutJob job;
    private final CutPlan plan;
    private final LengthFormat format;
    private final LongFunction<String> money;

    private CutReasons(CutJob job, CutPlan plan, LengthFormat format, LongFunction<String> money) {
        this.job = job;
        this.plan = plan;
        this.format = format;
        this.money = money;
    }

    /** Plain sentences, the weightiest first; none for a plan that cuts nothing. */
    public static List<String> of(CutGroup group, LengthFormat format) {
        List<String> all = new ArrayList<>(choices(group, format));
        if (!group.plan().used().isEmpty()) {
            all.addAll(new CutReasons(group.job(), group.plan(), format, money(group)).otherwise());
        }
        return all;
    }

    /** The same for a job that is of no piece. @param money how a cost is written */
    public static List<String> of(CutJob job, CutPlan plan, LengthFormat format, LongFunction<String> money) {
        CutReasons reasons = new CutReasons(job, plan, format, money);
        List<String> all = new ArrayList<>(reasons.bought());
        all.addAll(reasons.rack());
        all.addAll(reasons.glued());
        all.addAll(plan.used().isEmpty() ? List.of() : reasons.otherwise());
        return all;
    }

    /** Only what was chosen among several sizes, off the rack, or against a wish; mostly nothing, and then at no cost. */
    public static List<String> choices(CutGroup group, LengthFormat format) {
        CutReasons reasons = new CutReasons(group.job(), group.plan(), format, money(group));
        List<String> all = new ArrayList<>(reasons.bought());
        all.addAll(reasons.rack());
        all.addAll(reasons.glued());
        all.addAll(GradeYield.sentences(group));
        return all;
    }

    private List<String> otherwise() {
        List<String> all = new ArrayList<>(List.of(handling()));
        kept().ifPresent(all::add);
        return all;
    }

    private static LongFunction<String> money(CutGroup group) {
        boolean priced = group.material().supply().isPriced(group.material().price());
        return cost -> priced
                ? String.format(Locale.ROOT, "%.2f", cost / 100.0)
                : String.format(Locale.ROOT, "%.2f m2", cost / 10_000.0);
    }

    private List<Stock> forSale() {
        return job.stock().stream().filter(stock -> !stock.onHand()).toList();
    }

    /** What the choice among several sizes is, and what each alone would cost. */
    private List<String> bought() {
        List<Stock> sizes = forSale();
        if (sizes.size() < 2) {
            return List.of();
        }
        String chosen = counts(false);
        String first = chosen.isEmpty()
                ? "Nothing is bought."
                : "Bought, because no other choice found costs less: %s, %s in all."
                        .formatted(chosen, money.apply(plan.cost()));
        long there = sizes.stream().mapToInt(one -> one.count().orElse(1)).sum();
        if (isBoards()
                && plan.used().stream().filter(one -> !one.stock().onHand()).count() == there) {
            return List.of("All %d boards listed are bought, %s in all.".formatted(there, money.apply(plan.cost())));
        }
        List<String> alone = new ArrayList<>();
        if (sizes.stream().allMatch(stock -> stock.count().isEmpty() || !isBoards())) {
            sizes.forEach(size -> alone.add(alone(size)));
        } else {
            alone.add("all %d boards listed would be %s"
                    .formatted(
                            there,
                            money.apply(sizes.stream()
                                    .mapToLong(one -> one.cost() * one.count().orElse(1))
                                    .sum())));
        }
        return List.of(first, sentence(String.join("; ", alone)));
    }

    private boolean isBoards() {
        return job.stock().get(0) instanceof Stock.BoardStock;
    }

    private String alone(Stock size) {
        List<Stock> stock =
                new ArrayList<>(job.stock().stream().filter(Stock::onHand).toList());
        stock.add(size);
        CutPlan other = brief(job.withStock(stock).withWishes(Wishes.MONEY_ONLY));
        return isAsMuch(other)
                ? "with %s only it would be %s".formatted(size.name(), money.apply(other.cost()))
                : "%s alone is not enough".formatted(size.name());
    }

    /** Whether another plan has all the parts that this one has: some may fit on nothing. */
    private boolean isAsMuch(CutPlan other) {
        return leftOut(other) <= leftOut(plan);
    }

    private static int leftOut(CutPlan of) {
        return of.leftOut().stream().mapToInt(CutPlan.LeftOut::count).sum();
    }

    /** What the rack saves, or that it saves nothing. */
    private List<String> rack() {
        String taken = counts(true);
        if (taken.isEmpty() || forSale().isEmpty()) {
            return List.of();
        }
        CutPlan other = brief(job.withStock(forSale()).withWishes(Wishes.MONEY_ONLY));
        if (!isAsMuch(other)) {
            return List.of("From the rack: %s; without it not all could be cut.".formatted(taken));
        }
        long saved = other.cost() - plan.cost();
        return saved > 0
                ? List.of("From the rack: %s; without it %s more would be bought.".formatted(taken, money.apply(saved)))
                : List.of("From the rack: %s; it saves nothing, but it is easier to cut.".formatted(taken));
    }

    private static CutPlan brief(CutJob job) {
        return SawPlans.plan(job, BRIEF, () -> false);
    }

    private String counts(boolean onHand) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        plan.used().stream()
                .map(CutPiece::stock)
                .filter(stock -> stock.onHand() == onHand)
                .forEach(stock -> counts.merge(stock.name(), 1, Integer::sum));
        return counts.entrySet().stream()
                .map(one -> onHand ? one.getKey() : one.getValue() + " of " + one.getKey())
                .collect(Collectors.joining(", "));
    }

    private String handling() {
        String here = "%d fence settings and %d cuts".formatted(plan.settings(), plan.cuts());
        return plan.byMoney()
                .filter(first -> first.settings() > plan.settings())
                .map(first -> "%s; as first found, for money alone, it took %d and %d."
                        .formatted(here, first.settings(), first.cuts()))
                .orElse(here + "; money alone would not need fewer settings.");
    }

    /** The largest offcut, and what the shop says that keeping stock whole is worth. */
    private Optional<String> kept() {
        return plan.used().stream()
                .flatMap(piece -> piece.offcuts().stream())
                .filter(CutTree.Offcut::keep)
                .max((a, b) -> Double.compare(area(a), area(b)))
                .map(left -> "The largest offcut kept is %s%s; keeping a whole %s is worth %s fence settings here."
                        .formatted(
                                format.formatWithUnit(left.length()),
                                left.width().isZero() ? "" : " x " + format.formatWithUnit(left.width()),
                                kind(),
                                plain(job.wishes().offcut())));
    }

    private static double area(CutTree.Offcut left) {
        return left.length().toMillimetres()
                * (left.width().isZero() ? 1 : left.width().toMillimetres());
    }

    private String kind() {
        if (isBoards()) {
            return "board";
        }
        return job.stock().get(0) instanceof Stock.SheetStock ? "sheet" : "stick";
    }

    /** Which strips of one glue-up do not come from one board. */
    private List<String> glued() {
        Map<CutPart, TreeSet<Integer>> from = new LinkedHashMap<>();
        for (CutPiece piece : plan.used()) {
            for (PlacedPart placed : piece.parts()) {
                if (placed.part().glued()) {
                    from.computeIfAbsent(placed.part(), part -> new TreeSet<>()).add(piece.number());
                }
            }
        }
        List<String> apart = from.entrySet().stream()
                .filter(one -> one.getValue().size() > 1)
                .map(one -> "%s (boards %s)"
                        .formatted(
                                one.getKey().name(),
                                one.getValue().stream().map(String::valueOf).collect(Collectors.joining(", "))))
                .toList();
        if (from.isEmpty()) {
            return List.of();
        }
        return apart.isEmpty()
                ? List.of("The strips of each glue-up come from one board.")
                : List.of("Strips of one glue-up come from several boards, for want of room on one or of fewer boards:"
                        + " match their colour and grain before gluing: %s.".formatted(String.join("; ", apart)));
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
    }

    private static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
    }
}
