package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import scantling.construct.Assembly;
import scantling.construct.Changes;
import scantling.construct.Finding;
import scantling.construct.Opening;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.space.Axis;
import scantling.space.Box;

/** Inset drawer fronts and doors of solid wood whose gap the damp month closes. */
final class OpeningFaces {
    private final Assembly assembly;
    private final Movements movements;
    private final Say say;

    OpeningFaces(Assembly assembly, Movements movements) {
        this.assembly = assembly;
        this.movements = movements;
        this.say = Say.of(assembly);
    }

    List<Finding> check() {
        List<Finding> findings = new ArrayList<>();
        Set<String> told = new HashSet<>();
        for (Opening opening : assembly.openings()) {
            List<Moving> faces = faces(opening);
            if (!faces.isEmpty()) {
                judge(opening, faces)
                        .filter(finding -> told.add(Parts.likeness(faces.get(0).part())))
                        .ifPresent(findings::add);
            }
        }
        return findings;
    }

    private List<Moving> faces(Opening opening) {
        return opening.fills().stream()
                .flatMap(path -> Parts.find(assembly, path).stream())
                .filter(Parts::isFace)
                .flatMap(part -> movements.find(part).stream())
                .toList();
    }

    private Optional<Finding> judge(Opening opening, List<Moving> faces) {
        Part first = faces.get(0).part();
        Axis across = first.lie().width();
        Dim gap = opening.box().extent(across);
        Dim growth = Dim.ZERO;
        for (Moving face : faces) {
            gap = gap.minus(face.part().box().extent(across));
            growth = growth.plus(face.growth());
        }
        boolean inset = !gap.value().isNegative()
                && fits(first.box(), opening.box(), first.lie().length());
        return inset && growth.compareTo(gap) >= 0 ? Optional.of(finding(faces.get(0), gap, growth)) : Optional.empty();
    }

    private static boolean fits(Box face, Box opening, Axis axis) {
        return face.extent(axis).compareTo(opening.extent(axis)) <= 0;
    }

    private Finding finding(Moving face, Dim gap, Dim growth) {
        return new Finding(
                        Finding.Severity.CAUTION,
                        face.part().path(),
                        "%s grows %s in the damp month; its gaps are %s together, so it will bind."
                                .formatted(face.part().path(), say.near(growth.value()), say.near(gap.value())),
                        List.of(growth, gap),
                        MovementCheck.source(face, movements),
                        "Leave %s more, or make it of quartersawn or veneered stock."
                                .formatted(say.atLeast(Parts.mm(growth.minus(gap)) + 1)))
                .by("gap")
                .offering(Changes.shift(
                                gap,
                                "gap",
                                growth.minus(gap)
                                        .value()
                                        .roundedUpTo(Length.mm("0.5"))
                                        .plus(Length.mm("0.5")),
                                assembly.piece())
                        .stream()
                        .toList());
    }
}
