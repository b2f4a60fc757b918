package scantling.joinery;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import scantling.construct.Finding;
import scantling.measure.Dim;
import scantling.space.Box;
import scantling.space.Extent;

/** What stands in the way of a tenon or a dowel, by the joints that cut it, and how short it would have to be to clear them. */
final class InTheWay {
    private InTheWay() {}

    /** The place of a pocket over the whole length of a joint. */
    static Box whole(Meeting at, Dim thick) {
        return at.across(
                at.start(at.run()),
                at.end(at.run()),
                at.middle().minus(thick.half()),
                at.middle().plus(thick.half()));
    }

    /** The joints whose cuts lie in a pocket as deep as wanted, in words; empty when nothing does. */
    static String names(Meeting at, Bench bench, Dim thick, Dim deepE, Dim deepR) {
        Box whole = whole(at, thick);
        return Stream.concat(
                        near(bench.taken(at.entering()), at.pocket(whole, deepE, false), bench),
                        near(bench.taken(at.receiving()), at.pocket(whole, deepR, true), bench))
                .distinct()
                .collect(Collectors.joining(" and "));
    }

    private static Stream<String> near(List<Bench.Taken> taken, Box pocket, Bench bench) {
        double clear = Row.mm(bench.rules().length("clear of another"));
        Extent extent = Extent.of(pocket);
        return taken.stream()
                .filter(each -> Bench.near(each.extent(), extent, clear - 1e-6))
                .map(each -> "the %s of %s".formatted(each.feature().kind().words(), each.joint()));
    }

    /** The longest tenon that finds its whole place free. @param alsoE whether it goes as deep into the entering part too */
    private static Optional<Dim> clearing(Meeting at, Bench bench, Dim thick, Dim deep, boolean alsoE) {
        Dim step = bench.rules().length("reach step");
        for (Dim each = deep.minus(step); each.compareTo(thick) > 0; each = each.minus(step)) {
            if (Tenoning.width(at, bench, thick, alsoE ? each : Dim.ZERO, each).isPresent()) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }

    /** Tells that no stretch is wide enough for a tenon, what cuts it up, and the longest tenon that would clear it. */
    static void tell(Meeting at, Bench bench, Dim thick, Dim deep, boolean loose) {
        String what = loose ? "loose tenon" : "tenon";
        Dim least = thick.times(2).plus(Tenoning.shoulder(at, bench, false)).plus(Tenoning.shoulder(at, bench, true));
        String others = names(at, bench, thick, loose ? deep : Dim.ZERO, deep);
        Dim glue = bench.rules().length("glue room");
        String shorter = clearing(at, bench, thick, deep, loose)
                .map(each -> each.minus(glue))
                .map(each ->
                        "Make the tenon %s long, which is the longest that clears it, or mitre the ends of both where they meet inside %s"
                                .formatted(bench.sayUnit(each), at.receiving().path()))
                .orElseGet(() -> "Make %s at least %s wide, or use dowels"
                        .formatted(at.entering().path(), bench.sayUnit(least)));
        bench.find(
                Finding.Severity.STOP,
                at,
                "No %s fits where %s meet: they meet over %s, and %s there is no stretch of %s."
                        .formatted(
                                what,
                                Bench.both(at),
                                bench.sayUnit(at.runSize()),
                                others.isEmpty() ? "between the shoulders" : "beside " + others,
                                bench.sayUnit(thick.times(2))),
                "common practice: %s of wood between two cuts"
                        .formatted(bench.sayUnit(bench.rules().length("clear of another"))),
                others.isEmpty()
                        ? "Make %s at least %s wide, or use dowels."
                                .formatted(at.entering().path(), bench.sayUnit(least))
                        : shorter + ".",
                at.runSize(),
                deep,
                least);
    }
}
