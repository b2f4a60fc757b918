package scantling.route.glue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import scantling.construct.Part;
import scantling.measure.Length;
import scantling.space.Axis;

/** What closing some joints at once along one direction takes: minutes, clamps, their length. */
final class Press {
    private static final double SQUARE_METRE = 1e20;

    private final List<Block> boxes;
    private final List<Meeting> meetings;

    Press(List<Part> parts, List<Meeting> meetings) {
        boxes = parts.stream().map(part -> Block.of(part.box())).toList();
        this.meetings = meetings;
    }

    /** The joints between two sets of parts. */
    List<Meeting> between(BitSet some, BitSet others) {
        return meetings.stream()
                .filter(meeting -> some.get(meeting.entering()) && others.get(meeting.receiving())
                        || some.get(meeting.receiving()) && others.get(meeting.entering()))
                .toList();
    }

    static double minutes(List<Meeting> closing) {
        return closing.stream().mapToDouble(Meeting::minutes).sum();
    }

    static List<Meeting> glued(List<Meeting> closing) {
        return closing.stream().filter(Meeting::glued).toList();
    }

    /** One clamp presses all joints in its line, so the plane of joints that wants most clamps says how many. */
    int clamps(List<Meeting> closing, Axis along) {
        Map<Long, Integer> byPlane = new HashMap<>();
        for (Meeting meeting : glued(closing)) {
            long plane =
                    meeting.patch().map(patch -> patch.low()[along.ordinal()]).orElse(0L);
            byPlane.merge(plane, across(meeting, along), Integer::sum);
        }
        return byPlane.values().stream().mapToInt(Integer::intValue).max().orElse(0);
    }

    private int across(Meeting meeting, Axis along) {
        long spacing = Figures.CLAMP_SPACING.tenthNanometres();
        return (int) Math.max(1, (longest(meeting, along) + spacing - 1) / spacing);
    }

    private static long longest(Meeting meeting, Axis along) {
        long longest = 0;
        for (Axis axis : Axis.values()) {
            if (axis != along) {
                longest = Math.max(
                        longest,
                        meeting.patch().map(patch -> patch.extent(axis)).orElse(0L));
            }
        }
        return longest;
    }

    boolean wantsCauls(List<Meeting> closing, Axis along) {
        return glued(closing).stream()
                .anyMatch(meeting -> longest(meeting, along) > Figures.CAUL_FROM.tenthNanometres());
    }

    Length clampLength(BitSet parts, Axis along) {
        Block whole = boxes.get(parts.nextSetBit(0));
        for (int part : parts.stream().toArray()) {
            whole = whole.around(boxes.get(part));
        }
        return new Length(whole.extent(along)).plus(Figures.JAW_ROOM);
    }

    /** Square metres of glued joint: the largest face of each patch. */
    static double square(List<Meeting> closing) {
        double sum = 0;
        for (Meeting meeting : glued(closing)) {
            List<Double> extents = new ArrayList<>();
            for (Axis axis : Axis.values()) {
                extents.add(meeting.patch()
                        .map(patch -> (double) patch.extent(axis))
                        .orElse(0.0));
            }
            extents.sort(Double::compare);
            sum += extents.get(1) * extents.get(2) / SQUARE_METRE;
        }
        return sum;
    }
}
