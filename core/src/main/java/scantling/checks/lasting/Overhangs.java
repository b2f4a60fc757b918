package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import scantling.construct.Assembly;
import scantling.construct.Change;
import scantling.construct.Changes;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Making;
import scantling.space.Axis;

/** Tops and shelves whose edge sinks where it runs on past what holds it. */
final class Overhangs {
    private static final String FORMULA = "free end of an overhanging beam, w a^3 (4 L + 3 a)/(24 E I)";

    private final Assembly assembly;
    private final Stiffness stiffness;
    private final Say say;

    Overhangs(Assembly assembly, Woods woods) {
        this.assembly = assembly;
        this.stiffness = new Stiffness(woods);
        this.say = Say.of(assembly);
    }

    List<Finding> check() {
        List<Finding> findings = new ArrayList<>();
        Set<String> told = new HashSet<>();
        for (Part part : assembly.parts()) {
            if (Parts.isShelf(part) && !part.box().isEmpty() && told.add(Parts.likeness(part))) {
                Stream.of(Axis.ACROSS, Axis.DEEP)
                        .flatMap(along -> judge(part, along).stream())
                        .findFirst()
                        .ifPresent(findings::add);
            }
        }
        return findings;
    }

    private Optional<Finding> judge(Part part, Axis along) {
        OptionalDouble elasticity = stiffness.find(part, along);
        Optional<Supports.Overhang> hang = new Supports(assembly, part).findOverhang(along);
        if (elasticity.isEmpty() || hang.isEmpty()) {
            return Optional.empty();
        }
        double creep = stiffness.creepFactor(part);
        Tip tip = new Tip(
                elasticity.getAsDouble(),
                Parts.mm(part.thickness()),
                Parts.mm(hang.get().reach()),
                Parts.mm(hang.get().back()),
                creep);
        PlannedLoad load = PlannedLoad.of(assembly, part.path());
        return SagRule.all().stream()
                .map(load::under)
                .filter(rule -> !tip.keeps(rule, load.pascal()))
                .findFirst()
                .map(rule -> finding(part, hang.get(), tip, rule, load));
    }

    private Finding finding(Part part, Supports.Overhang hang, Tip tip, SagRule rule, PlannedLoad load) {
        double sinks = tip.sinks(rule, load.pascal());
        OptionalDouble thick = tip.leastThickness(rule, load.pascal());
        OptionalDouble reach = tip.greatestReach(rule, load.pascal());
        Dim number = Dim.worked(
                Length.ofMillimetres(sinks),
                FORMULA,
                new Making.Input(4 * sinks / tip.reach(), hang.reach()),
                new Making.Input(-3 * sinks / tip.thickness(), part.thickness()));
        return new Finding(
                        rule.severity(),
                        part.path(),
                        "%s runs %s past what holds it, and its edge sinks %s under %s lb/ft2 there%s; %s allows %s, twice the overhang taken as the span."
                                .formatted(
                                        part.path(),
                                        say.near(hang.reach().value()),
                                        say.near(sinks),
                                        load.psfUnder(rule),
                                        rule.creeps() ? " after years" : " when new",
                                        rule.name(),
                                        say.near(tip.allowed(rule))),
                        List.of(number, hang.reach(), part.thickness()),
                        "%s; %s; %s; load: %s"
                                .formatted(
                                        rule.source(),
                                        FORMULA,
                                        Figures.sourceOf("cantilever counts as"),
                                        load.sourceUnder(rule)),
                        remedy(thick, reach))
                .by("overhang")
                .offering(changes(part, hang, thick, reach));
    }

    private String remedy(OptionalDouble thick, OptionalDouble reach) {
        String less = reach.isPresent()
                ? "let it run past by %s at most".formatted(say.atMost(reach.getAsDouble()))
                : "let it end at what holds it";
        return thick.isPresent()
                ? "Make it %s thick, or %s, or set brackets under it.".formatted(say.atLeast(thick.getAsDouble()), less)
                : "Set brackets under it, or %s.".formatted(less);
    }

    private List<Change> changes(Part part, Supports.Overhang hang, OptionalDouble thick, OptionalDouble reach) {
        Stream<Change> thicker = thick.stream()
                .mapToObj(say::stock)
                .flatMap(mm -> Changes.bring(part.thickness(), mm, assembly.piece()).stream());
        Stream<Change> shorter = reach.stream()
                .mapToObj(say::size)
                .flatMap(mm -> Changes.bring(hang.reach(), mm, assembly.piece()).stream());
        return Stream.concat(thicker, shorter).toList();
    }
}
