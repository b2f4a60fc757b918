package scantling.drawing;

import java.util.Comparator;
import java.util.List;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.space.Axis;
import scantling.space.Side;

/** From where a piece is looked at squarely. */
enum View {
    /** From before it. */
    FRONT(Side.FRONT, Axis.ACROSS, Axis.UP),
    /** From its right: the front is at the left. */
    SIDE(Side.RIGHT, Axis.DEEP, Axis.UP),
    /** From above: the front is at the foot. */
    TOP(Side.TOP, Axis.ACROSS, Axis.DEEP);

    private final Side from;
    private final Axis level;
    private final Axis upright;

    View(Side from, Axis level, Axis upright) {
        this.from = from;
        this.level = level;
        this.upright = upright;
    }

    Side from() {
        return from;
    }

    Axis level() {
        return level;
    }

    Axis upright() {
        return upright;
    }

    Spot spot(Place place, double units) {
        return new Spot(place.on(level) * units, -place.on(upright) * units);
    }

    Place viewer() {
        return new Place(0, 0, 0).with(from.axis(), from.isFar() ? 1 : -1);
    }

    /** How near the viewer it comes. */
    double nearness(Solid solid) {
        return from.isFar() ? solid.most(from.axis()) : -solid.least(from.axis());
    }

    /** The bodies of a piece, farthest first. */
    List<Solid> solids(Assembly assembly) {
        return assembly.parts().stream()
                .map(Solid::of)
                .sorted(Comparator.comparingDouble(this::nearness)
                        .thenComparing(solid -> solid.part().path()))
                .toList();
    }

    void paint(Sketch sketch, Solid solid, double units) {
        for (List<Place> face : solid.faces()) {
            if (Solid.faces(face, viewer())) {
                sketch.shape(face.stream().map(place -> spot(place, units)).toList(), Sketch.OUTLINE * 0.75);
            }
        }
    }

    Hatch.Field field(Part part, double units) {
        return new Hatch.Field(
                plane(part, Side.of(level, false)) * units,
                -plane(part, Side.of(upright, true)) * units,
                plane(part, Side.of(level, true)) * units,
                -plane(part, Side.of(upright, false)) * units);
    }

    private static double plane(Part part, Side side) {
        return part.box().plane(side).value().toMillimetres();
    }
}
