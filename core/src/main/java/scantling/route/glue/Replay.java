package scantling.route.glue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import scantling.construct.Assembly;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.space.Axis;
import scantling.space.Side;

/**
 * Puts a piece together again part by part, as an order says, and watches for wood that meets wood on the way: every moved
 * part is stopped wherever something changes on its path and compared with what stands. It uses none of the search's graphs.
 */
public final class Replay {
    private final Map<String, Block> boxes = new HashMap<>();
    private final List<Meeting> meetings;
    private final List<Part> parts;
    private final Map<String, Set<String>> things = new HashMap<>();
    private final List<String> problems = new ArrayList<>();

    private Replay(Assembly assembly) {
        parts = assembly.parts();
        meetings = Meeting.all(parts, assembly.joints());
        for (Part part : parts) {
            boxes.put(part.path(), Block.of(part.box()));
            things.put(part.path(), new LinkedHashSet<>(Set.of(part.path())));
        }
    }

    /** Everything that goes wrong on the way; nothing when the piece can be put together so. */
    public static List<String> problems(Assembly assembly, GlueOrder order) {
        Replay replay = new Replay(assembly);
        order.sessions().forEach(replay::session);
        order.fastened().forEach(replay::session);
        replay.everyJointIsClosed();
        return List.copyOf(replay.problems);
    }

    private void session(Session session) {
        session.closings().forEach(this::close);
        Set<Set<String>> made = new HashSet<>();
        session.parts().forEach(part -> made.add(thingOf(part)));
        if (made.size() != 1) {
            problems.add("After \"%s\" its parts are not one thing.".formatted(session.name()));
        }
    }

    private void close(Closing closing) {
        Set<String> moved = thing(closing.parts());
        Set<String> still = new TreeSet<>();
        closing.onto().forEach(part -> still.addAll(thingOf(part)));
        if (!new TreeSet<>(closing.parts()).equals(new TreeSet<>(moved))) {
            problems.add("%s cannot be moved without all it is one with.".formatted(closing.parts()));
        }
        for (String one : moved) {
            for (String other : still) {
                path(one, other, closing.toward());
            }
        }
        Set<String> whole = new LinkedHashSet<>(still);
        whole.addAll(moved);
        whole.forEach(part -> things.put(part, whole));
    }

    private Block box(String part) {
        return Objects.requireNonNull(boxes.get(part), part);
    }

    private Set<String> thingOf(String part) {
        return Objects.requireNonNull(things.get(part), part);
    }

    private Set<String> thing(List<String> some) {
        Set<String> all = new TreeSet<>();
        some.forEach(part -> all.addAll(thingOf(part)));
        return all;
    }

    /** Moves one part to its place from far off, and stops between all places where a plane of one passes a plane of the other. */
    private void path(String one, String other, Side toward) {
        List<Meeting> joints = meetings.stream()
                .filter(meeting -> meeting.joins(index(one), index(other)))
                .toList();
        for (Meeting joint : joints) {
            boolean enters = parts.get(joint.entering()).path().equals(one);
            if (!joint.leaves().isEmpty() && !joint.leaves().contains(enters ? toward.opposite() : toward)) {
                problems.add("%s does not close toward the %s."
                        .formatted(joint.joint().path(), toward.word()));
            }
        }
        if (joints.stream().anyMatch(joint -> !joint.leaves().isEmpty())) {
            return;
        }
        List<Long> stops = stops(one, other, joints, toward.axis());
        for (int k = 1; k < stops.size(); k++) {
            long at = (stops.get(k - 1) + stops.get(k)) / 2;
            if (!isClear(one, other, toward, at)) {
                problems.add("%s meets %s on its way toward the %s.".formatted(one, other, toward.word()));
                return;
            }
        }
    }

    private int index(String path) {
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i).path().equals(path)) {
                return i;
            }
        }
        throw new IllegalArgumentException("No part is called (%s).".formatted(path));
    }

    /** Distances from its place at which something changes, from none to clear. */
    private List<Long> stops(String one, String other, List<Meeting> joints, Axis axis) {
        List<Long> fixed = new ArrayList<>();
        List<Long> moving = new ArrayList<>();
        planes(box(one), axis, moving);
        planes(box(other), axis, fixed);
        joints.forEach(joint -> joint.hollow().ifPresent(hollow -> {
            planes(hollow, axis, fixed);
            planes(hollow, axis, moving);
        }));
        hollows(one).forEach(hollow -> planes(hollow, axis, moving));
        hollows(other).forEach(hollow -> planes(hollow, axis, fixed));
        TreeSet<Long> stops = new TreeSet<>(Set.of(0L));
        for (long a : fixed) {
            for (long b : moving) {
                stops.add(Math.abs(a - b));
            }
        }
        return List.copyOf(stops);
    }

    private static void planes(Block block, Axis axis, List<Long> into) {
        into.add(block.low()[axis.ordinal()]);
        into.add(block.high()[axis.ordinal()]);
    }

    /** What is shared at a distance must lie in the air of hollows: of the standing part, or of the moved one and moved with it. */
    private boolean isClear(String one, String other, Side toward, long distance) {
        long by = toward.isFar() ? -distance : distance;
        Block shared = box(one).moved(toward.axis(), by).meet(box(other));
        if (!shared.isWood()) {
            return true;
        }
        List<Block> left = List.of(shared);
        for (Block hollow : hollows(other)) {
            left = left.stream()
                    .flatMap(block -> block.without(hollow).stream())
                    .toList();
        }
        for (Block hollow : hollows(one)) {
            Block air = hollow.moved(toward.axis(), by);
            left = left.stream().flatMap(block -> block.without(air).stream()).toList();
        }
        return left.isEmpty() || sharedAtRest(one, other);
    }

    /** Shaped and turned parts are told by their boxes, which may share space where their wood does not. */
    private boolean sharedAtRest(String one, String other) {
        return parts.get(index(one)).turn().isPresent()
                || parts.get(index(other)).turn().isPresent();
    }

    private List<Block> hollows(String part) {
        return meetings.stream()
                .filter(meeting -> parts.get(meeting.receiving()).path().equals(part))
                .flatMap(meeting -> meeting.hollow().stream())
                .toList();
    }

    private void everyJointIsClosed() {
        for (Meeting meeting : meetings) {
            Joint joint = meeting.joint();
            if (!thingOf(joint.entering()).equals(thingOf(joint.receiving()))) {
                problems.add("%s is never closed.".formatted(joint.path()));
            }
        }
    }
}
