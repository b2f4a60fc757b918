package scantling.route.glue;

import java.util.EnumMap;
import java.util.Map;
import scantling.construct.Joint;
import scantling.timber.Table;

/**
 * How joints of one kind go together.
 *
 * @param closes which way they close
 * @param glued whether they are glued
 * @param spreadMinutes to spread and close one joint
 * @param source who says so
 */
record Law(Closes closes, Glued glued, double spreadMinutes, String source) {
    private static final Map<Joint.Kind, Law> BY_KIND = read();

    /** Which way a joint closes. */
    enum Closes {
        /** Along the tenon. */
        TENON,
        /** Square to the faces that meet. */
        PINNED,
        /** Any way in which no wood is in the way. */
        SHAPED,
        /** The same; its channel is open on the side nearest to what lies in it. */
        RABBET,
        /** Away from the plane of the mitre. */
        MITRE
    }

    /** Whether a joint is glued. */
    enum Glued {
        YES,
        NO,
        /** Glued at a corner, loose where a panel lies in its frame. */
        AT_CORNERS
    }

    static Law of(Joint.Kind kind) {
        Law law = BY_KIND.get(kind);
        if (law == null) {
            throw new IllegalStateException("Nothing is known of how a (%s) closes.".formatted(kind.words()));
        }
        return law;
    }

    private static Map<Joint.Kind, Law> read() {
        Table table = Table.read("route/joint-work.csv");
        Map<Joint.Kind, Law> laws = new EnumMap<>(Joint.Kind.class);
        for (Joint.Kind kind : Joint.Kind.values()) {
            if (kind == Joint.Kind.AUTO) {
                continue; // settled by the rules of joinery before anything is glued
            }
            Table.Row row = table.getRow("kind", kind.words());
            Closes closes = switch (row.text("closes")) {
                case "tenon" -> Closes.TENON;
                case "pinned" -> Closes.PINNED;
                case "rabbet" -> Closes.RABBET;
                case "mitre" -> Closes.MITRE;
                default -> Closes.SHAPED;
            };
            Glued glued = switch (row.text("glued")) {
                case "yes" -> Glued.YES;
                case "no" -> Glued.NO;
                default -> Glued.AT_CORNERS;
            };
            laws.put(kind, new Law(closes, glued, row.number("spread_min"), row.source()));
        }
        return laws;
    }
}
