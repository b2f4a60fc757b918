package scantling.drawing;

import java.util.List;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.space.Outline.Corner;
import scantling.space.Side;

/** A part seen from its marks: along from the near end, across from the face edge, through from the face side. */
record Marked(Part part) {
    Dim length() {
        return part.box().extent(part.lie().length());
    }

    Dim width() {
        return part.box().extent(part.lie().width());
    }

    Dim thickness() {
        return part.box().extent(part.lie().thickness());
    }

    /** Its corners on the face side, in order. */
    List<Corner> corners() {
        return part.outline().map(outline -> outline.corners()).orElseGet(() -> {
            Dim length = length();
            Dim width = width();
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
