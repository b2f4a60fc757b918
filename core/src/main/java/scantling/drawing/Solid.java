package scantling.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import scantling.construct.Part;
import scantling.space.Axis;
import scantling.space.Point;

/**
 * A part as a body with faces, where it stands, turned if it is turned.
 *
 * @param part what it is of
 * @param faces each a closed polygon, anticlockwise seen from outside
 */
record Solid(Part part, List<List<Place>> faces) {
    static Solid of(Part part) {
        List<List<Place>> faces = Profile.isMoreThanOutline(part) ? sawn(part) : extruded(part);
        return new Solid(
                part, volume(faces) < 0 ? faces.stream().map(Solid::reversed).toList() : List.copyOf(faces));
    }

    private static List<List<Place>> extruded(Part part) {
        Marked marked = new Marked(part);
        double thick = marked.thickness().value().toMillimetres();
        List<Place> near = marked.corners().stream()
                .map(c -> turned(part, marked.at(c, 0)))
                .toList();
        List<Place> far = marked.corners().stream()
                .map(c -> turned(part, marked.at(c, thick)))
                .toList();
        List<List<Place>> faces = new ArrayList<>();
        faces.add(near);
        faces.add(reversed(far));
        for (int i = 0; i < near.size(); i++) {
            int next = (i + 1) % near.size();
            faces.add(List.of(near.get(next), near.get(i), far.get(i), far.get(next)));
        }
        return faces;
    }

    /** The faces of wood that is tapered two ways or cut off slanting, without those inside it. */
    private static List<List<Place>> sawn(Part part) {
        List<List<Place>> all = part.solid().pieces().stream()
                .flatMap(List::stream)
                .map(face -> face.stream()
                        .map(point -> new Place(point.across(), point.deep(), point.up()))
                        .toList())
                .toList();
        return all.stream()
                .filter(face -> all.stream().noneMatch(other -> isBackOf(face, other)))
                .toList();
    }

    private static boolean isBackOf(List<Place> face, List<Place> other) {
        return face != other
                && face.size() == other.size()
                && face.stream().allMatch(place -> other.stream().anyMatch(place::isAt));
    }

    Solid moved(Place by, double times) {
        return new Solid(
                part,
                faces.stream()
                        .map(face -> face.stream().map(p -> p.plus(by, times)).toList())
                        .toList());
    }

    double least(Axis axis) {
        return faces.stream()
                .flatMap(List::stream)
                .mapToDouble(p -> p.on(axis))
                .min()
                .orElseThrow();
    }

    double most(Axis axis) {
        return faces.stream()
                .flatMap(List::stream)
                .mapToDouble(p -> p.on(axis))
                .max()
                .orElseThrow();
    }

    Place centre() {
        return new Place(middle(Axis.ACROSS), middle(Axis.DEEP), middle(Axis.UP));
    }

    private double middle(Axis axis) {
        return (least(axis) + most(axis)) / 2;
    }

    /** Whether a face is turned toward the viewer in a direction. */
    static boolean faces(List<Place> face, Place viewer) {
        return normal(face).dot(viewer) > 1e-6;
    }

    /** Twice the area, across the face. */
    static Place normal(List<Place> face) {
        Place sum = new Place(0, 0, 0);
        for (int i = 0; i < face.size(); i++) {
            sum = sum.plus(face.get(i).cross(face.get((i + 1) % face.size())), 1);
        }
        return sum;
    }

    private static double volume(List<List<Place>> faces) {
        return faces.stream().mapToDouble(face -> normal(face).dot(face.get(0))).sum();
    }

    private static List<Place> reversed(List<Place> face) {
        List<Place> copy = new ArrayList<>(face);
        Collections.reverse(copy);
        return List.copyOf(copy);
    }

    private static Place turned(Part part, Place place) {
        return part.turn()
                .map(turn -> turn.move(new Point(place.across(), place.deep(), place.up())))
                .map(point -> new Place(point.across(), point.deep(), point.up()))
                .orElse(place);
    }
}
