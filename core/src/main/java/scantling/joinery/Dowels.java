package scantling.joinery;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import scantling.construct.Finding;
import scantling.feature.Feature;
import scantling.measure.Dim;
import scantling.measure.Rounding;
import scantling.space.Box;

/** Dowels in a row: between a third and half of the thinner part, about three diameters into each. */
final class Dowels implements JointMaker {
    /** What is bored. @param inE how deep the dowel sits in the entering part, without room for glue @param inR in the other */
    record Boring(JointRules.Dowel dowel, Dim length, Dim inE, Dim inR) {}

    @Override
    public void make(Meeting at, Bench bench) {
        List<JointRules.Dowel> dowels = dowels(at, bench);
        if (dowels.isEmpty()) {
            tooThin(at, bench);
            return;
        }
        Boring boring = boring(at, bench, dowels.get(0));
        List<Dim> places = places(at, bench, boring);
        for (JointRules.Dowel thinner : dowels.subList(1, dowels.size())) {
            Boring other = boring(at, bench, thinner);
            List<Dim> more = places.size() < 2 ? places(at, bench, other) : List.of();
            if (more.size() > places.size()) {
                boring = other;
                places = more;
            }
        }
        if (places.isEmpty()) {
            noRoom(at, bench, boring);
            return;
        }
        for (int i = 0; i < places.size(); i++) {
            for (boolean receiving : new boolean[] {false, true}) {
                hole(at, bench, receiving, i + 1, places.get(i), boring);
            }
        }
        Dim used = boring.dowel().diameter();
        Optional.ofNullable(at.joint().sizes().get("diameter"))
                .ifPresent(said -> Weakness.dowel(at, bench, said, used));
        explain(at, bench, boring, places.size());
    }

    /** The one that suits best and, if not two of it find room, what is next thinner. */
    static List<JointRules.Dowel> dowels(Meeting at, Bench bench) {
        JointRules rules = bench.rules();
        Dim thin = at.thinSize();
        List<JointRules.Dowel> all = rules.dowels();
        Optional<Dim> said = Optional.ofNullable(at.joint().sizes().get("diameter"));
        Dim best = said.orElseGet(() -> rules.share("best dowel").of(thin));
        Optional<JointRules.Dowel> first = all.stream()
                .filter(each ->
                        each.diameter().compareTo(rules.share("thickest dowel").of(thin)) <= 0)
                .min(Comparator.comparing(
                        each -> each.diameter().minus(best).value().abs()));
        List<JointRules.Dowel> suit = new ArrayList<>();
        first.ifPresent(suit::add);
        first.flatMap(chosen -> all.stream()
                        .filter(each -> each.diameter().compareTo(chosen.diameter()) < 0)
                        .max(Comparator.comparing(JointRules.Dowel::diameter)))
                .ifPresent(suit::add);
        return suit;
    }

    static Boring boring(Meeting at, Bench bench, JointRules.Dowel dowel) {
        Dim usual = dowel.diameter().times(bench.rules().share("dowel in each").numerator());
        Dim most = at.joint().sizes().getOrDefault("length", usual);
        Dim inR = smaller(most, roomFor(at, bench, true));
        Dim inE = smaller(largerOf(most, usual), roomFor(at, bench, false));
        Dim total = inR.plus(inE);
        List<Dim> lengths = dowel.lengths();
        Dim length = lengths.stream()
                .filter(each -> each.compareTo(total) <= 0)
                .max(Comparator.naturalOrder())
                .orElse(total.rounded(bench.rules().length("round").value(), Rounding.DOWN));
        Dim half = length.half();
        Dim seat = half.compareTo(inR) <= 0 ? half : inR;
        Dim rest = length.minus(seat);
        return rest.compareTo(inE) <= 0
                ? new Boring(dowel, length, rest, seat)
                : new Boring(dowel, length, inE, length.minus(inE));
    }

    private static Dim roomFor(Meeting at, Bench bench, boolean receiving) {
        Dim room = at.room(receiving);
        return room.minus(bench.rules().behind(room))
                .minus(bench.rules().length("glue room"))
                .rounded(bench.rules().length("round").value(), Rounding.DOWN);
    }

    private static Dim smaller(Dim a, Dim b) {
        return a.compareTo(b) <= 0 ? a : b;
    }

    private static Dim largerOf(Dim a, Dim b) {
        return a.compareTo(b) >= 0 ? a : b;
    }

    /** Middles of dowels as offsets, evenly spread where nothing else is cut; none where not one finds room. */
    static List<Dim> evenly(Meeting at, Bench bench, Boring boring) {
        return spread(at, bench, boring, Row.free(at, bench));
    }

    private static List<Dim> places(Meeting at, Bench bench, Boring boring) {
        JointRules rules = bench.rules();
        Dim d = boring.dowel().diameter();
        Dim glue = rules.length("glue room");
        Box whole = InTheWay.whole(at, d);
        Row row = Row.clearOf(
                at,
                bench,
                at.pocket(whole, boring.inE().plus(glue), false),
                at.pocket(whole, boring.inR().plus(glue), true),
                rules.length("clear of another"));
        return spread(at, bench, boring, row);
    }

