package scantling.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import scantling.construct.Part;
import scantling.cutting.CutPiece;
import scantling.cutting.SawCheck;
import scantling.measure.Length;
import scantling.plan.CutGroup;
import scantling.plan.Plan;
import scantling.stock.Allowances;
import scantling.stock.Board;
import scantling.stock.Offcut;
import scantling.stock.RoughClass;
import scantling.stock.Sheet;
import scantling.stock.Stock;

/**
 * A job on its way through the shop, with books of its own: the sizes of what is cut and the stock that ought to be in the
 * rack, kept by plain addition and held against what the shop says after every step.
 */
final class WalkedJob {
    private final TestShop shop;
    private final String job;
    private final Map<String, Map<String, Length>> frozen = new TreeMap<>();
    private final Map<String, Stock> rack = new TreeMap<>();
    private final Map<String, Integer> sawn = new TreeMap<>();
    private Plan plan;

    WalkedJob(TestShop shop, String job) {
        this.shop = shop;
        this.job = job;
        this.plan = shop.plan(job);
    }

    String job() {
        return job;
    }

    Plan plan() {
        return plan;
    }

    Part part(String path) {
        return plan.assembly().parts().stream()
                .filter(part -> part.path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    Set<String> cutParts() {
        return frozen.keySet();
    }

    /** Does an act; the promises are looked at later. */
    void does(Act act) {
        shop.does(act);
    }

    /** The same; and that taking it back gives the very plan that was, and doing it again the very plan that is. */
    void stepThereAndBack(Act act) {
        Plan before = plan;
        String id = shop.does(act);
        Plan after = shop.plan(job);
        shop.does(new Act.Undo(id));
        assertSame(before, shop.plan(job));
        shop.does(new Act.Redo(id));
        Plan again = shop.plan(job);
        assertSame(after, again);
        look(again);
    }

    private static void assertSame(Plan expected, Plan actual) {
        assertEquals(expected.blanks(), actual.blanks());
        assertEquals(expected.cuts(), actual.cuts());
        assertEquals(expected.findings(), actual.findings());
        assertEquals(expected.assembly().parts(), actual.assembly().parts());
        assertEquals(expected.assembly().names(), actual.assembly().names());
    }

    /** The promises that hold after every step. */
    void look() {
        look(shop.plan(job));
    }

    private void look(Plan now) {
        plan = now;
        assertEquals(List.of(), plan.problems());
        nothingCutHasChanged();
        everythingFitsOrIsFlagged();
        theStockIsRight();
    }

    private void nothingCutHasChanged() {
        frozen.forEach((path, sizes) -> {
            Part part = part(path);
            Map<String, Length> now = Map.of(
                    "length", part.length().value(),
                    "width", part.width().value(),
                    "thickness", part.thickness().value());
            assertEquals(sizes, now, path);
        });
    }

    /** Fronts are set against the openings as measured, the gap all round them taken off, by plain subtraction. */
    private void everythingFitsOrIsFlagged() {
        Length gap = Length.mm(2);
        Length slack = Length.mm("0.3");
        for (int n = 1; n <= 3; n++) {
            String front = "drawers / drawer %d / front".formatted(n);
            String opening = "drawers / drawer %d / opening / ".formatted(n);
            Length wide = number(opening + "width").minus(gap.times(2));
            Length high = number(opening + "height").minus(gap.times(2));
            boolean fits = part(front).length().value().minus(wide).abs().compareTo(slack) <= 0
                    && part(front).width().value().minus(high).abs().compareTo(slack) <= 0;
            assertTrue(
                    fits
                            || plan.findings().stream()
                                    .anyMatch(finding -> finding.subject().equals(front)),
                    () -> front + " neither fits nor is flagged");
        }
    }

    private Length number(String name) {
        return Optional.ofNullable(plan.assembly().names().get(name))
                .orElseThrow()
                .value();
    }

    /** The rack is what was bought, less what was sawn, and its offcuts; every saw plan takes from that and nothing twice. */
    private void theStockIsRight() {
        Map<String, Stock> there = new TreeMap<>();
        shop.store().rack().stock().forEach(piece -> there.put(piece.id(), piece));
        assertEquals(rack, there);
        Set<String> taken = new TreeSet<>();
        for (CutGroup group : plan.cuts()) {
            assertEquals(List.of(), SawCheck.problems(group.job(), group.plan()), group.title());
            for (CutPiece piece : group.plan().used()) {
                String name = piece.stock().name();
                assertTrue(!rack.containsKey(name) || taken.add(name), () -> name + " is planned twice");
            }
        }
        plan.blanks().stream().filter(blank -> !blank.alreadyCut()).forEach(blank -> {
            long planned = plan.cuts().stream()
                    .flatMap(group -> group.plan().used().stream())
                    .flatMap(piece -> piece.parts().stream())
                    .filter(placed -> placed.part().name().equals(blank.part()))
                    .count();
            assertEquals(blank.pieces(), planned + sawn.getOrDefault(blank.part(), 0), blank.part());
        });
    }

    /** Buys all that the plan would buy, and puts it into the rack. */
    void buy() {
        int count = 0;
        for (CutGroup group : plan.cuts()) {
            for (CutPiece piece : group.plan().used()) {
                if (!rack.containsKey(piece.stock().name())) {
                    count++;
                    Stock bought = bought(
                            group, piece, "%s-%d-%d".formatted(group.material().name(), rack.size(), count));
                    rack.put(bought.id(), bought);
                    shop.does(new Act.PutOnRack(OnHand.of(bought)));
                }
            }
        }
        look();
    }

    private Stock bought(CutGroup group, CutPiece piece, String id) {
        String of = group.material().of();
        if (piece.stock() instanceof scantling.cutting.Stock.SheetStock sheet) {
            Length nominal = group.material()
                    .nominal()
                    .orElse(group.material().thickness())
                    .value();
            return new Sheet(
                    id,
                    of,
                    nominal,
                    Optional.empty(),
                    sheet.length(),
                    sheet.width(),
                    group.material().grained() ? Sheet.Grain.ALONG : Sheet.Grain.NONE);
        }
        RoughClass rough = plan.blanks().stream()
                .filter(blank -> blank.part().equals(group.job().parts().get(0).name()))
                .flatMap(blank -> blank.roughClass().stream())
                .findFirst()
                .orElseThrow();
        Length ends = Allowances.standard().endTrim().value().times(2);
        return Board.rough(
                id, of, rough, piece.stock().width(), piece.stock().length().plus(ends));
    }

    /** Saws pieces of stock as planned: those that hold the parts named, and others until a share of all is sawn. */
    void saw(double share, List<String> first) {
        List<CutPiece> all = plan.cuts().stream()
                .flatMap(group -> group.plan().used().stream())
                .toList();
        List<CutPiece> chosen = new ArrayList<>(
                all.stream().filter(piece -> holds(piece, first)).toList());
        all.stream()
                .filter(piece -> !chosen.contains(piece))
                .limit(Math.max(0, Math.round(share * all.size()) - chosen.size()))
                .forEach(chosen::add);
        chosen.forEach(this::saw);
        look();
    }

    private static boolean holds(CutPiece piece, List<String> parts) {
        return piece.parts().stream()
                .anyMatch(placed -> parts.contains(placed.part().name()));
    }

    private void saw(CutPiece piece) {
        BenchEntry.Sawn entry = SawnAsPlanned.of(piece, shop.store().rack()).orElseThrow();
        String from = entry.stock().orElseThrow();
        rack.remove(from);
        entry.offcuts().forEach(offcut -> rack.put(offcut.stock().id(), new Offcut(offcut.stock(), from)));
        entry.parts().forEach(part -> sawn.merge(part.part(), part.pieces(), Integer::sum));
        shop.log(job, entry);
    }

    /** Parts whose rough pieces are all sawn and that are not cut. */
    List<String> readyToCut() {
        List<String> ready = new ArrayList<>();
        plan.blanks().stream()
                .filter(blank -> !blank.alreadyCut() && sawn.getOrDefault(blank.part(), 0) >= blank.pieces())
                .forEach(blank -> ready.add(blank.part()));
        return ready;
    }

    /** Cuts a part to what the plan says now, or to other sizes. */
    Act cut(String path, Map<String, Length> sizes) {
        Part part = part(path);
        Map<String, Length> all = new LinkedHashMap<>(Map.of(
                "length", part.length().planned().value(),
                "width", part.width().planned().value(),
                "thickness", part.thickness().planned().value()));
        all.putAll(sizes);
        frozen.put(path, all);
        return new Act.Log(job, new BenchEntry.Cut(path, all));
    }

    Act spoil(String path) {
        frozen.remove(path);
        sawn.remove(path);
        return new Act.Log(job, new BenchEntry.Spoilt(path, "a split"));
    }

    Act measure(String name, String offMillimetres) {
        return new Act.Log(job, new BenchEntry.Measured(name, number(name).plus(Length.mm(offMillimetres))));
    }
}
