package scantling.joinery;

import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Making;
import scantling.measure.Rounding;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Point;
import scantling.space.Side;

/**
 * A mitre seen along its corner, from the inner arris to the outer one, and the point on it where a slot begins. A slot
 * square to the mitre goes, for every millimetre of its depth, so far outward through the part and so far back along it.
 *
 * @param first how far the corner reaches along the entering part, which is how thick the other is there
 * @param second how far it reaches along the receiving part
 * @param share how far along the mitre the slot begins
 */
record Slant(Dim first, Dim second, JointRules.Share share) {
    static Slant of(Meeting at, JointRules.Share share) {
        return new Slant(
                at.shared().extent(at.entering().lie().length()),
                at.shared().extent(at.receiving().lie().length()),
                share);
    }

    private double a() {
        return Row.mm(first);
    }

    private double b() {
        return Row.mm(second);
    }

    private double length() {
        return Math.hypot(a(), b());
    }

    /** How far the slot begins from the inner arris, along the mitre. */
    Dim fromInside() {
        double part = (double) share.numerator() / share.denominator();
        return Dim.worked(
                Length.ofMillimetres(length() * part),
                "the slot's share of the mitre",
                new Making.Input(a() / length() * part, first),
                new Making.Input(b() / length() * part, second));
    }

    /** The deepest slot that leaves enough wood before the outer faces of both parts. */
    double deepest(Dim thick, Dim behind) {
        double rest = 1 - (double) share.numerator() / share.denominator();
        double half = Row.mm(thick) / 2;
        double inEntering = (b() * rest - half * b() / length() - Row.mm(behind)) / (a() / length());
        double inReceiving = (a() * rest - half * a() / length() - Row.mm(behind)) / (b() / length());
        return Math.min(inEntering, inReceiving);
    }

    /** The thinnest stock, alike on both sides, that takes a slot of a depth. */
    static Dim leastStock(Dim thick, Dim deep, Dim behind, JointRules.Share share, JointRules rules) {
        double rest = 1 - (double) share.numerator() / share.denominator();
        double least = ((Row.mm(deep) + Row.mm(thick) / 2) * Math.sqrt(0.5) + Row.mm(behind)) / rest;
        return Dim.worked(
                        Length.ofMillimetres(least),
                        "depth and half of the slot, seen through the stock, and wood behind it")
                .rounded(rules.length("round").value(), Rounding.UP);
    }

    /** How far from upright the blade stands when the part lies flat and its slot is cut from the mitred end. */
    double tilt(boolean receiving) {
        double offSquare = receiving ? Math.atan2(b(), a()) : Math.atan2(a(), b());
        return 90 - Math.toDegrees(offSquare);
    }

    /** The box in one of the parts whose diagonal is the slot's middle, as long as the corner. */
    Box slot(Meeting at, boolean receiving, Dim deep) {
        Axis mine = at.part(receiving).lie().length();
        Axis its = at.part(!receiving).lie().length();
        double through = (receiving ? b() : a()) / length();
        double along = (receiving ? a() : b()) / length();
        Box box = toward(at, at.shared(), inside(at, receiving), mine, moved(deep, along));
        return toward(at, box, inside(at, !receiving).opposite(), its, moved(deep, through));
    }

    /** Where the middle of a slot begins on the mitre. @param run the middle of it along the corner */
    Point mouth(Meeting at, Axis run, double middle) {
        Point mouth = new Point(0, 0, 0).with(run, middle);
        for (boolean receiving : new boolean[] {false, true}) {
            Axis axis = at.part(receiving).lie().length();
            mouth = mouth.with(axis, Row.mm(start(at, inside(at, receiving), axis)));
        }
        return mouth;
    }

    /** Square to the mitre into one of the parts: back along it and outward through it. */
    Point way(Meeting at, boolean receiving) {
        double through = (receiving ? b() : a()) / length();
        double along = (receiving ? a() : b()) / length();
        Side back = inside(at, receiving);
        Side out = inside(at, !receiving).opposite();
        return new Point(0, 0, 0)
                .with(back.axis(), back.isFar() ? along : -along)
                .with(out.axis(), out.isFar() ? through : -through);
    }

    private Dim start(Meeting at, Side inner, Axis axis) {
        Dim from = share.of(at.shared().extent(axis));
        Dim plane = at.shared().plane(inner);
        return inner.isFar() ? plane.minus(from) : plane.plus(from);
    }

    private static Dim moved(Dim deep, double effect) {
        return Dim.worked(
                Length.ofMillimetres(Row.mm(deep) * effect),
                "depth square to the mitre, seen along the part or through it",
                new Making.Input(effect, deep));
    }

    /** From the point on the mitre so far toward a side. */
    private Box toward(Meeting at, Box box, Side side, Axis axis, Dim by) {
        Side inner = inside(at, axis == at.receiving().lie().length());
        Dim start = start(at, inner, axis);
        Dim end = side.isFar() ? start.plus(by) : start.minus(by);
        return box.with(side.opposite(), start).with(side, end);
    }

    /** The side of the corner, along a part, from which that part comes: its inside. */
    private static Side inside(Meeting at, boolean receiving) {
        Axis along = at.part(receiving).lie().length();
        Side far = Side.of(along, true);
        boolean endsFar = at.part(receiving).box().plane(far).equals(at.shared().plane(far));
        return Side.of(along, !endsFar);
    }
}
