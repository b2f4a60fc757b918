package scantling.joinery;

import java.util.Optional;
import scantling.construct.Finding;
import scantling.feature.Feature;
import scantling.measure.Dim;
import scantling.space.Box;

/** A loose tenon in a routed mortise of each part: a third of the stock thick, its ends round like the bit. */
final class LooseTenons implements JointMaker {
    @Override
    public void make(Meeting at, Bench bench) {
        JointRules rules = bench.rules();
        Dim third = rules.share("tenon thickness").of(at.thinSize());
        Optional<Dim> bit =
                Bits.nearest(bench, third, rules.share("thickest tenon").of(at.thinSize()));
        if (bit.isEmpty()) {
            tooThin(at, bench);
            return;
        }
        Dim thick = bit.get();
        Optional<Tenoning.Fit> fit = Tenoning.best(at, bench, thick);
        if (fit.isEmpty()) {
            InTheWay.tell(at, bench, thick, Tenoning.reach(at, bench).plus(rules.length("glue room")), true);
            return;
        }
        Dim reach = fit.get().reach();
        Dim deep = reach.plus(rules.length("glue room"));
        Dim from = at.start(at.run()).plus(fit.get().from());
        Dim to = at.start(at.run()).plus(fit.get().to());
        Box place =
                at.across(from, to, at.middle().minus(thick.half()), at.middle().plus(thick.half()));
        for (boolean receiving : new boolean[] {false, true}) {
            mortise(at, bench, receiving, place, thick, deep);
        }
        Dim width = to.minus(from);
        bench.hold(
                at,
                "loose tenon",
                "%s x %s x %s".formatted(bench.say(thick), bench.say(width), bench.sayUnit(reach.times(2))),
                1);
        bench.choose(
                at,
                rules.share("tenon thickness").source(),
                "loose tenon %s x %s x %s: a third of the %s of %s is %s, the nearest bit is %s; %s into each, and %s for glue.%s"
                        .formatted(
                                bench.say(thick),
                                bench.say(width),
                                bench.say(reach.times(2)),
                                bench.say(at.thinSize()),
                                at.entering().path(),
                                bench.say(third),
                                bench.say(thick),
                                bench.say(reach),
                                bench.sayUnit(rules.length("glue room")),
                                Strengths.tenon(at, thick, width, reach)),
                thick,
                width,
                reach.times(2));
    }

    private static void mortise(Meeting at, Bench bench, boolean receiving, Box place, Dim thick, Dim deep) {
        bench.cut(
                at,
                receiving,
                at.pocket(place, deep, receiving),
                new Bench.Cut(
                        "loose tenon",
                        Feature.Kind.MORTISE,
                        at.surface(receiving),
                        Optional.of(thick.half()),
                        Fences.across(
                                at,
                                bench,
                                receiving,
                                at.middle(),
                                deep,
                                "router",
                                "straight bit " + bench.say(thick),
                                Fences.passes(bench, deep))));
    }

    private static void tooThin(Meeting at, Bench bench) {
        Dim least = bench.rules().bits().get(0).diameter().times(2);
        bench.find(
                Finding.Severity.STOP,
                at,
                "%s are too thin for a loose tenon where they meet: %s, and the thinnest bit needs %s."
                        .formatted(Bench.both(at), bench.sayUnit(at.thinSize()), bench.sayUnit(least)),
                "common practice",
                "Make the stock at least %s thick, or glue the edge.".formatted(bench.sayUnit(least)),
                at.thinSize(),
                least);
    }
}
