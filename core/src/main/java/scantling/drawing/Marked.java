package scantling.drawing;

import java.util.List;
import scantling.construct.Part;
import scantling.drawing.Region.Stretch;
import scantling.measure.Dim;
import scantling.space.Box;
import scantling.space.Outline.Corner;
import scantling.space.Side;

/** A part seen from its marks: along from the near end, across from the face edge, through from the face side. */
record Marked(Part part) {
    Stretch along(Box box) {
        return stretch(box, part.lie().nearEnd());
    }

    Stretch across(Box box) {
        return stretch(box, part.lie().faceEdge());
    }

    Stretch through(Box box) {
        return stretch(box, part.lie().faceSide());
    }

    /**
     * Whether the near end is at the right when the face side is up and the face edge toward you; the other of a
     * mirrored pair has it at the left.
     */
    boolean isMirrored() {
        boolean swapped =
                (part.lie().length().ordinal() + 1) % 3 != part.lie().width().ordinal();
        boolean turned = part.lie().nearEnd().isFar()
                ^ part.lie().faceEdge().isFar()
                ^ !part.lie().faceSide().isFar();
        return swapped ^ turned;
    }

    private Stretch stretch(Box box, Side mark) {
        Dim zero = part.box().plane(mark);
        Dim near = box.plane(mark);
        Dim far = box.plane(mark.opposite());
        return mark.isFar()
                ? new Stretch(zero.minus(near), zero.minus(far))
                : new Stretch(near.minus(zero), far.minus(zero));
    }

    /** Its corners on the face side, in order. */
    List<Corner> corners() {
        return part.outline().map(outline -> outline.corners()).orElseGet(() -> {
            Dim length = along(part.box()).to();
            Dim width = across(part.box()).to();
            return List.of(
                    new Corner(Dim.ZERO, Dim.ZERO),
                    new Corner(length, Dim.ZERO),
                    new Corner(length, width),
                    new Corner(Dim.ZERO, width));
        });
    }

    /** Where in the piece a corner is, at a depth from the face side, before any turning. */
    Place at(Corner corner, double through) {
        Place place = new Place(0, 0, 0);
        place = put(place, part.lie().nearEnd(), corner.along().value().toMillimetres());
        place = put(place, part.lie().faceEdge(), corner.across().value().toMillimetres());
        return put(place, part.lie().faceSide(), through);
    }

    private Place put(Place place, Side mark, double from) {
        double zero = part.box().plane(mark).value().toMillimetres();
        return place.with(mark.axis(), mark.isFar() ? zero - from : zero + from);
    }
}
