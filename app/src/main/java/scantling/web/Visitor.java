package scantling.web;

import io.javalin.http.Context;

/**
 * Who asks.
 *
 * @param id the desk, or the id of a paired device
 * @param name what the maker calls it
 * @param desk whether the request comes from this very machine
 */
public record Visitor(String id, String name, boolean desk) {
    static final Visitor DESK = new Visitor("desk", "the desk", true);
    /** Somebody on the network who is not paired. */
    static final Visitor STRANGER = new Visitor("", "", false);

    private static final String KEY = "scantling.visitor";

    void enter(Context ctx) {
        ctx.attribute(KEY, this);
    }

    static Visitor of(Context ctx) {
        Visitor visitor = ctx.attribute(KEY);
        return visitor == null ? STRANGER : visitor;
    }

    boolean isStranger() {
        return id.isEmpty();
    }
}
