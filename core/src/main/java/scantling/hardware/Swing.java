package scantling.hardware;

import java.util.List;
import java.util.Optional;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;
import scantling.timber.Table;

/** Whether a door swings free: of what stands close beside its hinges, and of what stands before it. */
final class Swing {
    private static final Table GAPS = Table.read("hardware/hinge-gaps.csv");
    private static final double QUARTER = 90;

    private final Workings workings;
    private final Door door;

    Swing(Workings workings, Door door) {
        this.workings = workings;
        this.door = door;
    }

    void check() {
        if (!door.isInset()) {
            beside();
        }
        before();
    }

    private boolean isOwn(Part part) {
        return door.parts().stream().anyMatch(own -> own.path().equals(part.path()));
    }

    /** A thick door needs a gap at its hinges, by a hinge maker's table. */
    private void beside() {
        Dim thick = door.face().extent(Axis.DEEP);
        double need = gap(mm(thick));
        for (Part part : workings.assembly().parts()) {
            if (!isOwn(part) && level(part) && besideFace(part)) {
                double gap = distance(part);
                if (gap >= 0 && gap < need) {
                    close(part, gap, need, thick);
                    return;
                }
            }
        }
    }

    private static double gap(double thick) {
        List<Table.Row> rows = GAPS.rows();
        for (int i = 1; i < rows.size(); i++) {
            double to = rows.get(i).length("thickness").toMillimetres();
            if (thick <= to) {
                double from = rows.get(i - 1).length("thickness").toMillimetres();
                double share = Math.max(0, (thick - from) / (to - from));
                double low = rows.get(i - 1).length("gap").toMillimetres();
                return low + share * (rows.get(i).length("gap").toMillimetres() - low);
            }
        }
        return rows.get(rows.size() - 1).length("gap").toMillimetres();
    }

    private boolean level(Part part) {
        return part.turn().isEmpty() && overlap(part.box(), door.face(), Axis.UP);
    }

    private boolean besideFace(Part part) {
        return overlap(part.box(), door.face(), Axis.DEEP);
    }

    /** How far something is beyond the hinge edge; negative when it is not beyond it. */
    private double distance(Part part) {
        double edge = mm(door.face().plane(door.hung()));
        double other = mm(part.box().plane(door.hung().opposite()));
        return door.hung().isFar() ? other - edge : edge - other;
    }

    private void close(Part part, double gap, double need, Dim thick) {
        workings.caution(
                door.fitting().path(),
                "%s, %s thick, needs %s beside its hinges to open and has %s to %s."
                        .formatted(door.leaf().path(), workings.say(thick), say(need), say(gap), part.path()),
                List.of(thick),
                "hinge maker's table of least gaps, full overlay, B = 3; between its rows in proportion",
                "Leave a gap of %s, or lap the door less.".formatted(say(need)));
    }

    /** Something in the quarter circle that the door sweeps. */
    private void before() {
        double wide = mm(door.face().extent(Axis.ACROSS));
        Optional<Part> hit = workings.assembly().parts().stream()
                .filter(part -> !isOwn(part) && level(part))
                .filter(part -> nearest(part.box()) < wide - 1)
                .findFirst();
        hit.ifPresent(part -> workings.caution(
                door.fitting().path(),
                "%s strikes %s when it has opened about %.0f degrees."
                        .formatted(door.leaf().path(), part.path(), Math.min(QUARTER, degrees(part.box(), wide))),
                List.of(door.face().extent(Axis.ACROSS)),
                "worked out from the parts: a quarter circle about the hinge edge",
                "Hang it on the other side, make it narrower than %s, or move what stands before it."
                        .formatted(say(nearest(part.box())))));
    }

    /** From the hinge edge to the nearest wood before the door, on the door's side of it; infinite where there is none. */
    private double nearest(Box box) {
        double front = mm(door.face().front());
        double ahead = front - mm(box.back());
        double deepest = front - mm(box.front());
        if (deepest <= 1e-6) {
            return Double.POSITIVE_INFINITY;
        }
        double[] beside = beside(box);
        if (beside[1] <= 1e-6) {
            return Double.POSITIVE_INFINITY;
        }
        return Math.hypot(Math.max(0, beside[0]), Math.max(0, ahead));
    }

    /** How far along the door a box begins and ends, from the hinge edge. */
    private double[] beside(Box box) {
        double edge = mm(door.face().plane(door.hung()));
        double near = mm(box.plane(door.hung()));
        double far = mm(box.plane(door.hung().opposite()));
        return door.hung().isFar() ? new double[] {edge - near, edge - far} : new double[] {near - edge, far - edge};
    }

    /** The angle at which the leaf meets the corner of the box that it comes to first. */
    private double degrees(Box box, double wide) {
        double ahead = Math.max(0, mm(door.face().front()) - mm(box.back()));
        double reach = Math.sqrt(Math.max(0, wide * wide - ahead * ahead));
        return Math.toDegrees(Math.atan2(ahead, Math.min(beside(box)[1], reach)));
    }

    private static boolean overlap(Box a, Box b, Axis axis) {
        Length far = a.plane(Side.of(axis, true))
                .value()
                .min(b.plane(Side.of(axis, true)).value());
        Length near = a.plane(Side.of(axis, false))
                .value()
                .max(b.plane(Side.of(axis, false)).value());
        return far.compareTo(near) > 0;
    }

    private String say(double millimetres) {
        return workings.say(
                Dim.worked(Length.ofMillimetres(Math.round(millimetres * 10) / 10.0), "rounded to a tenth"));
    }

    private static double mm(Dim dim) {
        return dim.value().toMillimetres();
    }
}
