package scantling.hardware;

import java.util.Optional;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Range;
import scantling.feature.Setting;
import scantling.feature.Surface;
import scantling.measure.Dim;
import scantling.space.Box;
import scantling.space.Side;

/** Turns a box of air in the piece into a feature measured from the marks of the part it is taken from. */
final class Cut {
    private Cut() {}

    /**
     * The feature.
     *
     * @param path its name
     * @param owner path of the fitting
     * @param region what is taken away, in the piece
     * @param from the side of the part it is worked from
     * @param radius of a hole or of corners
     */
    static Feature of(
            String path,
            String owner,
            Feature.Kind kind,
            Part part,
            Box region,
            Side from,
            Optional<Dim> radius,
            Setting setting) {
        return new Feature(
                path,
                part.path(),
                owner,
                kind,
                Surface.of(from, part.lie()),
                range(part, region, part.lie().nearEnd()),
                range(part, region, part.lie().faceEdge()),
                range(part, region, part.lie().faceSide()),
                radius,
                setting);
    }

    private static Range range(Part part, Box region, Side mark) {
        return new Range(fromMark(part, mark, region.plane(mark)), fromMark(part, mark, region.plane(mark.opposite())));
    }

    /** How far a plane of the piece is from a mark of a part, inward. */
    static Dim fromMark(Part part, Side mark, Dim plane) {
        Dim zero = part.box().plane(mark);
        return mark.isFar() ? zero.minus(plane) : plane.minus(zero);
    }

    /** Where the fence stands for a hole: across the part on its wide sides, through it in its edges and ends. */
    static Dim fence(Part part, Side from, Spot at) {
        Side mark = from.axis() == part.lie().thickness()
                ? part.lie().faceEdge()
                : part.lie().faceSide();
        return fromMark(part, mark, at.on(mark.axis()));
    }

    /** Whether two features take away the very same wood. */
    static boolean same(Feature a, Feature b) {
        return a.kind() == b.kind()
                && a.surface() == b.surface()
                && a.along().equals(b.along())
                && a.across().equals(b.across())
                && a.through().equals(b.through());
    }
}
