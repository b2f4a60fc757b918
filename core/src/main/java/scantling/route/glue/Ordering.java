package scantling.route.glue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.space.Side;

/** Puts a whole piece in order: what is glued, each glued thing by itself, then what is screwed to what. */
final class Ordering {
    private final Assembly assembly;
    private final Glue glue;
    private final List<Part> parts;
    private final List<Meeting> meetings;
    private final Freedom freedom;
    private final Press press;
    private final List<Finding> findings = new ArrayList<>();

    Ordering(Assembly assembly, Glue glue) {
        this.assembly = assembly;
        this.glue = glue;
        parts = assembly.parts();
        meetings = Meeting.all(parts, assembly.joints());
        freedom = new Freedom(parts, meetings);
        press = new Press(parts, meetings);
    }

    GlueOrder order() {
        List<BitSet> bodies = bodies();
        Writer writer = new Writer(assembly, press, bodies);
        List<Session> sessions = new ArrayList<>();
        Solver gluing = new Solver(freedom, press, glue.assemblyMinutes(), Groups.byPart(parts.size(), singles()));
        for (BitSet body : bodies) {
            Tree tree = gluing.solve(body);
            findings.addAll(Said.traps(tree, parts, meetings, freedom));
            sessions.addAll(writer.write(tree, gluing));
        }
        sessions.forEach(session -> findings.addAll(Said.overlong(session, glue)));
        List<Session> fastened = new ArrayList<>();
        Solver fastening = new Solver(freedom, press, Double.POSITIVE_INFINITY, Groups.byPart(parts.size(), bodies));
        for (BitSet cluster : Groups.joinedBy(parts.size(), meetings, meeting -> true)) {
            Tree tree = fastening.solve(cluster);
            findings.addAll(Said.traps(tree, parts, meetings, freedom));
            fastened.addAll(writer.write(tree, fastening));
        }
        return new GlueOrder(sessions, fastened, findings);
    }

    private List<BitSet> singles() {
        return IntStream.range(0, parts.size()).mapToObj(Ordering::single).toList();
    }

    private static BitSet single(int part) {
        BitSet one = new BitSet();
        one.set(part);
        return one;
    }

    /** What is one thing once its glue has set; what is only laid into such a thing, and can leave it, is a thing by itself. */
    private List<BitSet> bodies() {
        List<BitSet> bodies = new ArrayList<>();
        List<BitSet> held = Groups.joinedBy(
                parts.size(), meetings, meeting -> !meeting.joint().kind().isScrewed());
        for (BitSet group : held) {
            BitSet rest = (BitSet) group.clone();
            boolean left = true;
            while (left) {
                left = false;
                for (int part : rest.stream().toArray()) {
                    if (rest.cardinality() > 1 && isLoose(part, rest)) {
                        rest.clear(part);
                        bodies.add(single(part));
                        left = true;
                    }
                }
            }
            bodies.add(rest);
        }
        bodies.sort((a, b) -> Integer.compare(a.nextSetBit(0), b.nextSetBit(0)));
        return bodies;
    }

    private boolean isLoose(int part, BitSet among) {
        boolean glued = meetings.stream()
                .filter(meeting -> meeting.entering() == part || meeting.receiving() == part)
                .anyMatch(Meeting::glued);
        if (glued) {
            return false;
        }
        for (Side side : Side.values()) {
            if (freedom.inTheWay(part, side, among).isEmpty()) {
                return true;
            }
        }
        return false;
    }
}
