package scantling.joinery;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Setting;
import scantling.feature.Surface;
import scantling.feature.Taper;
import scantling.feature.WoodScrew;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Making;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/**
 * Dovetails of a corner: tails on the receiving part, pins on the entering one, half a pin at either end. Each tail and
 * pin takes up its box at its widest and tapers from there: a tail is widest at its end, a pin at the baseline.
 */
final class Dovetails implements JointMaker {
    private final boolean halfBlind;

    /** @param halfBlind whether the tails stop within the entering part */
    Dovetails(boolean halfBlind) {
        this.halfBlind = halfBlind;
    }

    /**
     * One corner.
     *
     * @param run the direction that tails follow each other in
     * @param pitch from tail to tail
     * @param tail how wide a tail is at its end
     * @param gap between two tails at their ends: the narrow face of a pin
     * @param in by how much each side of a tail comes in to its baseline
     * @param deep how long the tails are
     * @param slope of their sides
     */
    private record Corner(Axis run, int tails, Dim pitch, Dim tail, Dim gap, Dim in, Dim deep, JointRules.Share slope) {
        Dim tailIn() {
            return tail.minus(in.times(2));
        }

        /** The wide face of a pin. */
        Dim pin() {
            return gap.plus(in.times(2));
        }

        double degrees() {
            return Math.toDegrees(Math.atan2(slope.numerator(), slope.denominator()));
        }
    }

    @Override
    public void make(Meeting at, Bench bench) {
        Axis run = Fingers.run(at);
        if (at.shared().isEmpty()
                || at.entering().lie().length() == at.receiving().lie().length()) {
            return;
        }
        Corner corner = corner(at, bench, run);
        if (!corner.tailIn().value().isPositive()) {
            tooLow(at, bench, corner);
            return;
        }
        judge(at, bench);
        thinPins(at, bench, corner);
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
        Dim gap = pinShare.of(pitch);
        Dim deep = at.shared().extent(at.receiving().lie().length());
        JointRules.Share slope = rules.share(
                WoodScrew.isSoft(at.receiving().material())
                        ? "dovetail slope in softwood"
                        : "dovetail slope in hardwood");
        return new Corner(run, tails, pitch, pitch.minus(gap), gap, slope.of(deep), deep, slope);
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
                            taper(at, box, tail, corner, part),
                            setting(at, bench, receiving, corner)));
        }
    }

    /** Sides that stand at an end of the corner are square; the others come in toward the narrow side. */
    private static Optional<Taper> taper(Meeting at, Box box, boolean tail, Corner corner, Part part) {
        if (part.lie().width() != corner.run()) {
            return Optional.empty();
        }
        Side out = Mitres.end(at, at.receiving()).side(at.receiving().lie());
        Dim low = sloped(at, box, Side.of(corner.run(), false), corner);
        Dim high = sloped(at, box, Side.of(corner.run(), true), corner);
        boolean fromFar = part.lie().faceEdge().isFar();
        return Optional.of(new Taper(
                Surface.of(tail ? out.opposite() : out, part.lie()), fromFar ? high : low, fromFar ? low : high));
    }

    private static Dim sloped(Meeting at, Box box, Side side, Corner corner) {
        return box.plane(side).equals(at.shared().plane(side)) ? Dim.ZERO : corner.in();
    }

    /** What is marked out on one of the two boards. */
    private static Setting setting(Meeting at, Bench bench, boolean tails, Corner corner) {
        Dim baseline = at.shared().extent(at.part(tails).lie().length());
        Map<String, Dim> sizes = new LinkedHashMap<>();
        sizes.put("baseline from the end", baseline);
        if (tails) {
            sizes.put("half pin at either edge", corner.gap().half());
            sizes.put("tail at its end", corner.tail());
            sizes.put("between two tails", corner.gap());
            sizes.put("tail at the baseline", corner.tailIn());
        } else {
            sizes.put("half pin outside", corner.gap().half());
            sizes.put("pin outside", corner.gap());
            sizes.put("half pin inside", corner.gap().half().plus(corner.in()));
            sizes.put("pin inside", corner.pin());
            sizes.put("between two pins outside", corner.tail());
        }
        sizes.put("pitch", corner.pitch());
        Map<String, Double> angles = new LinkedHashMap<>();
        angles.put("slope", corner.degrees());
        return new Setting(
                "by hand or router",
                tails ? "dovetail saw or dovetail bit, tails" : "dovetail saw or dovetail bit, pins",
                sizes,
                angles,
                List.of("Slope %d in %d. %s"
                        .formatted(
                                corner.slope().numerator(),
                                corner.slope().denominator(),
                                tails
                                        ? "Square across the end, sloping on the faces."
                                        : "Mark the pins from the finished tails; the sizes check them.")));
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
                corner.slope().source(),
                "%s: %d %s %s wide at the end and %s at the baseline, %s from one to the next over %s; pins %s outside and %s inside, half pins of %s outside at both edges; %s long.%s"
                        .formatted(
                                at.joint().kind().words(),
                                corner.tails(),
                                corner.tails() == 1 ? "tail" : "tails",
                                bench.say(corner.tail()),
                                bench.say(corner.tailIn()),
                                bench.say(corner.pitch()),
                                bench.say(at.shared().extent(corner.run())),
                                bench.say(corner.gap()),
                                bench.say(corner.pin()),
                                bench.say(corner.gap().half()),
                                bench.sayUnit(corner.deep()),
                                Strengths.UNKNOWN),
                corner.tail(),
                corner.pitch(),
                corner.deep());
    }

    private static void thinPins(Meeting at, Bench bench, Corner corner) {
        Dim least = bench.rules().length("least pin");
        if (corner.gap().compareTo(least) >= 0) {
            return;
        }
        JointRules.Share share = bench.rules().share("pin of pitch");
        Dim needs = least.share(share.denominator(), share.numerator());
        bench.find(
                Finding.Severity.CAUTION,
                at,
                "The pins of %s are %s wide outside: the corner is %s high."
                        .formatted(
                                Bench.both(at),
                                bench.sayUnit(corner.gap()),
                                bench.sayUnit(at.shared().extent(corner.run()))),
                "common practice: no narrower than a chisel, %s".formatted(bench.sayUnit(least)),
                "Make it %s high at least, or use dowels.".formatted(bench.sayUnit(needs)),
                corner.gap(),
                least,
                needs);
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
