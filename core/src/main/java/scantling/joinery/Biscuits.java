package scantling.joinery;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import scantling.construct.Finding;
import scantling.feature.Feature;
import scantling.feature.Setting;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.space.Box;

/** Biscuits: the largest that suits the thickness and goes between the ends of the place. */
final class Biscuits implements JointMaker {
    @Override
    public void make(Meeting at, Bench bench) {
        Optional<JointRules.Biscuit> size = largest(at, bench);
        if (size.isEmpty()) {
            none(at, bench);
            return;
        }
        JointRules.Biscuit biscuit = size.get();
        List<Dim> places = places(at, bench, biscuit);
        if (places.isEmpty()) {
            none(at, bench);
            return;
        }
        for (int i = 0; i < places.size(); i++) {
            for (boolean receiving : new boolean[] {false, true}) {
                slot(at, bench, receiving, i + 1, places.get(i), biscuit);
            }
        }
        bench.hold(at, "biscuit", biscuit.name(), places.size());
        bench.choose(
                at,
                biscuit.source(),
                "%d %s %s: the largest for %s of thickness and %s of width, with %s of wood beyond each end of its slot.%s%s"
                        .formatted(
                                places.size(),
                                places.size() == 1 ? "biscuit" : "biscuits",
                                biscuit.name(),
                                bench.say(at.thinSize()),
                                bench.say(at.runSize()),
                                bench.sayUnit(bench.rules().length("biscuit from end")),
                                Strengths.UNKNOWN,
                                Proud.said(at, bench)),
                at.thinSize(),
                at.runSize(),
                biscuit.length());
    }

    /** The largest size that suits where two parts meet. */
    static Optional<JointRules.Biscuit> largest(Meeting at, Bench bench) {
        return bench.rules().biscuits().stream()
                .filter(each -> suits(at, bench, each))
                .max(Comparator.comparing(JointRules.Biscuit::length));
    }

    private static boolean suits(Meeting at, Bench bench, JointRules.Biscuit biscuit) {
        return biscuit.leastStock().compareTo(at.thinSize()) <= 0
                && needs(bench, biscuit).compareTo(at.runSize()) <= 0
                && isDeepEnough(at, bench, biscuit, true)
                && isDeepEnough(at, bench, biscuit, false);
    }

    private static boolean isDeepEnough(Meeting at, Bench bench, JointRules.Biscuit biscuit, boolean receiving) {
        Dim behind = bench.rules().length("least behind a hole");
        return biscuit.slot().plus(behind).compareTo(at.room(receiving)) <= 0;
    }

    /** The width a slot needs with wood at both ends. */
    static Dim needs(Bench bench, JointRules.Biscuit biscuit) {
        return biscuit.length().plus(bench.rules().length("biscuit from end").times(2));
    }

    private static List<Dim> places(Meeting at, Bench bench, JointRules.Biscuit biscuit) {
        JointRules rules = bench.rules();
        Dim half = biscuit.thickness().half();
        Box whole = at.across(
                at.start(at.run()),
                at.end(at.run()),
                at.middle().minus(half),
                at.middle().plus(half));
        Row row = Row.clearOf(
                at,
                bench,
                at.pocket(whole, biscuit.slot(), false),
                at.pocket(whole, biscuit.slot(), true),
                rules.length("clear of another"));
        double length = Row.mm(at.runSize());
        double least = Row.mm(needs(bench, biscuit)) / 2;
        double end = Math.max(least, Math.min(Row.mm(rules.length("biscuit first")), length / 2));
        double between = length - 2 * end;
        int count = between < Row.mm(biscuit.length())
                ? 1
                : 1 + (int) Math.ceil(between / Row.mm(rules.length("biscuit spacing")) - 1e-9);
        return row.spread(count, Row.mm(biscuit.length()), end, least);
    }

    private static void slot(
            Meeting at, Bench bench, boolean receiving, int number, Dim place, JointRules.Biscuit biscuit) {
        Dim middle = at.start(at.run()).plus(place);
        Dim half = biscuit.length().half();
        Dim thick = biscuit.thickness().half();
        Box slot = at.across(
                middle.minus(half),
                middle.plus(half),
                at.middle().minus(thick),
                at.middle().plus(thick));
        Setting setting = Fences.across(
                at,
                bench,
                receiving,
                at.middle(),
                biscuit.slot(),
                "biscuit joiner",
                "depth " + biscuit.name(),
                plunges(bench, biscuit));
        bench.cut(
                at,
                receiving,
                at.pocket(slot, biscuit.slot(), receiving),
                new Bench.Cut(
                        "biscuit " + number, Feature.Kind.SLOT, at.surface(receiving), Optional.empty(), setting));
    }

    /** One plunge of a round cutter makes a slot as long as its chord at that depth; a longer one takes two. */
    private static String plunges(Bench bench, JointRules.Biscuit biscuit) {
        double r = Row.mm(bench.rules().length("cutter diameter")) / 2;
        double deep = Row.mm(biscuit.slot());
        double chord = 2 * Math.sqrt(Math.max(0, r * r - (r - deep) * (r - deep)));
        double apart = Math.ceil(Row.mm(biscuit.length()) - chord);
        if (apart <= 0) {
            return "One plunge.";
        }
        Dim shift = Dim.worked(Length.ofMillimetres(apart), "length of the slot less one plunge");
        return "Two overlapping plunges, %s to either side of the middle.".formatted(bench.sayUnit(shift.half()));
    }

    private static void none(Meeting at, Bench bench) {
        JointRules.Biscuit smallest = bench.rules().biscuits().get(0);
        bench.find(
                Finding.Severity.STOP,
                at,
                "No biscuit suits where %s meet: the smallest, %s, is %s long and needs %s of width and %s of thickness; they meet over %s by %s."
                        .formatted(
                                Bench.both(at),
                                smallest.name(),
                                bench.say(smallest.length()),
                                bench.say(needs(bench, smallest)),
                                bench.say(smallest.leastStock()),
                                bench.say(at.runSize()),
                                bench.sayUnit(at.thinSize())),
                smallest.source(),
                "Use a loose tenon or dowels, or make %s wider."
                        .formatted(at.entering().path()),
                at.runSize(),
                at.thinSize(),
                needs(bench, smallest));
    }
}
