package scantling.plan;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import scantling.checks.FitCheck;
import scantling.checks.Misfit;
import scantling.construct.Part;
import scantling.cutting.CutPiece;
import scantling.feature.Feature;
import scantling.measure.LengthFormat;
import scantling.piece.BenchLog;
import scantling.piece.Piece;

/**
 * What another text would cost a piece that is partly cut. What is cut is frozen at its sizes; each such part is set against
 * the plan of the new text, and the wood is planned anew without the parts that would have to be made again.
 */
public final class DesignChange {
    private final Plan before;
    private final Plan after;
    private final BenchLog bench;
    private final Shop shop;

    private DesignChange(Plan before, Plan after, BenchLog bench, Shop shop) {
        this.before = before;
        this.after = after;
        this.bench = bench;
        this.shop = shop;
    }

    /** What becomes of a part that is cut. */
    public enum Fate {
        /** It can be made to fit. */
        WORK_ON,
        /** Another has to be made. */
        MAKE_ANEW,
        /** The piece no longer has it. */
        OF_NO_USE
    }

    /** A part that is cut and does not suit the new text. @param sentence why, and what to do */
    public record Affected(String part, Fate fate, String sentence) {}

    /**
     * The cost of a change.
     *
     * @param parts parts that are cut and would no longer do
     * @param pieces how many more pieces of stock are to be bought; negative for fewer
     * @param money how much more the wood costs, in hundredths of the money unit; empty where some material has no price
     * @param minutes bench time that is lost with the parts to be made anew or of no use; empty where nobody can tell
     */
    public record Cost(List<Affected> parts, int pieces, Optional<Long> money, Optional<Integer> minutes) {
        /** Takes its own copy. */
        public Cost {
            parts = List.copyOf(parts);
        }

        /** Whether nothing that is cut suffers. */
        public boolean sparesWhatIsCut() {
            return parts.isEmpty();
        }

        /** The minutes as working days. @param minutesADay how long a working day is, greater than zero */
        public Optional<Double> days(double minutesADay) {
            return minutes.map(lost -> lost / minutesADay);
        }
    }

    /**
     * Works out the cost.
     *
     * @param before the piece as it is described
     * @param after the piece as it would be
     * @param bench what is measured and cut
     * @param minutes how long a part took; empty where nobody can tell
     */
    public static Cost cost(
            Piece before, Piece after, BenchLog bench, Shop shop, Function<String, Optional<Integer>> minutes) {
        Plan old = Planner.plan(before, bench, shop).plan();
        Plan now = Planner.plan(after, bench, shop).plan();
        return new DesignChange(old, now, bench, shop).cost(after, minutes);
    }

    private Cost cost(Piece piece, Function<String, Optional<Integer>> minutes) {
        List<Affected> affected = affected();
        Set<String> again = affected.stream()
                .filter(part -> part.fate() != Fate.WORK_ON)
                .map(Affected::part)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        Plan anew = Planner.plan(piece, without(again), shop).plan();
        Optional<Long> more = money(anew).flatMap(dearer -> money(before).map(old -> dearer - old));
        Optional<Integer> lost = again.stream()
                .map(minutes)
                .reduce(Optional.of(0), (sum, one) -> sum.flatMap(some -> one.map(other -> some + other)));
        return new Cost(affected, pieces(anew) - pieces(before), more, lost);
    }

    private BenchLog without(Set<String> parts) {
        return new BenchLog(
                bench.measured().stream()
                        .filter(size ->
                                parts.stream().noneMatch(part -> size.path().startsWith(part + " / ")))
                        .toList(),
                bench.cut().stream().filter(cut -> !parts.contains(cut.path())).toList(),
                bench.sawn().stream()
                        .filter(sawn -> !parts.contains(sawn.path()))
                        .toList());
    }

    private static Optional<Long> money(Plan plan) {
        boolean priced =
                plan.cuts().stream().allMatch(group -> group.material().price().isPresent());
        return priced
                ? Optional.of(plan.cuts().stream()
                        .mapToLong(group -> group.plan().cost())
                        .sum())
                : Optional.empty();
    }

