package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Part;

/** Solid tops: how long the slots must be that hold them down, or that pin their breadboard ends. */
final class FreeTops {
    private final Assembly assembly;
    private final Movements movements;
    private final Say say;

    FreeTops(Assembly assembly, Movements movements) {
        this.assembly = assembly;
        this.movements = movements;
        this.say = Say.of(assembly);
    }

    List<Finding> check() {
        List<Finding> findings = new ArrayList<>();
        Set<String> told = new HashSet<>();
        for (Part part : assembly.parts()) {
            boolean wide = part.width().value().compareTo(Figures.lengthOf("slotted top from")) > 0;
            if (wide && Parts.isTop(part) && !part.box().isEmpty() && told.add(Parts.likeness(part))) {
                movements.find(part).ifPresent(moving -> findings.addAll(judge(moving)));
            }
        }
        return findings;
    }

    private List<Finding> judge(Moving moving) {
        List<Finding> findings = new ArrayList<>();
        Part top = moving.part();
        Set<String> joined = Parts.joinedTo(assembly, top);
        if (assembly.parts().stream().anyMatch(part -> Parts.isBreadboard(part) && joined.contains(part.path()))) {
            findings.add(finding(
                    moving, "breadboard pin", "Pin each end at its middle with glue there only; slot the outer pins"));
        }
        if (new Supports(assembly, top).carriers().stream().anyMatch(carrier -> holdsStill(carrier, top))) {
            findings.add(finding(
                    moving,
                    "screw",
                    "Fasten it with buttons or slotted holes: fixed at the middle, at the edges slots"));
        }
        return findings;
    }

    private static boolean holdsStill(Part carrier, Part top) {
        return !Parts.isSolid(carrier) || carrier.lie().length() == top.lie().width();
    }

    // Held at the middle, each edge makes half of the year's change.
    private Finding finding(Moving moving, String pin, String how) {
        double slot = Figures.of(pin) + Parts.mm(moving.range()) / 2;
        return new Finding(
                        Finding.Severity.NOTE,
                        moving.part().path(),
                        "%s moves %s across the grain through the year."
                                .formatted(
                                        moving.part().path(),
                                        say.near(moving.range().value())),
                        List.of(moving.range(), moving.part().width()),
                        MovementCheck.source(moving, movements),
                        "%s %s long (for %s).".formatted(how, say.atLeast(slot), say.near(Figures.of(pin))))
                .by(pin + " slots");
    }
}