    private static List<Dim> spread(Meeting at, Bench bench, Boring boring, Row row) {
        JointRules rules = bench.rules();
        Dim d = boring.dowel().diameter();
        double length = Row.mm(at.runSize());
        double least = Row.mm(rules.share("dowel from end").of(d));
        double end = Math.max(least, Math.min(Row.mm(rules.length("dowel first")), length / 4));
        boolean edge = at.entering().lie().length() == at.run();
        double spacing = edge
                ? Row.mm(rules.length("edge dowel spacing"))
                : Row.mm(d) * rules.share("dowel spacing").numerator();
        double between = length - 2 * end;
        int count = between < 2 * Row.mm(d) ? 1 : 1 + Math.max(1, (int) Math.ceil(between / spacing - 1e-9));
        return length < 2 * least - 1e-6 ? List.of() : row.spread(count, Row.mm(d), end, least);
    }

    private static void hole(Meeting at, Bench bench, boolean receiving, int number, Dim place, Boring boring) {
        Dim d = boring.dowel().diameter();
        Dim middle = at.start(at.run()).plus(place);
        Dim deep = (receiving ? boring.inR() : boring.inE()).plus(bench.rules().length("glue room"));
        Box round = at.across(
                middle.minus(d.half()),
                middle.plus(d.half()),
                at.middle().minus(d.half()),
                at.middle().plus(d.half()));
        bench.cut(
                at,
                receiving,
                at.pocket(round, deep, receiving),
                new Bench.Cut(
                        "dowel " + number,
                        Feature.Kind.HOLE,
                        at.surface(receiving),
                        Optional.of(d.half()),
                        Fences.across(
                                at,
                                bench,
                                receiving,
                                at.middle(),
                                deep,
                                "doweling jig or drill press",
                                "brad-point " + bench.say(d))));
    }

    private static void explain(Meeting at, Bench bench, Boring boring, int count) {
        JointRules rules = bench.rules();
        Dim d = boring.dowel().diameter();
        bench.hold(at, "dowel", "%s x %s".formatted(bench.say(d), bench.sayUnit(boring.length())), count);
        bench.choose(
                at,
                rules.share("best dowel").source(),
                "%d %s %s x %s: %s thick, %s; %s into %s and %s into %s, each hole %s deeper.%s"
                        .formatted(
                                count,
                                count == 1 ? "dowel" : "dowels",
                                bench.say(d),
                                bench.say(boring.length()),
                                bench.say(at.thinSize()),
                                d.compareTo(rules.share("thinnest dowel").of(at.thinSize())) < 0
                                        ? "thinner than a third of it so that two find room"
                                        : "from a third to half of it",
                                bench.say(boring.inE()),
                                at.entering().path(),
                                bench.say(boring.inR()),
                                at.receiving().path(),
                                bench.sayUnit(rules.length("glue room")),
                                Strengths.UNKNOWN),
                d,
                boring.length(),
                at.thinSize());
        if (count == 1) {
            bench.find(
                    Finding.Severity.CAUTION,
                    at,
                    "Only one dowel fits where %s meet over %s: nothing keeps them from turning."
                            .formatted(Bench.both(at), bench.sayUnit(at.runSize())),
                    "common practice: at least two dowels a joint",
                    "Make %s wider, or use a loose tenon."
                            .formatted(at.entering().path()),
                    at.runSize(),
                    d);
        }
    }

    static void tooThin(Meeting at, Bench bench) {
        Dim thinnest = bench.rules().dowels().get(0).diameter();
        bench.find(
                Finding.Severity.STOP,
                at,
                "%s are too thin for dowels where they meet: %s, and a dowel of %s needs %s."
                        .formatted(
                                Bench.both(at),
                                bench.sayUnit(at.thinSize()),
                                bench.sayUnit(thinnest),
                                bench.sayUnit(thinnest.times(2))),
                "dowel guide page: at most half of the thinner member",
                "Make the stock at least %s thick, or glue the edge.".formatted(bench.sayUnit(thinnest.times(2))),
                at.thinSize(),
                thinnest);
    }

    private static void noRoom(Meeting at, Bench bench, Boring boring) {
        Dim d = boring.dowel().diameter();
        Dim glue = bench.rules().length("glue room");
        String others = InTheWay.names(
                at, bench, d, boring.inE().plus(glue), boring.inR().plus(glue));
        Dim least = bench.rules().share("dowel from end").of(d).times(2);
        bench.find(
                Finding.Severity.STOP,
                at,
                "No dowel of %s fits where %s meet over %s, clear by %s of %s."
                        .formatted(
                                bench.sayUnit(d),
                                Bench.both(at),
                                bench.sayUnit(at.runSize()),
                                bench.sayUnit(bench.rules().length("clear of another")),
                                others.isEmpty() ? "its edges" : others),
                "common practice",
                "Make %s at least %s wide%s."
                        .formatted(
                                at.entering().path(),
                                bench.sayUnit(least),
                                others.isEmpty() ? ", or glue it" : ", or move %s".formatted(others)),
                at.runSize(),
                d,
                least);
    }
}
