package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import scantling.construct.Assembly;
import scantling.construct.Change;
import scantling.construct.Changes;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.space.Axis;

/** Drawer floors that sag: plates held along their four edges, under the drawer load of the cabinet test. */
final class DrawerFloors {
    private final Assembly assembly;
    private final Stiffness stiffness;
    private final Say say;
    private final SagRule rule;

    DrawerFloors(Assembly assembly, Woods woods) {
        this.assembly = assembly;
        this.stiffness = new Stiffness(woods);
        this.say = Say.of(assembly);
        this.rule = SagRule.all().stream()
                .filter(each -> each.name().startsWith("cabinet test"))
                .findFirst()
                .orElseThrow();
    }

    List<Finding> check() {
        List<Finding> findings = new ArrayList<>();
        Set<String> told = new HashSet<>();
        for (Part part : assembly.parts()) {
            boolean floor = Parts.findDrawer(part).isPresent()
                    && part.lie().thickness() == Axis.UP
                    && !part.box().isEmpty();
            if (floor && told.add(Parts.likeness(part))) {
                plate(part).flatMap(plate -> judge(part, plate)).ifPresent(findings::add);
            }
        }
        return findings;
    }

    private Optional<Plate> plate(Part part) {
        OptionalDouble across = stiffness.find(part, Axis.ACROSS);
        OptionalDouble deep = stiffness.find(part, Axis.DEEP);
        return across.isEmpty() || deep.isEmpty()
                ? Optional.empty()
                : Optional.of(new Plate(
                        Math.sqrt(across.getAsDouble() * deep.getAsDouble()),
                        Parts.mm(part.box().extent(Axis.ACROSS)),
                        Parts.mm(part.box().extent(Axis.DEEP)),
                        Parts.mm(part.thickness())));
    }

    private Optional<Finding> judge(Part part, Plate plate) {
        double load = rule.load().orElse(0);
        double allowed = rule.allowed(plate.shorter());
        double sag = plate.sag(load);
        return sag <= allowed ? Optional.empty() : Optional.of(finding(part, plate, sag, allowed));
    }

    private Finding finding(Part part, Plate plate, double sag, double allowed) {
        OptionalDouble least = Solve.least(
                thick -> plate.thick(thick).sag(rule.load().orElse(0)) <= allowed, 1, Figures.of("thickest shelf"));
        Dim number = Dim.worked(Length.ofMillimetres(sag), "sag of a plate held along its edges");
        return new Finding(
                        rule.severity(),
                        part.path(),
                        "%s sags %s under %.0f lb/ft2 when new; %s allows %s."
                                .formatted(
                                        part.path(),
                                        say.near(sag),
                                        rule.load().orElse(0) / SagRule.pascal(1),
                                        rule.name(),
                                        say.near(allowed)),
                        List.of(number, part.thickness(), part.width()),
                        rule.source() + "; " + Plate.source(),
                        least.isPresent()
                                ? "Make it %s thick, or set a rail under its middle."
                                        .formatted(say.atLeast(least.getAsDouble()))
                                : "Set a rail under its middle.")
                .by("sag")
                .offering(thicker(part, least));
    }

    private List<Change> thicker(Part part, OptionalDouble least) {
        return least.isPresent()
                ? Changes.bring(part.thickness(), say.stock(least.getAsDouble()), assembly.piece()).stream()
                        .toList()
                : List.of();
    }
}
