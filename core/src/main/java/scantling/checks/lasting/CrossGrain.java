package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Contact;

/** Solid wood glued along to solid wood across over more than it bears. */
final class CrossGrain {
    private final Assembly assembly;
    private final Movements movements;
    private final Say say;

    CrossGrain(Assembly assembly, Movements movements) {
        this.assembly = assembly;
        this.movements = movements;
        this.say = Say.of(assembly);
    }

    List<Finding> check() {
        List<Finding> findings = new ArrayList<>();
        Set<String> told = new HashSet<>();
        for (Joint joint : assembly.joints()) {
            Optional<Part> one = Parts.find(assembly, joint.entering());
            Optional<Part> other = Parts.find(assembly, joint.receiving());
            if (joint.kind() == Joint.Kind.GLUED && one.isPresent() && other.isPresent()) {
                judge(joint, one.get(), other.get())
                        .filter(finding -> told.add(Parts.likeness(one.get()) + Parts.likeness(other.get())))
                        .ifPresent(findings::add);
            }
        }
        return findings;
    }

    private Optional<Finding> judge(Joint joint, Part one, Part other) {
        Optional<Box> patch =
                joint.overlap().or(() -> Contact.between(one.box(), other.box()).map(Contact::patch));
        return patch.flatMap(glued -> judge(glued, one, other).or(() -> judge(glued, other, one)));
    }

    /** Whether the first moves across its grain where the second does not move at all. */
    private Optional<Finding> judge(Box glued, Part moves, Part holds) {
        Axis across = moves.lie().width();
        Dim length = glued.extent(across);
        boolean crossed =
                Parts.isSolid(moves) && Parts.isSolid(holds) && holds.lie().length() == across;
        return crossed && length.value().compareTo(Figures.lengthOf("cross grain glue limit")) > 0
                ? Optional.of(finding(moves, holds, length))
                : Optional.empty();
    }

    private Finding finding(Part moves, Part holds, Dim length) {
        String much = movements
                .find(moves)
                .map(moving -> ", which moves %s through the year"
                        .formatted(say.near(moving.range().value())))
                .orElse("");
        return new Finding(
                        Finding.Severity.STOP,
                        moves.path(),
                        "%s is glued across the grain of %s over %s%s: it will crack or come loose."
                                .formatted(holds.path(), moves.path(), say.near(length.value()), much),
                        List.of(length),
                        "%s: no cross-grain glue over %s"
                                .formatted(
                                        Figures.sourceOf("cross grain glue limit"),
                                        say.near(Figures.of("cross grain glue limit"))),
                        "Glue only the middle and let the rest slide (slots, a sliding dovetail), or use sheet stock.")
                .by("cross grain");
    }
}
