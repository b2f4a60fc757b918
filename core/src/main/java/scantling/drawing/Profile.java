package scantling.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import scantling.construct.Part;
import scantling.feature.Surface;
import scantling.space.Form;
import scantling.space.Point;
import scantling.space.Side;
import scantling.space.Solid;

/**
 * How the wood of a part that is tapered two ways or cut off slanting looks from its marks: its silhouette on each surface
 * and the wood that lies in the surface itself. In millimetres, before any turning.
 */
final class Profile {
    /** A thousandth of a millimetre: what is nearer is the same line on paper. */
    private static final PrecisionModel FINE = new PrecisionModel(1000);

    private static final GeometryFactory SHAPES = new GeometryFactory(FINE);

    /** A place on the wood. @param along from the near end @param across from the face edge @param through from the face side */
    record Spot3(double along, double across, double through) {}

    private final List<List<Spot3>> faces;
    private final double width;
    private final double thickness;

    private Profile(Part part) {
        Form form = new Form(part.outline(), part.edgeOutline(), part.ends(), Optional.empty());
        this.faces = Solid.of(part.box(), part.lie(), form).pieces().stream()
                .flatMap(List::stream)
                .map(face -> face.stream().map(point -> fromMarks(part, point)).toList())
                .toList();
        this.width = part.box().extent(part.lie().width()).value().toMillimetres();
        this.thickness = part.box().extent(part.lie().thickness()).value().toMillimetres();
    }

    /** Of a part that its outline and its box do not tell all of; nothing for any other. */
    static Optional<Profile> of(Part part) {
        return isMoreThanOutline(part) ? Optional.of(new Profile(part)) : Optional.empty();
    }

    static boolean isMoreThanOutline(Part part) {
        return part.edgeOutline().isPresent() || !part.ends().areSquare();
    }

    private static Spot3 fromMarks(Part part, Point point) {
        return new Spot3(
                distance(part, point, part.lie().nearEnd()),
                distance(part, point, part.lie().faceEdge()),
                distance(part, point, part.lie().faceSide()));
    }

    private static double distance(Part part, Point point, Side mark) {
        double from = part.box().plane(mark).value().toMillimetres();
        double at = point.of(mark.axis());
        return mark.isFar() ? from - at : at - from;
    }

    /** All of the wood as it covers a surface. */
    List<List<Spot3>> silhouette(Surface surface) {
        return rings(surface, faces);
    }

    /** The wood that lies in the surface itself. */
    List<List<Spot3>> in(Surface surface) {
        double level = switch (surface) {
            case BACK_SIDE -> thickness;
            case BACK_EDGE -> width;
            default -> 0;
        };
        ToDoubleFunction<Spot3> depth = isSide(surface) ? Spot3::through : Spot3::across;
        return rings(
                surface,
                faces.stream()
                        .filter(face ->
                                face.stream().allMatch(spot -> Math.abs(depth.applyAsDouble(spot) - level) < 0.01))
                        .toList());
    }

    private static boolean isSide(Surface surface) {
        return surface == Surface.FACE_SIDE || surface == Surface.BACK_SIDE;
    }

    private static List<List<Spot3>> rings(Surface surface, List<List<Spot3>> faces) {
        List<Geometry> shadows = new ArrayList<>();
        for (List<Spot3> face : faces) {
            Coordinate[] ring = new Coordinate[face.size() + 1];
            for (int i = 0; i <= face.size(); i++) {
                Spot3 spot = face.get(i % face.size());
                ring[i] = new Coordinate(
                        FINE.makePrecise(spot.along()),
                        FINE.makePrecise(isSide(surface) ? spot.across() : spot.through()));
            }
            Polygon shadow = SHAPES.createPolygon(ring);
            if (shadow.getArea() > 1e-3) {
                shadows.add(shadow);
            }
        }
        if (shadows.isEmpty()) {
            return List.of();
        }
        Geometry union = UnaryUnionNG.union(shadows, SHAPES, FINE);
        List<List<Spot3>> rings = new ArrayList<>();
        for (int i = 0; i < union.getNumGeometries(); i++) {
            if (union.getGeometryN(i) instanceof Polygon polygon) {
                rings.add(spots(surface, polygon));
            }
        }
        return rings;
    }

    private static List<Spot3> spots(Surface surface, Polygon polygon) {
        List<Spot3> spots = new ArrayList<>();
        Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
        for (int i = 0; i < ring.length - 1; i++) {
            spots.add(isSide(surface) ? new Spot3(ring[i].x, ring[i].y, 0) : new Spot3(ring[i].x, 0, ring[i].y));
        }
        return spots;
    }
}
