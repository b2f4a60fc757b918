package scantling.checks.lasting;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import scantling.construct.Assembly;
import scantling.construct.Changes;
import scantling.construct.Finding;
import scantling.construct.Opening;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Ledger;
import scantling.measure.Length;
import scantling.space.Axis;

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

    /**
     * What fills one opening from side to side of its grain.
     *
     * @param path of the first
     * @param moves all that moves across the gap: fronts, leaves, the stiles of framed doors
     * @param gap all gaps together, as made
     */
    record Inset(String path, List<Moving> moves, Dim gap) {
        Part first() {
            return moves.get(0).part();
        }

        Dim growth() {
            return moves.stream().map(Moving::growth).reduce(Dim.ZERO, Dim::plus);
        }

        /** The gaps together in each month, January first. */
        List<Dim> gaps(Movements movements, Climate climate) {
            List<Dim> gaps = new ArrayList<>();
            for (int month = 0; month < climate.months().size(); month++) {
                Dim left = gap;
                for (Moving face : moves) {
                    left = left.minus(movements.monthly(face.part(), climate).get(month));
                }
                gaps.add(left);
            }
            return gaps;
        }
    }

    /** One leaf or front in an opening. @param reach of it across the gap @param stands along the gap it leaves */
    private record Leaf(String path, Axis across, Dim reach, Dim stands, List<Moving> moves) {}

    List<Inset> insets() {
        return assembly.openings().stream()
                .flatMap(opening -> inset(opening, leaves(opening)).stream())
                .toList();
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

    private List<Leaf> leaves(Opening opening) {
        List<Part> fills = opening.fills().stream()
                .flatMap(path -> Parts.find(assembly, path).stream())
                .filter(part -> !part.box().isEmpty())
                .toList();
        Stream<Leaf> plain = fills.stream()
                .filter(Parts::isFace)
                .flatMap(part -> movements.find(part).stream())
                .map(OpeningFaces::plain);
        Map<String, List<Moving>> framed = new LinkedHashMap<>();
        fills.stream()
                .filter(part ->
                        part.lie().length() == Axis.UP && Parts.role(part).endsWith("stile"))
                .flatMap(part -> movements.find(part).stream())
                .forEach(stile -> framed.computeIfAbsent(parent(stile.part()), key -> new ArrayList<>())
                        .add(stile));
        return Stream.concat(plain, framed.entrySet().stream().map(each -> framed(each.getKey(), each.getValue())))
                .toList();
    }

    private static String parent(Part part) {
        List<String> names = Ledger.names(part.path());
        return String.join(Ledger.SEPARATOR, names.subList(0, names.size() - 1));
    }

    private static Leaf plain(Moving face) {
        Part part = face.part();
        Axis across = part.lie().width();
        return new Leaf(
                part.path(),
                across,
                part.box().extent(across),
                part.box().extent(part.lie().length()),
                List.of(face));
    }

    /** Rails do not move along their grain, so a framed leaf grows by its stiles alone. */
    private static Leaf framed(String path, List<Moving> stiles) {
        Dim left = stiles.stream()
                .map(stile -> stile.part().box().left())
                .reduce(Dim::smallerOf)
                .orElseThrow();
        Dim right = stiles.stream()
                .map(stile -> stile.part().box().right())
                .reduce(Dim::largerOf)
                .orElseThrow();
        return new Leaf(
                path, Axis.ACROSS, right.minus(left), stiles.get(0).part().box().extent(Axis.UP), stiles);
    }

    private static Optional<Inset> inset(Opening opening, List<Leaf> leaves) {
        if (leaves.isEmpty()) {
            return Optional.empty();
        }
        Leaf first = leaves.get(0);
        Dim gap = opening.box().extent(first.across());
        for (Leaf leaf : leaves) {
            gap = gap.minus(leaf.reach());
        }
        Axis along = first.moves().get(0).part().lie().length();
        boolean inside = !gap.value().isNegative()
                && first.stands().compareTo(opening.box().extent(along)) <= 0;
        List<Moving> moves =
                leaves.stream().flatMap(leaf -> leaf.moves().stream()).toList();
        return inside ? Optional.of(new Inset(first.path(), moves, gap)) : Optional.empty();
    }

    private Finding finding(Inset inset) {
        Dim lack = inset.growth().minus(inset.gap());
        Length more = lack.value().roundedUpTo(STEP).plus(STEP).plus(STEP);
        String path = inset.path();
        return new Finding(
                        Finding.Severity.CAUTION,
                        inset.first().path(),
                        "%s grows %s by %s; its gaps are %s together, so it will bind."
                                .formatted(
                                        path,
                                        say.near(inset.growth().value()),
                                        dampest(),
                                        say.near(inset.gap().value())),
                        List.of(inset.growth(), inset.gap()),
                        MovementCheck.source(inset.moves().get(0), movements),
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
