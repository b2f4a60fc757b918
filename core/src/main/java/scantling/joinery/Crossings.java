package scantling.joinery;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Surface;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.space.Axis;
import scantling.space.Extent;

/**
 * Cuts of two joints in one part that break into each other or leave too little wood between them. What can move has kept
 * clear already; this looks at everything once more, most of all at what stands where it must. Channels that cross on one
 * side of a board, or at its edge, are meant to.
 */
final class Crossings {
    private static final double NOTHING = 1e-6;
    private static final Set<Feature.Kind> POCKETS =
            EnumSet.of(Feature.Kind.HOLE, Feature.Kind.SLOT, Feature.Kind.MORTISE, Feature.Kind.RECESS);
    private static final Set<Feature.Kind> CHANNELS =
            EnumSet.of(Feature.Kind.DADO, Feature.Kind.GROOVE, Feature.Kind.RABBET, Feature.Kind.NOTCH);

    private final Bench bench;
    private final double least;

    private Crossings(Bench bench) {
        this.bench = bench;
        least = Row.mm(bench.rules().length("clear of another"));
    }

    /** Two cuts and the wood between them; less than nothing where they overlap. */
    private record Pair(Bench.Taken one, Bench.Taken other, double wood) {}

    /** Tells the worst of every two joints in every part. */
    static void tell(List<Part> parts, Bench bench) {
        Crossings crossings = new Crossings(bench);
        parts.forEach(crossings::tell);
    }

    private void tell(Part part) {
        List<Bench.Taken> taken = bench.taken(part);
        Map<String, Pair> worst = new LinkedHashMap<>();
        for (int i = 0; i < taken.size(); i++) {
            for (int j = i + 1; j < taken.size(); j++) {
                Pair pair = pair(taken.get(i), taken.get(j));
                if (pair.wood() < least - NOTHING && mayNotMeet(pair)) {
                    worst.merge(
                            pair.one().joint() + "|" + pair.other().joint(),
                            pair,
                            (known, found) -> found.wood() < known.wood() ? found : known);
                }
            }
        }
        worst.values().forEach(pair -> bench.find(finding(part, pair)));
    }

    private static Pair pair(Bench.Taken one, Bench.Taken other) {
        if (one.feature().aim().isPresent() || other.feature().aim().isPresent()) {
            return new Pair(one, other, Slug.of(one.feature()).between(Slug.of(other.feature())));
        }
        double wood = Double.NEGATIVE_INFINITY;
        for (Axis axis : Axis.values()) {
            wood = Math.max(wood, between(one.extent(), other.extent(), axis));
        }
        return new Pair(one, other, wood);
    }

    private static double between(Extent one, Extent other, Axis axis) {
        return Math.max(Bench.low(one, axis) - Bench.high(other, axis), Bench.low(other, axis) - Bench.high(one, axis));
    }

    private static boolean mayNotMeet(Pair pair) {
        Feature one = pair.one().feature();
        Feature other = pair.other().feature();
        if (pair.one().joint().equals(pair.other().joint())) {
            return false;
        }
        boolean pocket = POCKETS.contains(one.kind()) || POCKETS.contains(other.kind());
        boolean taken = isTaken(one) && isTaken(other);
        boolean back = CHANNELS.contains(one.kind())
                && CHANNELS.contains(other.kind())
                && areOpposite(one.surface(), other.surface());
        return pocket && taken || back;
    }

    private static boolean isTaken(Feature feature) {
        return !feature.isLeft() && feature.kind() != Feature.Kind.MITRE;
    }

    private static boolean areOpposite(Surface one, Surface other) {
        return one != other && one.ordinal() / 2 == other.ordinal() / 2;
    }

    private Finding finding(Part part, Pair pair) {
        Feature one = pair.one().feature();
        Feature other = pair.other().feature();
        Dim wood = Dim.worked(Length.ofMillimetres(Math.abs(pair.wood())), "between the two cuts");
        boolean broken = pair.wood() < NOTHING;
        String how = broken ? "run into each other by %s" : "leave only %s of wood between them";
        return new Finding(
                broken ? Finding.Severity.STOP : Finding.Severity.CAUTION,
                pair.one().joint(),
                "The %s of %s and the %s of %s %s in %s."
                        .formatted(
                                one.kind().words(),
                                pair.one().joint(),
                                other.kind().words(),
                                pair.other().joint(),
                                how.formatted(bench.sayUnit(wood)),
                                part.path()),
                List.of(wood, bench.rules().length("clear of another"), one.depth(), other.depth()),
                "common practice: %s of wood between two cuts"
                        .formatted(bench.sayUnit(bench.rules().length("clear of another"))),
                remedy(part, pair));
    }

    private String remedy(Part part, Pair pair) {
        Feature one = pair.one().feature();
        Feature other = pair.other().feature();
        Dim more = Dim.worked(Length.ofMillimetres(least - pair.wood()), "what is missing between the two cuts");
        if (areOpposite(one.surface(), other.surface())) {
            return "Make the two %s shallower together, or %s thicker.".formatted(bench.sayUnit(more), part.path());
        }
        boolean mortises = one.kind() == Feature.Kind.MORTISE && other.kind() == Feature.Kind.MORTISE;
        String shorter = mortises
                ? "Shorten one tenon by %s, or mitre the ends of both where they meet inside %s"
                        .formatted(bench.sayUnit(more), part.path())
                : "Move one of them by %s, or make it so much shallower or shorter".formatted(bench.sayUnit(more));
        List<String> ways = new ArrayList<>(List.of(shorter, "make %s larger".formatted(part.path())));
        return String.join(", or ", ways) + ".";
    }
}
