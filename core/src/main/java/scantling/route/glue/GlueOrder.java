package scantling.route.glue;

import java.util.List;
import scantling.construct.Assembly;
import scantling.construct.Finding;

/**
 * An order in which a piece can be put together.
 *
 * @param sessions glue-ups and puttings together, each after those that make its sub-assemblies
 * @param fastened what is then screwed to what, in order
 * @param findings what is trapped, and what the glue does not stay open for
 */
public record GlueOrder(List<Session> sessions, List<Session> fastened, List<Finding> findings) {
    /** Nothing to put together. */
    public static final GlueOrder NONE = new GlueOrder(List.of(), List.of(), List.of());

    /** Takes its own copies. */
    public GlueOrder {
        sessions = List.copyOf(sessions);
        fastened = List.copyOf(fastened);
        findings = List.copyOf(findings);
    }

    /** Works out an order. */
    public static GlueOrder of(Assembly assembly, Glue glue) {
        return new Ordering(assembly, glue).order();
    }
}
