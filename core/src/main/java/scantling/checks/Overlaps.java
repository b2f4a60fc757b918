package scantling.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Joint;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Extent;
import scantling.space.Side;
import scantling.space.Solid;

/** That no two parts share wood but where a joint between exactly those two says so. */
final class Overlaps {
    private final Words words;
    private final List<Joint> joints;

    Overlaps(Assembly assembly) {
        words = Words.of(assembly);
        joints = assembly.joints();
    }

    List<Finding> check(List<PlacedPart> parts) {
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            for (int j = i + 1; j < parts.size(); j++) {
                findOverlap(parts.get(i), parts.get(j)).ifPresent(findings::add);
            }
        }
        return findings;
    }

    private Optional<Finding> findOverlap(PlacedPart one, PlacedPart two) {
        return one.isPlain() && two.isPlain() ? findExact(one, two) : findShaped(one, two);
    }

    private Optional<Finding> findExact(PlacedPart one, PlacedPart two) {
        if (!shareSpace(one.box(), two.box())) {
            return Optional.empty();
        }
        Box shared = one.box().meet(two.box());
        if (between(one, two).stream().anyMatch(allowed -> covers(allowed, shared))) {
            return Optional.empty();
        }
        List<Dim> numbers = List.of(shared.extent(Axis.ACROSS), shared.extent(Axis.DEEP), shared.extent(Axis.UP));
        return Optional.of(finding(one, two, numbers));
    }

    /** Compared by planes alone, because most pairs are apart and need no sums made for them. */
    private static boolean shareSpace(Box one, Box two) {
        for (Side side : Side.values()) {
            int compared = one.plane(side).compareTo(two.plane(side.opposite()));
            if (side.isFar() ? compared <= 0 : compared >= 0) {
                return false;
            }
        }
        return true;
    }

    private static boolean covers(Box allowed, Box shared) {
        for (Side side : Side.values()) {
            int compared = shared.plane(side).compareTo(allowed.plane(side));
            if (side.isFar() ? compared > 0 : compared < 0) {
                return false;
            }
        }
        return true;
    }

    private Optional<Finding> findShaped(PlacedPart one, PlacedPart two) {
        return one.solid()
                .findShared(two.solid())
                .filter(shared -> between(one, two).stream().noneMatch(allowed -> covers(allowed, shared, one, two)))
                .map(shared -> finding(one, two, sizes(shared)));
    }

    /** A joint's box is told as the parts stand before turning, so it may be turned with either of them. */
    private static boolean covers(Box allowed, Extent shared, PlacedPart one, PlacedPart two) {
        return shared.isWithin(Extent.of(allowed), Solid.TOLERANCE)
                || shared.isWithin(turnedWith(one, allowed), Solid.TOLERANCE)
                || shared.isWithin(turnedWith(two, allowed), Solid.TOLERANCE);
    }

    private static Extent turnedWith(PlacedPart part, Box allowed) {
        return Solid.of(
                        allowed,
                        part.part().lie(),
                        Optional.empty(),
                        part.part().turn())
                .extent();
    }

    private List<Box> between(PlacedPart one, PlacedPart two) {
        return joints.stream()
                .filter(joint -> joins(joint, one.path(), two.path()))
                .flatMap(joint -> joint.overlap().stream())
                .filter(box -> !box.isEmpty())
                .toList();
    }

    static boolean joins(Joint joint, String one, String two) {
        return (joint.entering().equals(one) && joint.receiving().equals(two))
                || (joint.entering().equals(two) && joint.receiving().equals(one));
    }

    private static List<Dim> sizes(Extent shared) {
        return List.of(
                shared("width", shared.right() - shared.left()),
                shared("depth", shared.back() - shared.front()),
                shared("height", shared.top() - shared.bottom()));
    }

    private static Dim shared(String what, double mm) {
        return Dim.worked(Words.millimetres(mm), what + " of the space that both solids hold");
    }

    private Finding finding(PlacedPart one, PlacedPart two, List<Dim> numbers) {
        String sizes = "%s wide, %s deep, %s high"
                .formatted(
                        words.length(numbers.get(0).value()),
                        words.length(numbers.get(1).value()),
                        words.length(numbers.get(2).value()));
        boolean joined = joints.stream().anyMatch(joint -> joins(joint, one.path(), two.path()));
        String why = joined ? "more than their joint allows for" : "and no joint between them says so";
        return Words.stop(
                one.path(),
                "%s and %s share wood (%s), %s.".formatted(one.path(), two.path(), sizes, why),
                numbers,
                "Move or shorten one of them, or let one into the other.");
    }
}
