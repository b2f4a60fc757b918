package scantling.checks.frame;

import java.util.List;
import java.util.Set;

/**
 * A frame ready to be solved.
 *
 * @param nodes where they are
 * @param members what holds them
 * @param held movements that cannot be, each six times its node and which of the six
 */
record Frame(List<Vector> nodes, List<Member> members, Set<Integer> held) {
    Frame {
        nodes = List.copyOf(nodes);
        members = List.copyOf(members);
        held = Set.copyOf(held);
    }

    int freedoms() {
        return nodes.size() * Member.FREEDOMS;
    }

    Frame without(List<? extends Member> gone) {
        return new Frame(
                nodes, members.stream().filter(member -> !gone.contains(member)).toList(), held);
    }
}
