package scantling.construct;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/** Fastens what carries a top to it, so that it can move. */
final class Fastening {
    private Fastening() {}

    /** Fastens a part to what lies on it, if anything does: to the one it carries most of. */
    static void above(Site in, Part part) {
        above(in, part, part.box());
    }

    /** The same for a part that does not fill its box. @param stands where it reaches up to what it carries */
    static void above(Site in, Part part, Box stands) {
        Holders.at(in, stands, Side.TOP).stream()
                .max(Comparator.comparingDouble(top -> shared(stands, top.box())))
                .ifPresent(top -> fasten(in, part, top, stands.meet(top.box())));
    }

    private static void fasten(Site in, Part part, Part top, Box shared) {
        in.joint(Joint.Kind.SCREW, part, top, Map.of(), shared);
        Dim spacing = in.hardware().of("top fastening", "apart");
        int count = 1 + (int) Math.ceil(millimetres(longer(part.box())) / millimetres(spacing));
        in.fitting(
                "top fastenings",
                "top fastening",
                count,
                "piece",
                List.of(part, top),
                Map.of("apart", spacing),
                Map.of("profile", "top fastening"));
    }

    private static Dim longer(Box box) {
        return Dim.largerOf(box.extent(Axis.ACROSS), box.extent(Axis.DEEP));
    }

    private static double shared(Box a, Box b) {
        Box meet = a.meet(b);
        return millimetres(meet.extent(Axis.ACROSS)) * millimetres(meet.extent(Axis.DEEP));
    }

    private static double millimetres(Dim dim) {
        return dim.value().toMillimetres();
    }
}
