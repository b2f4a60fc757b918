package scantling.route.glue;

import java.util.List;
import scantling.space.Side;

/**
 * One thing put to another.
 *
 * @param parts paths of the parts that are moved, together when there are several
 * @param onto paths of the parts they are put to
 * @param toward the way they are moved
 * @param joints paths of the joints that close
 */
public record Closing(List<String> parts, List<String> onto, Side toward, List<String> joints) {
    /** Takes its own copies. */
    public Closing {
        parts = List.copyOf(parts);
        onto = List.copyOf(onto);
        joints = List.copyOf(joints);
    }
}
