package scantling.route.glue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.space.Axis;
import scantling.space.Side;

/**
 * A joint as it goes together.
 *
 * @param joint the joint
 * @param entering index of the part that enters
 * @param receiving index of the part that receives it
 * @param leaves the ways in which the entering part can leave the other; empty when only the shape of the wood decides
 * @param hollow the air in the receiving part that the other fills, when there is any
 * @param patch where they touch or share space
 * @param glued whether it is glued
 * @param minutes to spread and close it
 */
record Meeting(
        Joint joint,
        int entering,
        int receiving,
        Set<Side> leaves,
        Optional<Block> hollow,
        Optional<Block> patch,
        boolean glued,
        double minutes) {

    static List<Meeting> all(List<Part> parts, List<Joint> joints) {
        Map<String, Integer> index = new HashMap<>();
        parts.forEach(part -> index.put(part.path(), index.size()));
        Map<String, Long> alike = joints.stream().collect(Collectors.groupingBy(Meeting::alike, Collectors.counting()));
        List<Meeting> meetings = new ArrayList<>();
        for (Joint joint : joints) {
            int entering = index.getOrDefault(joint.entering(), -1);
            int receiving = index.getOrDefault(joint.receiving(), -1);
            if (joint.kind() != Joint.Kind.CARRIED && entering >= 0 && receiving >= 0) {
                meetings.add(of(joint, entering, receiving, parts, alike.getOrDefault(alike(joint), 1L)));
            }
        }
        return meetings;
    }

    private static String alike(Joint joint) {
        return joint.kind() + joint.entering();
    }

    private static Meeting of(Joint joint, int entering, int receiving, List<Part> parts, long alike) {
        Law law = Law.of(joint.kind());
        Part enters = parts.get(entering);
        Part receives = parts.get(receiving);
        Optional<Block> hollow = joint.overlap().map(Block::of);
        if (law.closes() == Law.Closes.RABBET) {
            hollow = hollow.map(air -> open(air, enters, receives));
        }
        boolean glued = law.glued() == Law.Glued.YES
                || law.glued() == Law.Glued.AT_CORNERS && !isLaidIn(enters, receives, alike);
        Optional<Block> patch = joint.overlap()
                .map(Block::of)
                .or(() -> Optional.of(Block.of(enters.box()).meet(Block.of(receives.box()))));
        return new Meeting(
                joint,
                entering,
                receiving,
                leaves(law, joint, enters, receives),
                hollow,
                patch,
                glued,
                law.spreadMinutes());
    }

    /** A rabbet is open to the side of the part nearest to what lies in it, through the thickness of that. */
    private static Block open(Block air, Part enters, Part receives) {
        Block wood = Block.of(receives.box());
        Axis through = enters.lie().thickness();
        long near = air.low()[through.ordinal()] - wood.low()[through.ordinal()];
        long far = wood.high()[through.ordinal()] - air.high()[through.ordinal()];
        Side side = Side.of(through, far <= near);
        return air.with(side, wood.plane(side));
    }

    /** A panel or back in rabbets of two parts or more that run along it; at a corner the board stands on the other's end. */
    private static boolean isLaidIn(Part enters, Part receives, long alike) {
        return alike >= 2 && enters.lie().thickness() != receives.lie().length();
    }

    private static Set<Side> leaves(Law law, Joint joint, Part enters, Part receives) {
        return switch (law.closes()) {
            case TENON -> along(enters, receives);
            case PINNED -> square(enters, receives);
            case MITRE -> joint.overlap().isPresent() ? mitred(joint, enters, receives) : square(enters, receives);
            case SHAPED, RABBET -> Set.of();
        };
    }

    /** Out of the side of the receiving part that the entering one stands out of, along its grain. */
    private static Set<Side> along(Part enters, Part receives) {
        Block a = Block.of(enters.box());
        Block b = Block.of(receives.box());
        Axis axis = enters.lie().length();
        Set<Side> sides = EnumSet.noneOf(Side.class);
        for (Side side : List.of(Side.of(axis, false), Side.of(axis, true))) {
            if (a.past(b, side) > Block.NOTHING) {
                sides.add(side);
            }
        }
        return sides.size() == 1 ? sides : square(enters, receives);
    }

    private static Set<Side> square(Part enters, Part receives) {
        return Block.of(receives.box())
                .touching(Block.of(enters.box()))
                .map(side -> (Set<Side>) EnumSet.of(side))
                .orElse(Set.of());
    }

    private static Set<Side> mitred(Joint joint, Part enters, Part receives) {
        Block air = Block.of(joint.overlap().orElseThrow());
        Set<Side> sides = EnumSet.noneOf(Side.class);
        for (Side side : Side.values()) {
            boolean itsBody = Block.of(enters.box()).past(air, side) > Block.NOTHING;
            boolean othersBody = Block.of(receives.box()).past(air, side) > Block.NOTHING;
            if (itsBody && !othersBody) {
                sides.add(side);
            } else if (othersBody && !itsBody) {
                sides.add(side.opposite());
            }
        }
        return sides;
    }

    /**
     * Whether closing along a direction rubs instead of presses: along the run of its channel, or across where the parts meet
     * face to face. Only what is glued or screwed wants to be pressed.
     */
    boolean rubs(Axis along) {
        if (!glued && !joint.kind().isScrewed()) {
            return false;
        }
        return hollow.isPresent()
                ? hollow.get().longest() == along
                : patch.map(face -> face.extent(along) > Block.NOTHING).orElse(false);
    }

    boolean joins(int one, int other) {
        return entering == one && receiving == other || entering == other && receiving == one;
    }
}
