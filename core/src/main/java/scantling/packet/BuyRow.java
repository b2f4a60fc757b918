package scantling.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import scantling.construct.Fitting;
import scantling.cutting.CutPiece;
import scantling.finishing.FinishPlan;
import scantling.plan.CutGroup;
import scantling.plan.Plan;
import scantling.route.Consumable;

/**
 * One line of the buying list.
 *
 * @param kind boards and sheets, hardware, finish
 * @param what what it is
 * @param number how many or how much
 * @param note what else to know; empty when nothing
 */
public record BuyRow(String kind, String what, String number, String note) {
    private static final String SCREWS = "Screws for hardware";
    private static final String WOOD = "Boards, sheets, sticks";

    /** Everything a plan needs, in the order one drives to the yard, the hardware shop and the paint shop. */
    static List<BuyRow> of(Plan plan) {
        List<BuyRow> rows = new ArrayList<>();
        plan.cuts().forEach(group -> wood(rows, group));
        hardware(rows, plan);
        screws(rows, plan);
        plan.finish().buy().forEach(buy -> rows.add(finish(buy)));
        Consumable.of(plan.route()).forEach(used -> rows.add(consumable(used)));
        return List.copyOf(rows);
    }

    private static void wood(List<BuyRow> rows, CutGroup group) {
        Map<String, List<CutPiece>> byStock = new LinkedHashMap<>();
        group.plan()
                .used()
                .forEach(piece -> byStock.computeIfAbsent(piece.stock().name(), key -> new ArrayList<>())
                        .add(piece));
        byStock.forEach((stock, pieces) -> {
            boolean onRack = pieces.get(0).stock().onHand();
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

    /** What hardware is screwed on with; what joints take is among the consumables. */
    private static void screws(List<BuyRow> rows, Plan plan) {
        Set<String> fittings =
                plan.assembly().fittings().stream().map(Fitting::path).collect(Collectors.toSet());
        Map<String, Integer> counts = new TreeMap<>();
        plan.features().fixings().stream()
                .filter(fixing -> fittings.contains(fixing.owner()))
                .forEach(fixing -> counts.merge(fixing.what() + " " + fixing.size(), fixing.count(), Integer::sum));
        counts.forEach((what, count) -> rows.add(new BuyRow(SCREWS, what, "%d".formatted(count), "")));
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
    private static BuyRow consumable(Consumable used) {
        String unit = used.unit().equals("piece") ? "" : " " + used.unit();
        String amount = plain(used.amount(), used.unit().equals("m2") ? "%.1f" : "%.0f") + unit;
        String packs = used.packs().stream().map("%.0f"::formatted).collect(Collectors.joining(" + "));
        return packs.isEmpty()
                ? new BuyRow("Consumables", used.name(), amount, "")
                : new BuyRow("Consumables", used.name(), packs + unit, "uses about " + amount);
    }

    private static String litres(double litres) {
        return plain(litres, "%.2f") + " l";
    }

    private static String plain(double number, String format) {
        return String.format(Locale.ROOT, format, number)
                .replaceAll("(\\.\\d*?)0+$", "$1")
                .replaceAll("\\.$", "");
    }
}
