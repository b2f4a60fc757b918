package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.space.Axis;
import scantling.space.Contact;
import scantling.space.Side;

/** Rails that sag: under the board that lies on them with its planning load, or under clothes. */
final class Rails {
    private final Assembly assembly;
    private final Stiffness stiffness;
    private final Say say;
    private final SagRule rule = SagRule.all().get(0);

    Rails(Assembly assembly, Woods woods) {
        this.assembly = assembly;
        this.stiffness = new Stiffness(woods);
        this.say = Say.of(assembly);
    }

    List<Finding> check() {
        List<Finding> findings = new ArrayList<>();
        Set<String> told = new HashSet<>();
        for (Part part : assembly.parts()) {
            boolean spans = part.lie().length() != Axis.UP && !part.box().isEmpty() && isRail(part);
            if (spans && Parts.findDrawer(part).isEmpty() && told.add(Parts.likeness(part))) {
                judge(part).ifPresent(findings::add);
            }
        }
        return findings;
    }

    private static boolean isRail(Part part) {
        String role = Parts.role(part);
        return role.endsWith("rail") || role.endsWith("bearer");
    }

    private static boolean hangs(Part part) {
        return part.path().toLowerCase(Locale.ROOT).contains("clothes");
    }

    private Optional<Finding> judge(Part part) {
        double span = Parts.mm(part.length()) - inside(part);
        double load = hangs(part)
                ? Figures.of("clothes on a rail") * Figures.of("gravity") / 1000 * span
                : carried(part, span);
        OptionalDouble elasticity = stiffness.find(part, part.lie().length());
        if (load <= 0 || elasticity.isEmpty() || span <= 0) {
            return Optional.empty();
        }
        double high = Parts.mm(part.box().extent(Axis.UP));
        double wide = Parts.mm(part.box().extent(part.lie().length().third(Axis.UP)));
        Section section = Section.rectangle(elasticity.getAsDouble(), wide, high);
        double sag = new Beam(Loading.UNIFORM_SUPPORTED, span, section).deflection(load);
        return sag <= rule.allowed(span)
                ? Optional.empty()
                : Optional.of(finding(part, span, sag, elasticity.getAsDouble(), wide, load));
    }

    /** How much of its length is in the parts that hold it. */
    private double inside(Part part) {
        return assembly.joints().stream()
                .filter(joint -> joint.entering().equals(part.path()))
                .filter(joint -> joint.kind() == Joint.Kind.MORTISE_AND_TENON
                        || joint.kind() == Joint.Kind.DADO
                        || joint.kind() == Joint.Kind.RABBET)
                .flatMap(joint -> Parts.find(assembly, joint.receiving()).stream())
                .mapToDouble(other -> Math.max(
                        0,
                        Parts.mm(part.box().meet(other.box()).extent(part.lie().length()))))
                .sum();
    }

    /** Its share of what lies on it, N: half of the board between it and the next. */
    private double carried(Part part, double span) {
        return assembly.parts().stream()
                .filter(other -> Parts.isShelf(other) && !other.box().isEmpty())
                .filter(other -> Contact.between(part.box(), other.box())
                        .filter(at -> at.side() == Side.TOP)
                        .isPresent())
                .mapToDouble(board -> {
                    double deep =
                            Parts.mm(board.box().extent(part.lie().length().third(Axis.UP)));
                    return PlannedLoad.of(assembly, "").pascal() * 1e-6 * span * deep / 2;
                })
                .max()
                .orElse(0);
    }

    private Finding finding(Part part, double span, double sag, double elasticity, double wide, double load) {
        OptionalDouble least = Solve.least(
                high -> new Beam(Loading.UNIFORM_SUPPORTED, span, Section.rectangle(elasticity, wide, high))
                                .deflection(load)
                        <= rule.allowed(span),
                1,
                Figures.of("deepest lipping") * 2);
        Dim number = Dim.worked(Length.ofMillimetres(sag), "sag of a rail on two supports, Wood Handbook Eq. 9-1");
        return new Finding(
                        Finding.Severity.CAUTION,
                        part.path(),
                        "%s sags %s over %s under %s; %s allows %s."
                                .formatted(
                                        part.path(),
                                        say.near(sag),
                                        say.near(span),
                                        hangs(part) ? "clothes" : "its half of what lies on it",
                                        rule.name(),
                                        say.near(rule.allowed(span))),
                        List.of(number, part.length(), part.width()),
                        rule.source() + "; Wood Handbook Eq. 9-1; load: "
                                + (hangs(part) ? Figures.sourceOf("clothes on a rail") : "as for shelves"),
                        least.isPresent()
                                ? "Make it %s high, or hold it in the middle."
                                        .formatted(say.atLeast(least.getAsDouble()))
                                : "Hold it in the middle.")
                .by("sag");
    }
}
