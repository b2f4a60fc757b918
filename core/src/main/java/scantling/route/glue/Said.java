package scantling.route.glue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.space.Side;

/** What is to be said of an order: what is trapped, and what the glue does not stay open for. */
final class Said {
    private Said() {}

    static List<Finding> traps(Tree tree, List<Part> parts, List<Meeting> meetings, Freedom freedom) {
        List<Finding> findings = new ArrayList<>();
        for (Tree.Trap trap : tree.allTraps()) {
            String part = parts.get(trap.part()).path();
            List<String> ways = meetings.stream()
                    .filter(meeting -> meeting.entering() == trap.part() || meeting.receiving() == trap.part())
                    .map(meeting -> way(trap.part(), meeting, parts, freedom))
                    .toList();
            findings.add(new Finding(
                    Finding.Severity.STOP,
                    part,
                    "%s is trapped: no straight way in is left for it once what it joins stands. %s"
                            .formatted(part, String.join("; ", ways) + "."),
                    List.of(),
                    "every joint must still close in the order of glue-up; worked out from the way each joint closes",
                    "Let its joints close the same way, give it a joint that can be fitted last (a loose tenon from"
                            + " outside, a channel open at one end), or make it part of an earlier sub-assembly."));
        }
        return findings;
    }

    private static String way(int part, Meeting meeting, List<Part> parts, Freedom freedom) {
        int other = meeting.entering() == part ? meeting.receiving() : meeting.entering();
        BitSet only = new BitSet();
        only.set(other);
        String sides = Stream.of(Side.values())
                .filter(side -> freedom.inTheWay(part, side, only).isEmpty())
                .map(Side::word)
                .collect(Collectors.joining(" or "));
        return "from %s it comes off toward the %s"
                .formatted(parts.get(other).path(), sides.isEmpty() ? "nowhere" : sides)
                .replace("the nowhere", "nowhere");
    }

    static List<Finding> overlong(Session session, Glue glue) {
        if (!session.isGlueUp() || session.minutes() <= glue.assemblyMinutes()) {
            return List.of();
        }
        return List.of(new Finding(
                Finding.Severity.CAUTION,
                session.closings().get(session.closings().size() - 1).parts().get(0),
                "Gluing %s closes %d joints at once, about %.0f minutes; %s allows %.0f from the first spread to the last clamp."
                        .formatted(
                                session.name(),
                                session.glued().size(),
                                session.minutes(),
                                glue.name(),
                                glue.assemblyMinutes()),
                List.of(),
                glue.source(),
                "Rehearse it dry, take a glue that stays open longer, or have a second pair of hands."));
    }
}
