package scantling.drawing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import scantling.construct.Assembly;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.space.Box;

/**
 * What a joint takes from a part, or leaves on it, from the part's marks.
 *
 * @param joint path of the joint
 * @param what in trade words: dado, tongue, mortise
 * @param along from the near end
 * @param across from the face edge
 * @param depth how deep it goes in, or how far it stands out
 * @param where the surface it opens on or stands out from
 * @param removed whether wood is taken away, rather than left standing
 */
public record Region(
        String joint, String what, Stretch along, Stretch across, Dim depth, Where where, boolean removed) {
    /** A stretch from a mark. @param from its near limit @param to its far limit */
    public record Stretch(Dim from, Dim to) {
        /** How long it is. */
        public Dim size() {
            return to.minus(from);
        }

        private boolean touchesOneEndOf(Stretch whole) {
            return from.equals(whole.from) != to.equals(whole.to);
        }
    }

    /** A surface of a part by its marks. */
    public enum Where {
        /** The marked side. */
        FACE_SIDE("face side"),
        /** The side across. */
        BACK("back"),
        /** The marked edge. */
        FACE_EDGE("face edge"),
        /** The edge across. */
        FAR_EDGE("far edge"),
        /** The marked end. */
        NEAR_END("near end"),
        /** The other end. */
        FAR_END("far end"),
        /** None of them alone. */
        INSIDE("inside");

        private final String words;

        Where(String words) {
            this.words = words;
        }

        /** At the bench. */
        public String words() {
            return words;
        }
    }

    /** All regions of one part, in the order of its joints. */
    public static List<Region> of(Assembly assembly, Part part) {
        return assembly.joints().stream()
                .filter(joint -> joint.entering().equals(part.path())
                        || joint.receiving().equals(part.path()))
                .flatMap(joint -> of(joint, part).stream())
                .toList();
    }

    /** Whether a part, its face side up and its face edge toward you, has its near end at the right. */
    public static boolean isNearEndRight(Part part) {
        return new Marked(part).isMirrored();
    }

    /** Whether it opens where one sees it with the face side up. */
    public boolean isSeen() {
        return !removed || where != Where.BACK && where != Where.INSIDE;
    }

    private static Optional<Region> of(Joint joint, Part part) {
        return joint.overlap()
                .map(overlap -> overlap.meet(part.box()))
                .filter(overlap -> !overlap.isEmpty())
                .map(overlap -> region(joint, part, overlap));
    }

    private static Region region(Joint joint, Part part, Box overlap) {
        boolean receives = joint.receiving().equals(part.path());
        Marked marked = new Marked(part);
        Stretch along = marked.along(overlap);
        Stretch across = marked.across(overlap);
        Reach through = new Reach(marked.through(overlap), marked.through(part.box()), Where.FACE_SIDE, Where.BACK);
        Reach wide = new Reach(across, marked.across(part.box()), Where.FACE_EDGE, Where.FAR_EDGE);
        Reach end = new Reach(along, marked.along(part.box()), Where.NEAR_END, Where.FAR_END);
        // A channel is deep into a face before it is long; a tongue stands out of an end before it is thick.
        Stream<Reach> order = receives ? Stream.of(through, wide, end) : Stream.of(end, wide, through);
        Reach deep = order.filter(Reach::isOpen).findFirst().orElse(through);
        return new Region(
                joint.path(),
                words(joint.kind(), receives),
                along,
                across,
                deep.part().size(),
                deep.where(),
                receives);
    }

    /** One direction of a region beside that of its part. */
    private record Reach(Stretch part, Stretch whole, Where near, Where far) {
        boolean isOpen() {
            return part.touchesOneEndOf(whole);
        }

        Where where() {
            return !isOpen() ? Where.INSIDE : part.from().equals(whole.from()) ? near : far;
        }
    }

    private static String words(Joint.Kind kind, boolean receives) {
        return switch (kind) {
            case MORTISE_AND_TENON, LOOSE_TENON -> receives ? "mortise" : "tenon";
            case TONGUE -> receives ? "groove" : "tongue";
            case DADO, GROOVE, RABBET -> receives ? kind.words() : "let into a " + kind.words();
            default -> kind.words();
        };
    }
}
