package scantling.joinery;

import java.util.List;
import java.util.Optional;
import scantling.measure.Dim;
import scantling.measure.Rounding;

/** Edging that is set proud of its core by a chosen amount, in steps of the joiner's fence, and planed flush when glued. */
final class Proud {
    private Proud() {}

    /** How much the entering part stands proud, to the fence's step; nothing where the joint says nothing. */
    static Dim of(Meeting at, Bench bench) {
        return Optional.ofNullable(at.joint().sizes().get("proud"))
                .map(said -> said.rounded(bench.rules().length("fence step").value(), Rounding.NEAREST))
                .orElse(Dim.ZERO);
    }

    /** What to do, on the part. @param height the fence reading on the core */
    static List<String> notes(Meeting at, Bench bench, boolean core, Dim height) {
        Dim proud = of(at, bench);
        if (!proud.value().isPositive()) {
            return List.of();
        }
        String first = bench.sayUnit(height);
        String second = bench.sayUnit(height.plus(proud));
        if (core) {
            return List.of("All slots in the core first, with the fence at %s; only then reset it to %s for the edging."
                    .formatted(first, second));
        }
        String wide = bench.sayUnit(at.thinSize().plus(proud));
        return List.of(
                "After all slots in the core: the fence goes from %s to %s. The edging stands %s proud; leave it at least %s wide, and plane off %s when the glue is hard."
                        .formatted(first, second, bench.sayUnit(proud), wide, bench.sayUnit(proud)));
    }

    /** The same for the choice. */
    static String said(Meeting at, Bench bench) {
        Dim proud = of(at, bench);
        return proud.value().isPositive()
                ? " %s stands %s proud of %s and is planed flush."
                        .formatted(
                                at.entering().path(),
                                bench.sayUnit(proud),
                                at.receiving().path())
                : "";
    }
}
