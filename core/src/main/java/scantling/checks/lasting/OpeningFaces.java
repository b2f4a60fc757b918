package scantling.checks.lasting;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
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
    private static final Length STEP = Length.mm("0.5");

    private final Assembly assembly;
    private final Movements movements;
    private final Say say;

    OpeningFaces(Assembly assembly, Movements movements) {
        this.assembly = assembly;
        this.movements = movements;
        this.say = Say.of(assembly);
    }

    /** Faces that lie inside one opening. @param gap all gaps across their grain together, as made */
    record Inset(List<Moving> faces, Dim gap) {
        Part first() {
            return faces.get(0).part();
        }

        Dim growth() {
            return faces.stream().map(Moving::growth).reduce(Dim.ZERO, Dim::plus);
        }

        /** The gaps together in each month, January first. */
        List<Dim> gaps(Movements movements, Climate climate) {
            List<Dim> gaps = new ArrayList<>();
            for (int month = 0; month < climate.months().size(); month++) {
                Dim left = gap;
                for (Moving face : faces) {
                    left = left.minus(movements.monthly(face.part(), climate).get(month));
                }
                gaps.add(left);
            }
            return gaps;
        }
    }

    List<Inset> insets() {
        List<Inset> insets = new ArrayList<>();
        for (Opening opening : assembly.openings()) {
            List<Moving> faces = faces(opening);
            if (!faces.isEmpty()) {
                inset(opening, faces).ifPresent(insets::add);
            }
        }
        return insets;
    }

    List<Finding> check() {
        List<Finding> findings = new ArrayList<>();
        Set<String> told = new HashSet<>();
        for (Inset inset : insets()) {
            if (inset.growth().compareTo(inset.gap()) >= 0 && told.add(Parts.likeness(inset.first()))) {
                findings.add(finding(inset));
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

    private static Optional<Inset> inset(Opening opening, List<Moving> faces) {
        Part first = faces.get(0).part();
        Axis across = first.lie().width();
        Dim gap = opening.box().extent(across);
        for (Moving face : faces) {
            gap = gap.minus(face.part().box().extent(across));
        }
        boolean inside = !gap.value().isNegative()
                && fits(first.box(), opening.box(), first.lie().length());
        return inside ? Optional.of(new Inset(faces, gap)) : Optional.empty();
    }

    private static boolean fits(Box face, Box opening, Axis axis) {
        return face.extent(axis).compareTo(opening.extent(axis)) <= 0;
    }

    private Finding finding(Inset inset) {
        Dim lack = inset.growth().minus(inset.gap());
        Length more = lack.value().roundedUpTo(STEP).plus(STEP).plus(STEP);
        String path = inset.first().path();
        return new Finding(
                        Finding.Severity.CAUTION,
                        path,
                        "%s grows %s by %s; its gaps are %s together, so it will bind."
                                .formatted(
                                        path,
                                        say.near(inset.growth().value()),
                                        dampest(),
                                        say.near(inset.gap().value())),
                        List.of(inset.growth(), inset.gap()),
                        MovementCheck.source(inset.faces().get(0), movements),
                        "Leave %s more, or make it of quartersawn or veneered stock."
                                .formatted(say.atLeast(Parts.mm(lack) + 1)))
                .by("gap")
                .offering(Changes.shift(inset.gap(), "gap", more, assembly.piece()).stream()
                        .toList());
    }

    /** The name of the dampest month. */
    private String dampest() {
        List<Double> year = LastingChecks.climate(assembly).moisture().stream()
                .map(each -> each.find().orElse(0))
                .toList();
        int most = 0;
        for (int month = 1; month < year.size(); month++) {
            most = year.get(month) > year.get(most) ? month : most;
        }
        return year.size() == Month.values().length
                ? Month.of(most + 1).getDisplayName(TextStyle.FULL, Locale.ENGLISH)
                : "the damp month";
    }
}
