package scantling.drawing;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import scantling.feature.Aim;
import scantling.feature.Feature;
import scantling.feature.Range;
import scantling.feature.Surface;
import scantling.feature.Taper;
import scantling.measure.Dim;

/**
 * Where features lie on a part that is laid flat.
 *
 * @param fold the part
 * @param scale of the drawing
 */
record Worked(Fold fold, Scale scale) {
    /** The rectangle that holds a feature, seen on a surface. */
    Hatch.Field field(Feature feature, Surface surface) {
        return field(feature, feature.across(), surface);
    }

    /** The rectangle within its sloping sides. */
    Hatch.Field inner(Feature feature, Surface surface) {
        return field(feature, feature.acrossNarrow(), surface);
    }

    private Hatch.Field field(Feature feature, Range across, Surface surface) {
        return Fold.box(
                fold.spot(
                        surface,
                        units(feature.along().from()),
                        units(across.from()),
                        units(feature.through().from())),
                fold.spot(
                        surface,
                        units(feature.along().to()),
                        units(across.to()),
                        units(feature.through().to())));
    }

    /** Where the middle of a hole is seen on a surface. */
    Spot middle(Feature feature, Surface surface) {
        return fold.spot(
                surface, units(feature.middleAlong()), units(feature.middleAcross()), units(feature.middleThrough()));
    }

    /** How far a tool that leans comes out beside where it goes in, seen on its surface; nothing where it goes in square. */
    Optional<Spot> end(Feature feature) {
        return feature.aim()
                .filter(aim -> !feature.isLeft())
                .map(aim -> moved(feature, aim, aim.way().times(mm(aim.depth()))));
    }

    private Spot moved(Feature feature, Aim aim, Aim.Way by) {
        double unit = scale.unitsPerMm();
        return fold.spot(
                feature.surface(),
                units(aim.along()) + by.along() * unit,
                units(aim.across()) + by.across() * unit,
                units(aim.through()) + by.through() * unit);
    }

    private List<Spot> mouth(Feature feature, Aim aim) {
        return Arrays.stream(aim.corners(feature.surface()))
                .map(corner -> moved(feature, aim, corner))
                .toList();
    }

    private static double mm(Dim dim) {
        return dim.value().toMillimetres();
    }

    /** Its corners: round where a bit leaves them so, its sides sloping where the surface shows it. */
    List<Spot> corners(Feature feature, Surface surface) {
        if (feature.aim().isPresent() && surface == feature.surface()) {
            return mouth(feature, feature.aim().get());
        }
        return feature.taper()
                .filter(taper -> isSeen(taper, surface))
                .map(taper -> sloping(feature, taper, surface))
                .orElseGet(() -> Rounded.corners(
                        field(feature, surface),
                        surface == feature.surface()
                                ? feature.radius().map(this::units).orElse(0.0)
                                : 0));
    }

    private static boolean isSeen(Taper taper, Surface surface) {
        boolean toEnd = taper.narrow() == Surface.NEAR_END || taper.narrow() == Surface.FAR_END;
        boolean onFace = surface == Surface.FACE_SIDE || surface == Surface.BACK_SIDE;
        boolean onEnd = surface == Surface.NEAR_END || surface == Surface.FAR_END;
        return toEnd ? onFace : onEnd;
    }

    private List<Spot> sloping(Feature feature, Taper taper, Surface surface) {
        Range wide = feature.across();
        Range narrow = feature.acrossNarrow();
        boolean far = taper.narrow().isFar();
        return List.of(
                spot(feature, surface, !far, wide.from()),
                spot(feature, surface, !far, wide.to()),
                spot(feature, surface, far, narrow.to()),
                spot(feature, surface, far, narrow.from()));
    }

    /** A corner at one end of it, along or through the part as the surface shows it. */
    private Spot spot(Feature feature, Surface surface, boolean far, Dim across) {
        return fold.spot(surface, units(end(feature.along(), far)), units(across), units(end(feature.through(), far)));
    }

    private static Dim end(Range range, boolean far) {
        return far ? range.to() : range.from();
    }

    private double units(Dim dim) {
        return dim.value().toMillimetres() * scale.unitsPerMm();
    }
}
