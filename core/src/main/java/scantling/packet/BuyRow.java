package scantling.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import scantling.construct.Fitting;
import scantling.cutting.CutPiece;
import scantling.cutting.Stock;
import scantling.finishing.FinishPlan;
import scantling.plan.CutGroup;
import scantling.plan.Plan;
import scantling.route.Step;

/**
 * One line of the buying list.
 *
 * @param kind boards and sheets, hardware, finish
 * @param what what it is
 * @param number how many or how much
 * @param note what else to know; empty when nothing
 */
public record BuyRow(String kind, String what, String number, String note) {
    private static final String FASTENERS = "Dowels, biscuits, tenons, screws";
    private static final String WOOD = "Boards, sheets, sticks";

    /** Everything a plan needs, in the order one drives to the yard, the hardware shop and the paint shop. */
    static List<BuyRow> of(Plan plan) {
        List<BuyRow> rows = new ArrayList<>();
        plan.cuts().forEach(group -> wood(rows, group));
        hardware(rows, plan);
        fasteners(rows, plan);
        plan.finish().buy().forEach(buy -> rows.add(finish(buy)));
        consumables(rows, plan);
        return List.copyOf(rows);
    }

    private static void wood(List<BuyRow> rows, CutGroup group) {
        Map<String, List<CutPiece>> byStock = new LinkedHashMap<>();
        group.plan()
                .used()
                .forEach(piece -> byStock.computeIfAbsent(piece.stock().name(), key -> new ArrayList<>())
                        .add(piece));
        byStock.forEach((stock, pieces) -> {
            boolean onRack = pieces.get(0).stock() instanceof Stock.BoardStock board && board.onHand();
            rows.add(new BuyRow(
                    WOOD, group.title() + ": " + stock, "%d".formatted(pieces.size()), onRack ? "on the rack" : ""));
        });
    }

    private static void hardware(List<BuyRow> rows, Plan plan) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        Map<String, String> per = new LinkedHashMap<>();
        for (Fitting fitting : plan.assembly().fittings()) {
            counts.merge(fitting.what(), fitting.count(), Integer::sum);
            per.put(fitting.what(), fitting.per());
        }
        counts.forEach((what, count) ->
                rows.add(new BuyRow("Hardware", what, "%d %s".formatted(count, per.getOrDefault(what, "")), "")));
    }

    /** Dowels, biscuits, loose tenons and screws, by what each joint and fitting was given. */
    private static void fasteners(List<BuyRow> rows, Plan plan) {
        Map<String, Integer> counts = new TreeMap<>();
        plan.features().supplies().forEach(supply -> counts.merge(supply.what(), supply.count(), Integer::sum));
        counts.forEach((what, count) -> rows.add(new BuyRow(FASTENERS, what, "%d".formatted(count), "")));
    }

    /** Whether the joints and fittings have said how many of them, and how large. */
    private static boolean isCounted(String supply, Plan plan) {
        String one = supply.replaceAll("s$", "");
        return plan.features().supplies().stream().anyMatch(each -> each.what().contains(one));
    }

    private static BuyRow finish(FinishPlan.Buy buy) {
        String uses = "uses about %s".formatted(litres(buy.litres().likely()));
        return new BuyRow("Finish", buy.coat().name(), tins(buy), (uses + ". " + buy.mixing()).strip());
    }

    /** Sizes of tins: {@code 2.5 l + 1 l}. */
    static String tins(FinishPlan.Buy buy) {
        return buy.tins().stream().map(BuyRow::litres).collect(Collectors.joining(" + "));
    }

    /** What the operations use up besides coats: glue, fasteners, abrasives, wrapping. */
    private static void consumables(List<BuyRow> rows, Plan plan) {
        Map<String, Double> sums = new LinkedHashMap<>();
        plan.route().operations().stream()
                .filter(operation -> operation.step() != Step.FINISH)
                .flatMap(operation -> operation.supplies().stream())
                .filter(supply -> !isCounted(supply.name(), plan))
                .forEach(supply -> sums.merge(supply.name() + "|" + supply.unit(), supply.amount(), Double::sum));
        sums.forEach((key, amount) -> {
            String[] both = key.split("\\|", 2);
            rows.add(new BuyRow(
                    "Consumables", both[0], String.format(Locale.ROOT, "%.0f %s", Math.ceil(amount), both[1]), ""));
        });
    }

    private static String litres(double litres) {
        return String.format(Locale.ROOT, "%.2f", litres).replaceAll("\\.?0+$", "") + " l";
    }
}
