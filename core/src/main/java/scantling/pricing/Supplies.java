package scantling.pricing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import scantling.construct.Fitting;
import scantling.construct.Joint;
import scantling.feature.Fixing;
import scantling.finishing.Amount;
import scantling.finishing.FinishGroup;
import scantling.finishing.FinishPlan;

/** Hardware, finish, glue, fasteners and abrasives of a piece. */
final class Supplies {
    private static final double GRAMS = 0.001;
    private static final double PERCENT = 0.01;
    private static final Map<Joint.Kind, String> FASTENERS = Map.of(
            Joint.Kind.BISCUIT, "biscuit",
            Joint.Kind.MITRE_BISCUIT, "biscuit",
            Joint.Kind.MITRE_SPLINE, "spline",
            Joint.Kind.DOWEL, "dowel",
            Joint.Kind.LOOSE_TENON, "loose tenon",
            Joint.Kind.POCKET_SCREW, "pocket screw",
            Joint.Kind.SCREW, "screw");

    private final Basis basis;
    private final Rates rates;
    private final Told told;
    private final List<Line> lines = new ArrayList<>();

    Supplies(Basis basis, Rates rates, Told told) {
        this.basis = basis;
        this.rates = rates;
        this.told = told;
    }

    List<Line> lines() {
        hardware();
        glue();
        fasteners();
        abrasives();
        finish();
        return lines;
    }

    private void hardware() {
        Map<String, Integer> counts = new LinkedHashMap<>();
        Map<String, String> per = new LinkedHashMap<>();
        for (Fitting fitting : basis.assembly().fittings()) {
            counts.merge(fitting.what(), fitting.count(), Integer::sum);
            per.put(fitting.what(), fitting.per());
        }
        counts.forEach((what, count) -> {
            String quantity = "%d %s".formatted(count, per.getOrDefault(what, ""));
            Optional<Rates.Price> price = rates.hardware(what);
            price.ifPresentOrElse(
                    each -> add(Line.Section.HARDWARE, what, quantity, Amount.exactly(count), each),
                    () -> told.unpriced(what, quantity));
        });
    }

    private void glue() {
        double area = basis.finish().glueArea();
        if (area > 0) {
            Amount spread = Figures.of("glue spread");
            Amount over = Figures.of("glue over");
            Amount kilos = new Amount(
                    area * spread.low() * GRAMS * (1 + over.low() * PERCENT),
                    area * spread.likely() * GRAMS * (1 + over.likely() * PERCENT),
                    area * spread.high() * GRAMS * (1 + over.high() * PERCENT));
            String quantity = String.format(Locale.ROOT, "%.2f kg on %.2f m2", kilos.likely(), area);
            small("glue", quantity, kilos);
        }
    }

    /** By what joinery lays out; where it has laid out nothing, some to a joint. */
    private void fasteners() {
        Map<String, Amount> counts = new TreeMap<>();
        Set<String> laidOut = new HashSet<>();
        for (Fixing fixing : basis.features().fixings()) {
            laidOut.add(fixing.owner());
            counts.merge(fixing.what(), Amount.exactly(fixing.count()), Amount::plus);
        }
        for (Joint joint : basis.assembly().joints()) {
            String fastener = FASTENERS.get(joint.kind());
            if (fastener != null && !laidOut.contains(joint.path())) {
                counts.merge(fastener, Figures.of("fasteners a joint"), Amount::plus);
            }
        }
        counts.forEach((fastener, count) -> small(fastener, Words.plain(Math.ceil(count.likely())), count));
    }

    private void abrasives() {
        double area = basis.assembly().parts().isEmpty() ? 0 : sanded();
        if (area > 0) {
            Amount share = Figures.of("abrasive");
            Amount sheets = new Amount(area * share.low(), area * share.likely(), area * share.high());
            small("abrasive price", String.format(Locale.ROOT, "for %.1f m2 sanded", area), sheets);
        }
    }

    /** Every face once in each grit before the finish, and once before each coat that is sanded between. */
    private double sanded() {
        double bare =
                basis.finish().faces().stream().mapToDouble(face -> face.open()).sum();
        double between =
                basis.finish().groups().stream().mapToDouble(Supplies::between).sum();
        return bare * Figures.of("grits").likely() + between;
    }

    private static double between(FinishGroup group) {
        return group.coatings().stream()
                .skip(1)
                .filter(coating -> coating.sand().isPresent())
                .mapToDouble(coating -> coating.area())
                .sum();
    }

    private void finish() {
        for (FinishPlan.Buy buy : basis.finish().buy()) {
            String name = buy.coat().name();
            String quantity = String.format(
                    Locale.ROOT,
                    "%.2f l (%.2f to %.2f)",
                    buy.litres().likely(),
                    buy.litres().low(),
                    buy.litres().high());
            Optional<Rates.Price> price = rates.price("finish", name);
            price.ifPresentOrElse(
                    each -> add(Line.Section.FINISH, name, quantity, buy.litres(), each),
                    () -> told.unpriced(name, quantity));
        }
    }

    private void small(String item, String quantity, Amount count) {
        String name = item.equals("abrasive price") ? "abrasives" : item;
        Optional<Rates.Price> own = rates.price("consumable", name);
        own.or(() -> Figures.findPrice(item)
                        .map(price ->
                                new Rates.Price(rates.sum(1).times(price.likely()), Figures.sourceOf(item), true)))
                .ifPresentOrElse(
                        each -> add(Line.Section.CONSUMABLES, name, quantity, count, each),
                        () -> told.unpriced(name, quantity));
    }

    private void add(Line.Section section, String what, String quantity, Amount count, Rates.Price each) {
        if (each.example()) {
            told.example(what);
        }
        lines.add(new Line(section, what, quantity, Spread.of(count, each.money()), each.source()));
    }
}
