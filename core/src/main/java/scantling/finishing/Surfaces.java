package scantling.finishing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import scantling.construct.Assembly;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.feature.Surface;
import scantling.finishing.Cells.Cover;
import scantling.finishing.Cells.Rect;
import scantling.piece.Material;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;
import scantling.space.Solid;
import scantling.timber.Table;

/**
 * Every surface of every part, by what becomes of it. A spot is covered when wood of another part lies against it, or
 * when it is inside a joint; open otherwise, and then seen from inside when another part stands before it. Parts count as
 * their boxes, shaped ones in the proportion of their outline; walls of grooves and mortises are not counted.
 */
public final class Surfaces {
    private static final double SLIVER = Solid.TOLERANCE;
    private static final double SQUARE_MM = 1e6;
    private static final Map<String, String> GLUED = Table.read("finishing/glued-joints.csv").rows().stream()
            .collect(Collectors.toUnmodifiableMap(row -> row.text("joint"), row -> row.text("glued")));

    private final List<Part> parts;
    private final Map<String, List<Joint>> joints = new HashMap<>();

    private Surfaces(Assembly assembly) {
        parts = assembly.parts();
        for (Joint joint : assembly.joints()) {
            joints.computeIfAbsent(joint.entering(), key -> new ArrayList<>()).add(joint);
            if (!joint.receiving().equals(joint.entering())) {
                joints.computeIfAbsent(joint.receiving(), key -> new ArrayList<>())
                        .add(joint);
            }
        }
    }

    /** Six to a part, in the order of the parts. */
    public static List<Face> of(Assembly assembly) {
        Surfaces surfaces = new Surfaces(assembly);
        List<Face> faces = new ArrayList<>();
        for (Part part : assembly.parts()) {
            for (Surface surface : Surface.values()) {
                faces.add(surfaces.face(part, surface));
            }
        }
        return List.copyOf(faces);
    }

    private Face face(Part part, Surface surface) {
        Side side = surface.side(part.lie());
        Rect whole = rect(part.box(), side);
        Cells cells = new Cells(whole);
        List<Face.Patch> glue = new ArrayList<>();
        for (Part other : parts) {
            Rect shared = rect(other.box(), side).within(whole);
            if (other != part && shared.isMoreThan(SLIVER)) {
                Cover cover = cover(part, other, side);
                cells.lay(shared, cover);
                mark(glue, cover, shared, part, side);
            }
        }
        for (Joint joint : joints.getOrDefault(part.path(), List.of())) {
            inJoint(joint, part, side).ifPresent(rect -> {
                Rect shared = rect.within(whole);
                Cover cover = isGlued(joint, part) ? Cover.GLUED : Cover.COVERED;
                cells.lay(shared, cover);
                mark(glue, cover, shared, part, side);
            });
        }
        return sorted(part, surface, cells.areas(), glue);
    }

    private static void mark(List<Face.Patch> glue, Cover cover, Rect rect, Part part, Side side) {
        if (cover == Cover.GLUED) {
            glue.add(Patches.on(part, side, rect));
        }
    }

    private Cover cover(Part part, Part other, Side side) {
        double outward = side.isFar() ? SLIVER : -SLIVER;
        double before = mm(part.box(), side) + outward;
        double near = mm(other.box(), Side.of(side.axis(), false));
        double far = mm(other.box(), Side.of(side.axis(), true));
        if (near < before && before < far) {
            return isGluedTo(part, other) ? Cover.GLUED : Cover.COVERED;
        }
        boolean beyond = side.isFar() ? near >= before : far <= before;
        return beyond ? Cover.FACED : Cover.NONE;
    }

    private boolean isGluedTo(Part part, Part other) {
        return joints.getOrDefault(part.path(), List.of()).stream()
                .anyMatch(joint -> (joint.entering().equals(other.path())
                                || joint.receiving().equals(other.path()))
                        && isGlued(joint, joint.entering().equals(part.path()) ? part : other));
    }

    private static boolean isGlued(Joint joint, Part entering) {
        String glued = GLUED.getOrDefault(joint.kind().name(), "no");
        return glued.equals("yes")
                || glued.equals("sheet") && entering.material().kind() == Material.Kind.SHEET;
    }

    /** What of an entering part's side is inside the part it enters: it has no face of its own there. */
    private Optional<Rect> inJoint(Joint joint, Part part, Side side) {
        if (!joint.entering().equals(part.path()) || joint.overlap().isEmpty()) {
            return Optional.empty();
        }
        double plane = mm(part.box(), side);
        return parts.stream()
                .filter(other -> other.path().equals(joint.receiving()))
                .filter(other -> plane >= mm(other.box(), Side.of(side.axis(), false)) - SLIVER
                        && plane <= mm(other.box(), Side.of(side.axis(), true)) + SLIVER)
                .map(other -> rect(joint.overlap().get(), side))
                .filter(rect -> rect.within(rect(part.box(), side)).isMoreThan(SLIVER))
                .findFirst();
    }

    private static Face sorted(Part part, Surface surface, double[] areas, List<Face.Patch> glue) {
        double share = Patches.share(part, surface) / SQUARE_MM;
        Side side = surface.side(part.lie());
        boolean seen = part.shows().contains(side) || side != Side.BACK && side != Side.BOTTOM;
        double outer = areas[Cover.NONE.ordinal()] * share;
        return new Face(
                part,
                surface,
                seen ? outer : 0,
                areas[Cover.FACED.ordinal()] * share,
                seen ? 0 : outer,
                areas[Cover.COVERED.ordinal()] * share,
                areas[Cover.GLUED.ordinal()] * share,
                glue);
    }

    private static Rect rect(Box box, Side side) {
        Axis x = side.axis() == Axis.ACROSS ? Axis.DEEP : Axis.ACROSS;
        Axis y = side.axis().third(x);
        return new Rect(
                mm(box, Side.of(x, false)),
                mm(box, Side.of(x, true)),
                mm(box, Side.of(y, false)),
                mm(box, Side.of(y, true)));
    }

    private static double mm(Box box, Side side) {
        return box.plane(side).value().toMillimetres();
    }
}
