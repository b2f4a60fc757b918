package scantling.drawing;

import java.util.List;
import java.util.Optional;
import scantling.construct.Part;
import scantling.feature.Surface;

/** The contours of a part's surfaces laid flat: what its outline says, or its true shape where that is more. */
final class Contours {
    private final Sketch sketch;
    private final Fold fold;
    private final Part part;
    private final double unitsPerMm;
    private final Optional<Profile> profile;

    Contours(Sketch sketch, Fold fold, Part part, Scale scale) {
        this.sketch = sketch;
        this.fold = fold;
        this.part = part;
        this.unitsPerMm = scale.unitsPerMm();
        this.profile = Profile.of(part);
    }

    /** Face side or back side. */
    void outline(Surface surface) {
        if (profile.isPresent()) {
            shaped(profile.get(), surface);
            return;
        }
        List<Spot> spots = new Marked(part)
                .corners().stream()
                        .map(corner -> fold.spot(
                                surface,
                                corner.along().value().toMillimetres() * unitsPerMm,
                                corner.across().value().toMillimetres() * unitsPerMm,
                                0))
                        .toList();
        sketch.shape(spots, Sketch.OUTLINE);
    }

    /** An edge or an end beside the face side: its rectangle, or its true shape where it has one. */
    void folded(Surface surface) {
        boolean edge = surface == Surface.FACE_EDGE || surface == Surface.BACK_EDGE;
        if (edge && profile.isPresent()) {
            shaped(profile.get(), surface);
        } else {
            sketch.shape(Rounded.corners(fold.field(surface), 0), Sketch.OUTLINE);
        }
    }

    /** The silhouette strong, the limits of the surface itself fine within it. */
    private void shaped(Profile shape, Surface surface) {
        shape.in(surface).forEach(ring -> sketch.edge(onPaper(surface, ring), Sketch.EDGE, false));
        shape.silhouette(surface).forEach(ring -> sketch.shape(onPaper(surface, ring), Sketch.OUTLINE));
    }

    private List<Spot> onPaper(Surface surface, List<Profile.Spot3> ring) {
        return ring.stream()
                .map(at -> fold.spot(
                        surface, at.along() * unitsPerMm, at.across() * unitsPerMm, at.through() * unitsPerMm))
                .toList();
    }
}
