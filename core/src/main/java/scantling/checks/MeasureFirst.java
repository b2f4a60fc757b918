package scantling.checks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Opening;
import scantling.construct.Part;
import scantling.construct.Tolerances;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Sensitivity;
import scantling.space.Axis;
import scantling.space.Side;
import scantling.timber.Table;

/**
 * Which openings to measure before cutting what fills them: those where everything that bounds them, off at worst by
 * what its process allows, takes more than a small share of the gap that the plan leaves, so that it shows or binds.
 */
final class MeasureFirst {
    private static final int NAMED = 3;

    private static final double SHARE = Table.read("checks/fit-figures.csv").rows().stream()
            .filter(row -> row.text("name").equals("share of a gap"))
            .findFirst()
            .orElseThrow()
            .number("value");

    private final Assembly assembly;
    private final Words words;
    private final Map<String, Part> parts;
    private final Length measuring =
            Tolerances.standard().of("measured at the bench").halfRange();

    MeasureFirst(Assembly assembly) {
        this.assembly = assembly;
        this.words = Words.of(assembly);
        this.parts = assembly.parts().stream()
                .collect(Collectors.toMap(Part::path, Function.identity(), (first, second) -> first));
    }

    /** Those that buy most first. */
    List<MeasureBefore> due() {
        List<MeasureBefore> notes = new ArrayList<>();
        for (Opening opening : assembly.openings()) {
            List<Part> filling = opening.fills().stream()
                    .flatMap(path -> Optional.ofNullable(parts.get(path)).stream())
                    .toList();
            if (!filling.isEmpty()) {
                findNote(opening, filling, Axis.ACROSS, opening.width()).ifPresent(notes::add);
                findNote(opening, filling, Axis.DEEP, opening.depth()).ifPresent(notes::add);
                findNote(opening, filling, Axis.UP, opening.height()).ifPresent(notes::add);
            }
        }
        // measuring is as good for one as for another, so what may be off by most is what gains most
        notes.sort(Comparator.comparing(MeasureBefore::worst).reversed());
        return List.copyOf(notes);
    }

    private Optional<MeasureBefore> findNote(Opening opening, List<Part> filling, Axis axis, Dim size) {
        Length gap = size.value().minus(extent(filling, axis));
        Sensitivity.Spread spread = Sensitivity.tolerance(size);
        boolean safe = size.isMeasured()
                || gap.isNegative()
                || spread.worstCase().toMillimetres() <= SHARE * gap.toMillimetres()
                || filling.stream().allMatch(part -> isCut(part, axis));
        if (safe) {
            return Optional.empty();
        }
        List<String> reaching = reaching(filling, axis);
        return Optional.of(
                new MeasureBefore(size, gap, spread.worstCase(), reaching, note(opening, size, gap, spread, reaching)));
    }

    private static boolean isCut(Part part, Axis axis) {
        return along(part, axis).isMeasured();
    }

    private static Dim along(Part part, Axis axis) {
        if (part.lie().length() == axis) {
            return part.length();
        }
        return part.lie().width() == axis ? part.width() : part.thickness();
    }

    /** What fills it from one side to the other; where nothing does, what stands at either side. */
    private static List<String> reaching(List<Part> filling, Axis axis) {
        Length near = near(filling, axis);
        Length far = far(filling, axis);
        List<String> across = filling.stream()
                .filter(part -> isAt(part, Side.of(axis, false), near) && isAt(part, Side.of(axis, true), far))
                .map(Part::path)
                .toList();
        return across.isEmpty()
                ? filling.stream()
                        .filter(part -> isAt(part, Side.of(axis, false), near) || isAt(part, Side.of(axis, true), far))
                        .map(Part::path)
                        .toList()
                : across;
    }

    private static boolean isAt(Part part, Side side, Length plane) {
        return part.box().plane(side).value().equals(plane);
    }

    /** From the outermost plane of all that fills it to the other. */
    private static Length extent(List<Part> filling, Axis axis) {
        return far(filling, axis).minus(near(filling, axis));
    }

    private static Length near(List<Part> filling, Axis axis) {
        return planes(filling, Side.of(axis, false))
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }

    private static Length far(List<Part> filling, Axis axis) {
        return planes(filling, Side.of(axis, true))
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    private static Stream<Length> planes(List<Part> filling, Side side) {
        return filling.stream().map(part -> part.box().plane(side).value());
    }

    private Finding note(Opening opening, Dim size, Length gap, Sensitivity.Spread spread, List<String> reaching) {
        String name = size.findPath().orElse(opening.path());
        String sentence =
                "%s is %s by plan, with %s to spare for what fills it, but may be off by %s at worst (%s as errors usually add)%s."
                        .formatted(
                                name,
                                words.length(size.value()),
                                words.length(gap),
                                words.length(spread.worstCase()),
                                words.length(spread.rootSumSquare()),
                                mostly(size));
        return new Finding(
                        Finding.Severity.NOTE,
                        opening.path(),
                        sentence,
                        List.of(size),
                        "tolerances of the shop's processes",
                        "Measure it before cutting %s: that buys %s of certainty."
                                .formatted(
                                        named(reaching),
                                        words.length(spread.worstCase().minus(measuring))))
                .by(MeasureBefore.RULE);
    }

    /** By name, or the first and how many there are besides. */
    private static String named(List<String> reaching) {
        return reaching.size() <= NAMED
                ? String.join(", ", reaching)
                : "%s and %d more in it".formatted(reaching.get(0), reaching.size() - 1);
    }

    private static String mostly(Dim size) {
        return Sensitivity.toProcesses(size).effects().stream()
                .max(Comparator.comparingDouble(MeasureFirst::weight))
                .flatMap(effect -> effect.source().findPath())
                .map(path -> ", most of it from " + path)
                .orElse("");
    }

    private static double weight(Sensitivity.Effect effect) {
        return Math.abs(effect.effect())
                * effect.source().making().ownTolerance().halfRange().toMillimetres();
    }
}
