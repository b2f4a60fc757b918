package scantling.joinery;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Setting;
import scantling.feature.Surface;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/** A dado that stops short of the edge that shows, and the notch in what enters that hides its end. */
final class Stopping {
    private Stopping() {}

    /** The end that shows: the near one, unless only the far one does. */
    static Side end(Meeting at, Axis run) {
        Side near = Side.of(run, false);
        Part part = at.receiving();
        return part.shows().contains(near.opposite()) && !part.shows().contains(near) ? near.opposite() : near;
    }

    /** The channel without its end, when it runs out there; the corner of what enters is notched by as much. */
    static Box shortened(Meeting at, Bench bench, Box box, Side end) {
        Dim stop = bench.rules().length("stop short");
        Dim beyond = Channel.beyond(at, box, end);
        if (beyond.compareTo(stop) >= 0 || stop.times(3).compareTo(box.extent(end.axis())) > 0) {
            return box;
        }
        Box shorter = box.inset(end, stop.minus(beyond));
        Box notch = at.shared().with(end.opposite(), shorter.plane(end));
        Map<String, Dim> sizes = new LinkedHashMap<>();
        sizes.put("from the edge", notch.extent(end.axis()));
        sizes.put("from the end", at.depth());
        bench.cut(
                at,
                false,
                notch,
                new Bench.Cut(
                        "notch",
                        Feature.Kind.NOTCH,
                        Surface.of(end, at.entering().lie()),
                        Optional.empty(),
                        new Setting(
                                "hand saw", "back saw", sizes, List.of("Square the end of the dado with a chisel."))));
        return shorter;
    }
}
