package scantling.space;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Cuts the wood of one part out of its box: its outlines, then its ends; then turns it. */
final class Sawing {
    private final Box box;
    private final Lie lie;
    private final double length;
    private final double width;
    private final double thickness;

    Sawing(Box box, Lie lie) {
        this.box = box;
        this.lie = lie;
        length = box.extent(lie.length()).value().toMillimetres();
        width = box.extent(lie.width()).value().toMillimetres();
        thickness = box.extent(lie.thickness()).value().toMillimetres();
    }

    List<Convex> cut(Form form) {
        List<Convex> bodies = polygons(form.outline(), width).stream()
                .map(this::throughThickness)
                .toList();
        if (form.edgeOutline().isPresent()) {
            List<List<Corners.Corner>> profile = polygons(form.edgeOutline(), thickness);
            bodies = bodies.stream()
                    .flatMap(body -> profile.stream().flatMap(piece -> within(body, piece).stream()))
                    .toList();
        }
        if (!form.ends().areSquare()) {
            bodies = bodies.stream()
                    .flatMap(body -> trimmed(body, form.ends()).stream())
                    .toList();
        }
        return form.turn().isEmpty()
                ? bodies
                : bodies.stream()
                        .map(body -> body.moved(form.turn().orElseThrow()::move))
                        .toList();
    }

    /** An outline in convex pieces; the whole rectangle when there is none, or when it crosses itself. */
    private List<List<Corners.Corner>> polygons(Optional<Outline> outline, double across) {
        List<Corners.Corner> rectangle = List.of(
                new Corners.Corner(0, 0),
                new Corners.Corner(length, 0),
                new Corners.Corner(length, across),
                new Corners.Corner(0, across));
        return outline.map(Corners::of)
                .filter(Corners::isSimple)
                .map(Corners::convexPieces)
                .orElse(List.of(rectangle));
    }

    private Convex throughThickness(List<Corners.Corner> polygon) {
        List<Point> near = new ArrayList<>();
        List<Point> far = new ArrayList<>();
        for (Corners.Corner corner : polygon) {
            near.add(place(corner.x(), corner.y(), 0));
            far.add(place(corner.x(), corner.y(), thickness));
        }
        return new Convex(near, far);
    }

    /** What of a body lies inside a polygon seen on the face edge, its corners against the clock. */
    private Optional<Convex> within(Convex body, List<Corners.Corner> polygon) {
        Optional<Convex> left = Optional.of(body);
        boolean against = Corners.area(polygon) > 0;
        for (int i = 0; i < polygon.size(); i++) {
            Corners.Corner from = polygon.get(against ? i : (i + 1) % polygon.size());
            Corners.Corner to = polygon.get(against ? (i + 1) % polygon.size() : i);
            Plane edge = plane(to.y() - from.y(), 0, from.x() - to.x(), place(from.x(), 0, from.y()));
            left = left.flatMap(rest -> rest.behind(edge));
        }
        return left;
    }

    /** Long points stay at the ends of the box. */
    private Optional<Convex> trimmed(Convex body, Ends ends) {
        EndCut far = ends.far();
        double most = Math.max(0, far.overWidth() * width) + Math.max(0, far.overThickness() * thickness);
        EndCut near = ends.near();
        double least = Math.min(0, near.overWidth() * width) + Math.min(0, near.overThickness() * thickness);
        return body.behind(plane(1, -far.overWidth(), -far.overThickness(), place(length - most, 0, 0)))
                .flatMap(rest -> rest.behind(plane(-1, near.overWidth(), near.overThickness(), place(-least, 0, 0))));
    }

    /** A plane by its normal from the marks outward. */
    private Plane plane(double along, double across, double through, Point on) {
        Point normal = new Point(0, 0, 0)
                .with(lie.length(), along * sign(lie.nearEnd()))
                .with(lie.width(), across * sign(lie.faceEdge()))
                .with(lie.thickness(), through * sign(lie.faceSide()));
        Point unit = normal.times(1 / normal.length());
        return new Plane(unit, unit.dot(on));
    }

    private Point place(double along, double across, double through) {
        return new Point(0, 0, 0)
                .with(lie.length(), inward(lie.nearEnd(), along))
                .with(lie.width(), inward(lie.faceEdge(), across))
                .with(lie.thickness(), inward(lie.faceSide(), through));
    }

    private double inward(Side from, double distance) {
        return box.plane(from).value().toMillimetres() + sign(from) * distance;
    }

    private static int sign(Side from) {
        return from.isFar() ? -1 : 1;
    }
}