    private int pieces(Plan plan) {
        Set<String> rack =
                shop.rack().stock().stream().map(scantling.stock.Stock::id).collect(Collectors.toSet());
        return (int) plan.cuts().stream()
                .flatMap(group -> group.plan().used().stream())
                .map(CutPiece::stock)
                .filter(stock -> !rack.contains(stock.name()))
                .count();
    }

    private List<Affected> affected() {
        Map<String, Affected> affected = new LinkedHashMap<>();
        Map<String, Part> parts = after.assembly().parts().stream()
                .collect(Collectors.toMap(Part::path, Function.identity(), (first, second) -> first));
        Set<String> touched = new LinkedHashSet<>();
        bench.cut().forEach(cut -> touched.add(cut.path()));
        bench.sawn().forEach(sawn -> touched.add(sawn.path()));
        for (String path : touched) {
            Optional<Part> part = Optional.ofNullable(parts.get(path));
            part.map(this::otherwise)
                    .orElseGet(() -> Optional.of(
                            new Affected(path, Fate.OF_NO_USE, path + " is cut, and the piece no longer has it.")))
                    .ifPresent(found -> affected.put(path, found));
        }
        return List.copyOf(affected.values());
    }

    /** What is wrong with a part that is cut and still wanted: its material, its sizes, or what is to be cut into it. */
    private Optional<Affected> otherwise(Part part) {
        String path = part.path();
        Optional<Part> old = before.assembly().parts().stream()
                .filter(one -> one.path().equals(path))
                .findFirst();
        if (old.filter(one -> !one.material().of().equals(part.material().of())).isPresent()) {
            return Optional.of(new Affected(
                    path,
                    Fate.MAKE_ANEW,
                    "%s is cut of %s.".formatted(path, old.get().material().of())));
        }
        return tooSmallSawn(path).or(() -> misfit(path)).or(() -> recut(path));
    }

    private Optional<Affected> tooSmallSawn(String path) {
        SawnBlanks sawn = new SawnBlanks(
                bench.sawn(), LengthFormat.of(after.assembly().piece().unit()));
        return sawn.findings(after.blanks()).stream()
                .filter(finding -> finding.subject().equals(path))
                .findFirst()
                .map(finding -> new Affected(path, Fate.MAKE_ANEW, finding.sentence()));
    }

    /** A size that is cut and is off by the new text as it was not by the old; a size that is only given counts as much. */
    private Optional<Affected> misfit(String path) {
        List<Misfit> known = FitCheck.differences(before.assembly());
        return FitCheck.differences(after.assembly()).stream()
                .filter(misfit -> misfit.part().path().equals(path))
                .filter(misfit -> known.stream().noneMatch(old -> same(old, misfit)))
                .map(this::affected)
                .max(Comparator.comparing(Affected::fate));
    }

    private static boolean same(Misfit old, Misfit now) {
        return old.part().path().equals(now.part().path())
                && old.size().equals(now.size())
                && old.over().equals(now.over());
    }

    private Affected affected(Misfit misfit) {
        LengthFormat format = LengthFormat.of(after.assembly().piece().unit());
        BenchRemedies.Remedy best =
                new BenchRemedies(after.blanks(), shop, format).remedies(misfit).get(0);
        String path = misfit.part().path();
        return new Affected(
                path,
                best.kind() == BenchRemedies.Kind.CUT_NEW ? Fate.MAKE_ANEW : Fate.WORK_ON,
                "%s is cut with a %s of %s; the plan would need %s. %s"
                        .formatted(
                                path,
                                misfit.size(),
                                format.formatWithUnit(misfit.cut().value()),
                                format.formatWithUnit(misfit.planned().value()),
                                best.sentence()));
    }

    /** Slots and holes that may already be in it. */
    private Optional<Affected> recut(String path) {
        boolean cut = bench.cut().stream().anyMatch(one -> one.path().equals(path));
        List<Feature> old = before.features().byPart().getOrDefault(path, List.of());
        List<Feature> now = after.features().byPart().getOrDefault(path, List.of());
        return cut && !old.equals(now)
                ? Optional.of(new Affected(
                        path, Fate.WORK_ON, "%s is cut; what is slotted or drilled in it changes.".formatted(path)))
                : Optional.empty();
    }
}
