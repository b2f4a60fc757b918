package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Assembly;
import scantling.measure.Dim;
import scantling.measure.Length;

/**
 * The year in the client's home: the air, what wood comes to in it, what moves most and which gap is tightest.
 *
 * @param climate the air
 * @param moisture moisture content that wood comes to, % month by month, January first
 * @param made moisture content at which the parts that are shown were made, %
 * @param curves what moves, month by month
 */
public record Year(Climate climate, List<Double> moisture, double made, List<Curve> curves) {
    /** Takes its own copies. */
    public Year {
        moisture = List.copyOf(moisture);
        curves = List.copyOf(curves);
    }

    /** One thing through the year. @param words what it is @param each month by month, January first */
    public record Curve(String words, List<Dim> each) {
        /** Takes its own copy. */
        public Curve {
            each = List.copyOf(each);
        }
    }

    /** Empty for a piece without solid wood that is known to move, and in air that cannot be. */
    public static Optional<Year> of(Assembly assembly) {
        Climate climate = LastingChecks.climate(assembly);
        Optional<Climate.Range> range = climate.findRange();
        if (range.isEmpty()) {
            return Optional.empty();
        }
        Wetness shop = LastingChecks.shop(assembly);
        Movements movements = new Movements(Woods.standard(), shop, range.get());
        Optional<Moving> widest = movements.all(assembly).stream()
                .max(Comparator.comparing(moving -> moving.range().value()));
        return widest.map(moving -> {
            List<Curve> curves = new ArrayList<>();
            curves.add(new Curve(
                    moving.part().path() + ", wider or narrower than as made",
                    movements.monthly(moving.part(), climate)));
            tightest(assembly, movements, climate).ifPresent(curves::add);
            return new Year(climate, percents(climate), shop.of(moving.part()), curves);
        });
    }

    private static List<Double> percents(Climate climate) {
        return climate.moisture().stream()
                .flatMap(each -> each.find().stream().boxed())
                .toList();
    }

    /** The gaps of everything that is set into an opening, month by month, in building order; alike ones once. */
    public static List<Curve> gaps(Assembly assembly) {
        Climate climate = LastingChecks.climate(assembly);
        Wetness shop = LastingChecks.shop(assembly);
        return climate.findRange()
                .map(range -> gaps(assembly, new Movements(Woods.standard(), shop, range), climate))
                .orElse(List.of());
    }

    private static List<Curve> gaps(Assembly assembly, Movements movements, Climate climate) {
        Map<List<Dim>, List<String>> alike = new LinkedHashMap<>();
        new OpeningFaces(assembly, movements)
                .insets()
                .forEach(inset -> alike.computeIfAbsent(
                                rounded(inset.gaps(movements, climate)), key -> new ArrayList<>())
                        .add(inset.path()));
        return alike.entrySet().stream()
                .map(each -> new Curve(String.join(", ", each.getValue()), each.getKey()))
                .toList();
    }

    /** To a hundredth of a millimetre: what differs by less is alike. */
    private static List<Dim> rounded(List<Dim> each) {
        return each.stream()
                .map(dim -> Dim.worked(dim.value().roundedTo(Length.mm("0.01")), "gaps of the month, all together"))
                .toList();
    }

    private static Optional<Curve> tightest(Assembly assembly, Movements movements, Climate climate) {
        return new OpeningFaces(assembly, movements)
                .insets().stream()
                        .map(inset ->
                                new Curve("gaps of " + inset.path() + ", together", inset.gaps(movements, climate)))
                        .min(Comparator.comparing(curve -> least(curve.each())));
    }

    private static Dim least(List<Dim> each) {
        return each.stream().min(Comparator.naturalOrder()).orElse(Dim.ZERO);
    }

    /** How dry lumber should be before it is milled to size, and how it gets there. */
    public String rest() {
        double least = moisture.stream().mapToDouble(Double::doubleValue).min().orElse(made);
        double most = moisture.stream().mapToDouble(Double::doubleValue).max().orElse(made);
        return "In this home wood goes from %s to %s %%. Buy kiln-dried at %s to %s %%, rest it in sticks till two readings a week apart agree near %s %%, then mill to size."
                .formatted(
                        Say.one(least),
                        Say.one(most),
                        Say.one(Figures.of("furniture moisture from")),
                        Say.one(Figures.of("furniture moisture to")),
                        Say.one((least + most) / 2));
    }
}
