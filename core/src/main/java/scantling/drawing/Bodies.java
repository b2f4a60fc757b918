package scantling.drawing;

import java.util.List;
import scantling.construct.Assembly;

/** The parts of a piece as bodies in space, for a view that can be turned. */
public final class Bodies {
    private Bodies() {}

    /** A corner in millimetres from the left front corner on the floor. @param x to the right @param y to the back @param z up */
    public record Corner(double x, double y, double z) {}

    /** One part. @param path of the part @param faces closed polygons, anticlockwise seen from outside; not all convex */
    public record Body(String path, List<List<Corner>> faces) {}

    /** All parts where they stand. */
    public static List<Body> of(Assembly assembly) {
        return assembly.parts().stream()
                .map(part -> new Body(
                        part.path(),
                        Solid.of(part).faces().stream()
                                .map(face -> face.stream()
                                        .map(place -> new Corner(place.across(), place.deep(), place.up()))
                                        .toList())
                                .toList()))
                .toList();
    }
}
