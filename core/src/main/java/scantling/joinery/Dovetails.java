package scantling.joinery;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Setting;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Making;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/**
 * Dovetails of a corner: tails on the receiving part, pins on the entering one, half a pin at either end. Each tail and
 * pin takes up its box at its widest: a tail at its end, a pin at the baseline.
 */
final class Dovetails implements JointMaker {
    private final boolean halfBlind;

    /** @param halfBlind whether the tails stop within the entering part */
    Dovetails(boolean halfBlind) {
        this.halfBlind = halfBlind;
    }

    /** One corner. @param pitch from tail to tail @param tail how wide at its end @param pin how wide at the baseline */
    private record Corner(Axis run, int tails, Dim pitch, Dim tail, Dim pin, Dim deep) {}

    @Override
    public void make(Meeting at, Bench bench) {
        Axis run = Fingers.run(at);
        if (at.shared().isEmpty()
                || at.entering().lie().length() == at.receiving().lie().length()) {
            return;
        }
        Corner corner = corner(at, bench, run);
        if (!corner.tail()
                .minus(corner.pin())
                .plus(narrow(bench, corner))
                .value()
                .isPositive()) {
            tooLow(at, bench, corner);
            return;
        }
        judge(at, bench);
        for (int i = 0; i < corner.tails(); i++) {
            Dim middle = at.start(run).plus(corner.pitch().times(2L * i + 1).half());
            pair(at, bench, "tail " + (i + 1), around(at, corner, middle, corner.tail()), true, corner);
        }
        for (int i = 0; i <= corner.tails(); i++) {
            Dim middle = at.start(run).plus(corner.pitch().times(i));
            pair(at, bench, "pin " + (i + 1), around(at, corner, middle, corner.pin()), false, corner);
        }
        explain(at, bench, corner);
    }

    private static Corner corner(Meeting at, Bench bench, Axis run) {
        JointRules rules = bench.rules();
        Dim whole = at.shared().extent(run);
        JointRules.Share pinShare = rules.share("pin of pitch");
        double widest = Row.mm(rules.length("widest tail"));
        double most = widest * pinShare.denominator() / (pinShare.denominator() - pinShare.numerator());
        int tails = Math.max(1, (int) Math.ceil(Row.mm(whole) / most - 1e-9));
        Dim pitch = whole.share(1, tails);
        Dim narrow = pinShare.of(pitch);
        Dim deep = at.shared().extent(at.receiving().lie().length());
        JointRules.Share slope = rules.share("dovetail slope");
        Dim spread = deep.times(2).share(slope.numerator(), slope.denominator());
        return new Corner(run, tails, pitch, pitch.minus(narrow), narrow.plus(spread), deep);
    }

    private static Dim narrow(Bench bench, Corner corner) {
        return bench.rules().share("pin of pitch").of(corner.pitch());
    }

    /** A slice of the corner, cut off at its ends. */
    private static Box around(Meeting at, Corner corner, Dim middle, Dim wide) {
        Dim from = middle.minus(wide.half());
        Dim to = middle.plus(wide.half());
        Dim start = at.start(corner.run());
        Dim end = at.end(corner.run());
        return at.shared()
                .with(Side.of(corner.run(), false), from.compareTo(start) < 0 ? start : from)
                .with(Side.of(corner.run(), true), to.compareTo(end) > 0 ? end : to);
    }

    private static void pair(Meeting at, Bench bench, String what, Box box, boolean tail, Corner corner) {
        for (boolean receiving : new boolean[] {false, true}) {
            Part part = at.part(receiving);
            bench.cut(
                    at,
                    receiving,
                    box,
                    new Bench.Cut(
                            what,
                            receiving == tail ? Feature.Kind.PIN : Feature.Kind.SOCKET,
                            Mitres.end(at, part),
                            Optional.empty(),
                            setting(bench, corner, box.extent(part.lie().length()))));
        }
    }

    private static Setting setting(Bench bench, Corner corner, Dim deep) {
        JointRules.Share slope = bench.rules().share("dovetail slope");
        Map<String, Dim> sizes = new LinkedHashMap<>();
        sizes.put("baseline from the end", deep);
        sizes.put("tail at its end", corner.tail());
        sizes.put("pitch", corner.pitch());
        return new Setting(
                "by hand or router",
                "dovetail saw or dovetail bit",
                sizes,
                List.of("Slope %d in %d: a tail is %s at the baseline."
                        .formatted(
                                slope.numerator(),
                                slope.denominator(),
                                bench.say(corner.pitch().minus(corner.pin())))));
    }

    private void judge(Meeting at, Bench bench) {
        if (!halfBlind) {
            return;
        }
        Dim lap = at.entering()
                .thickness()
                .minus(at.shared().extent(at.receiving().lie().length()));
        Dim least = bench.rules().length("least lap");
        if (lap.compareTo(least) < 0) {
            bench.find(
                    Finding.Severity.CAUTION,
                    at,
                    "The tails of %s leave only %s of %s before them."
                            .formatted(
                                    at.receiving().path(),
                                    bench.sayUnit(lap),
                                    at.entering().path()),
                    "common practice",
                    "Leave %s: make %s thicker."
                            .formatted(bench.sayUnit(least), at.entering().path()),
                    lap,
                    least);
        }
    }

    private void explain(Meeting at, Bench bench, Corner corner) {
        bench.choose(
                at,
                bench.rules().share("dovetail slope").source(),
                "%s: %d tails of %s at %s pitch over %s, half pins of %s at both ends, %s long.%s"
                        .formatted(
                                at.joint().kind().words(),
                                corner.tails(),
                                bench.say(corner.tail()),
                                bench.say(corner.pitch()),
                                bench.say(at.shared().extent(corner.run())),
                                bench.say(corner.pin().half()),
                                bench.sayUnit(corner.deep()),
                                Strengths.UNKNOWN),
                corner.tail(),
                corner.pitch(),
                corner.deep());
    }

    private static void tooLow(Meeting at, Bench bench, Corner corner) {
        Dim needs = Dim.worked(
                Length.ofMillimetres(Row.mm(corner.deep()) * 2),
                "twice as high as the tails are long",
                new Making.Input(2, corner.deep()));
        bench.find(
                Finding.Severity.STOP,
                at,
                "The corner of %s is %s high: a tail %s long would come to nothing at its baseline."
                        .formatted(
                                Bench.both(at),
                                bench.sayUnit(at.shared().extent(corner.run())),
                                bench.sayUnit(corner.deep())),
                "the slope of the tails",
                "Make it %s high, or use dowels.".formatted(bench.sayUnit(needs)),
                corner.deep(),
                needs);
    }
}
