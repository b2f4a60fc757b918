package scantling.joinery;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import scantling.construct.Finding;
import scantling.feature.Aim;
import scantling.feature.Feature;
import scantling.feature.Surface;
import scantling.measure.Dim;
import scantling.space.Point;

/**
 * Loose tenons and dowels between the slanted end of a straight part and a leaning one: square to the leaning face, so that
 * jig or machine lies flat on the slanted end.
 */
final class LeaningPins {
    private final Bench bench;
    private final Leaning at;
    private final Meeting meeting;

    LeaningPins(Bench bench, Leaning at) {
        this.bench = bench;
        this.at = at;
        this.meeting = at.at();
    }

    void looseTenon() {
        JointRules rules = bench.rules();
        Dim third = rules.share("tenon thickness").of(meeting.thinSize());
        Optional<Dim> bit =
                Bits.nearest(bench, third, rules.share("thickest tenon").of(meeting.thinSize()));
        Dim from = Tenoning.shoulder(meeting, bench, false);
        Dim wide = meeting.runSize().minus(from).minus(Tenoning.shoulder(meeting, bench, true));
        if (bit.isEmpty() || wide.compareTo(bit.get().times(2)) < 0) {
            Tenons.tooThin(meeting, bench, "loose tenon");
            return;
        }
        Dim thick = bit.get();
        Optional<Dim> reach = reach(Tenoning.reach(meeting, bench), thick, from);
        if (reach.isEmpty()) {
            comesOut(thick);
            return;
        }
        Dim deep = reach.get().plus(rules.length("glue room"));
        pair("loose tenon", Feature.Kind.MORTISE, from.plus(wide.half()), deep, deep, wide, thick, "router");
        bench.hold(
                meeting,
                "loose tenon",
                "%s x %s x %s"
                        .formatted(
                                bench.say(thick),
                                bench.say(wide),
                                bench.sayUnit(reach.get().times(2))),
                1);
        explain(
                "loose tenon %s x %s x %s, a third of %s thick as the nearest bit cuts it"
                        .formatted(
                                bench.say(thick),
                                bench.say(wide),
                                bench.say(reach.get().times(2)),
                                bench.say(meeting.thinSize())),
                Strengths.tenon(meeting, thick, wide, reach.get()),
                thick,
                wide,
                reach.get());
    }

    void dowels() {
        JointRules rules = bench.rules();
        List<JointRules.Dowel> suit = Dowels.dowels(meeting, bench);
        if (suit.isEmpty()) {
            Dowels.tooThin(meeting, bench);
            return;
        }
        Dowels.Boring boring = Dowels.boring(meeting, bench, suit.get(0));
        Dim d = boring.dowel().diameter();
        List<Dim> places = Dowels.evenly(meeting, bench, boring);
        Optional<Dim> reach = places.isEmpty()
                ? Optional.empty()
                : reach(boring.inE(), d, places.get(0).minus(d.half()));
        if (reach.isEmpty()) {
            comesOut(d);
            return;
        }
        Dim glue = rules.length("glue room");
        for (int i = 0; i < places.size(); i++) {
            pair(
                    "dowel " + (i + 1),
                    Feature.Kind.HOLE,
                    places.get(i),
                    reach.get().plus(glue),
                    boring.inR().plus(glue),
                    d,
                    d,
                    "doweling jig or drill press");
        }
        Dim length = reach.get().plus(boring.inR());
        bench.hold(meeting, "dowel", "%s x %s".formatted(bench.say(d), bench.sayUnit(length)), places.size());
        explain(
                "%d dowels %s x %s".formatted(places.size(), bench.say(d), bench.say(length)),
                Strengths.UNKNOWN,
                d,
                length);
    }

    /** How far in it may go before the slanting hole comes too near to a side or an edge of the straight part. */
    private Optional<Dim> reach(Dim wanted, Dim thick, Dim beside) {
        Aim.Way way = new Frame(meeting.entering()).way(at.inward().times(-1)).unit();
        double least = Row.mm(bench.rules().length("least behind a hole"));
        double cheek = (Row.mm(meeting.thinSize()) - Row.mm(thick)) / 2;
        double glue = Row.mm(bench.rules().length("glue room"));
        Dim step = bench.rules().length("reach step");
        for (Dim each = wanted; each.compareTo(thick) >= 0; each = each.minus(step)) {
            double deep = Row.mm(each) + glue;
            if (cheek - deep * Math.abs(way.through()) >= least
                    && Row.mm(beside) - deep * Math.abs(way.across()) >= least) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }

    private void pair(
            String what, Feature.Kind kind, Dim offset, Dim deepE, Dim deepR, Dim length, Dim width, String machine) {
        Point mouth = at.met(at.wide(offset), at.middle());
        String tool = (kind == Feature.Kind.HOLE ? "brad-point " : "straight bit ") + bench.say(width);
        for (boolean receiving : new boolean[] {false, true}) {
            Point way = receiving ? at.inward() : at.inward().times(-1);
            Surface surface = receiving ? at.surface() : at.endSurface();
            Aim aim = new Frame(meeting.part(receiving))
                    .aim(mouth, way, at.overWidth(), receiving ? deepR : deepE, length, width);
            List<String> notes = new ArrayList<>();
            if (kind == Feature.Kind.MORTISE) {
                notes.add(Fences.passes(bench, aim.depth()));
            }
            if (!receiving) {
                notes.add("Square to the slanted end: the jig lies flat on it.");
            }
            bench.aimed(
                    meeting,
                    receiving,
                    aim,
                    new Bench.Cut(
                            what,
                            kind,
                            surface,
                            Optional.of(width.half()),
                            LeaningJoints.setting(machine, tool, aim, surface, notes)));
        }
    }

    private void explain(String what, String strength, Dim... numbers) {
        bench.choose(
                meeting,
                "common practice: square to the leaning face",
                "%s, square to the face of %s and so to the slanted end of %s, which is sawn %s.%s"
                        .formatted(
                                what,
                                meeting.receiving().path(),
                                meeting.entering().path(),
                                LeaningJoints.said(at.angles()),
                                strength),
                numbers);
    }

    private void comesOut(Dim thick) {
        Dim least = thick.times(3);
        bench.find(
                Finding.Severity.STOP,
                meeting,
                "A %s of %s square to %s would come out of %s, which is %s thick and meets it slanting."
                        .formatted(
                                meeting.joint().kind().words(),
                                bench.sayUnit(thick),
                                meeting.receiving().path(),
                                meeting.entering().path(),
                                bench.sayUnit(meeting.thinSize())),
                "common practice: 3 mm (1/8 in) of wood behind a hole",
                "Say joint: mortise and tenon, or make %s %s thick."
                        .formatted(meeting.entering().path(), bench.sayUnit(least)),
                meeting.thinSize(),
                thick,
                least);
    }
}
