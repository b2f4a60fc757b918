package scantling.checks.lasting;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import scantling.construct.Assembly;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Ledger;
import scantling.piece.Material;
import scantling.space.Axis;

/** What part names and joints tell of the role of a part. */
public final class Parts {
    private static final Set<String> SHELVES = Set.of("shelf", "top", "bottom", "tabletop");
    private static final Set<String> INNER = Set.of("core", "panel");

    private static final Set<String> STRIPS = Set.of("rail", "stiffener", "batten", "nosing");

    private Parts() {}

    /** The last name without its number; for the core of a lipped top the name of the top. */
    public static String role(Part part) {
        List<String> names = Ledger.names(part.path().toLowerCase(Locale.ROOT));
        int last = names.size() - 1;
        boolean inner = last > 0 && INNER.contains(Ledger.withoutNumber(names.get(last)));
        return Ledger.withoutNumber(names.get(inner ? last - 1 : last));
    }

    public static boolean isShelf(Part part) {
        String role = role(part);
        return part.lie().thickness() == Axis.UP
                && SHELVES.contains(role.substring(role.lastIndexOf(' ') + 1))
                && findDrawer(part).isEmpty();
    }

    public static boolean isTop(Part part) {
        return isShelf(part) && role(part).endsWith("top");
    }

    public static boolean isLipping(Part part) {
        String role = role(part);
        return role.endsWith("lipping") || role.endsWith("edging");
    }

    /** A strip that may stiffen a board it is glued along. */
    static boolean isStrip(Part part) {
        String role = role(part);
        return STRIPS.contains(role.substring(role.lastIndexOf(' ') + 1));
    }

    public static boolean isBreadboard(Part part) {
        return role(part).contains("breadboard");
    }

    /** A face that opens: a drawer front, a door leaf of one board. */
    public static boolean isFace(Part part) {
        String role = role(part);
        if (Ledger.names(part.path()).contains("box")) {
            return false;
        }
        return role.equals("front") || role.endsWith("drawer front") || isDoor(part);
    }

    public static boolean isDoor(Part part) {
        String role = role(part);
        return role.endsWith("door") || role.equals("leaf") || role.endsWith("flap");
    }

    /** The path of the drawer a part belongs to. */
    public static Optional<String> findDrawer(Part part) {
        List<String> names = Ledger.names(part.path());
        for (int i = names.size() - 1; i >= 0; i--) {
            String name = Ledger.withoutNumber(names.get(i).toLowerCase(Locale.ROOT));
            if (name.equals("drawer") || name.endsWith(" drawer")) {
                return Optional.of(String.join(Ledger.SEPARATOR, names.subList(0, i + 1)));
            }
        }
        return Optional.empty();
    }

    public static boolean isSolid(Part part) {
        return part.material().kind() != Material.Kind.SHEET;
    }

    public static Optional<Part> find(Assembly assembly, String path) {
        return assembly.parts().stream()
                .filter(part -> part.path().equals(path))
                .findFirst();
    }

    /** Paths of all parts that share a joint with a part. */
    public static Set<String> joinedTo(Assembly assembly, Part part) {
        return joinedBy(assembly, part, joint -> true);
    }

    /** Paths of all parts that are glued along a part. */
    static Set<String> gluedTo(Assembly assembly, Part part) {
        return joinedBy(assembly, part, joint -> joint.kind() == Joint.Kind.GLUED);
    }

    private static Set<String> joinedBy(Assembly assembly, Part part, Predicate<Joint> counts) {
        Set<String> paths = new HashSet<>();
        for (Joint joint : assembly.joints()) {
            if (joint.entering().equals(part.path()) && counts.test(joint)) {
                paths.add(joint.receiving());
            } else if (joint.receiving().equals(part.path()) && counts.test(joint)) {
                paths.add(joint.entering());
            }
        }
        return paths;
    }

    public static double mm(Dim dim) {
        return dim.value().toMillimetres();
    }

    /** Parts alike but for their place. */
    public static String likeness(Part part) {
        return String.join(
                "|",
                role(part),
                part.material().of(),
                part.length().value().toString(),
                part.width().value().toString(),
                part.thickness().value().toString());
    }
}
