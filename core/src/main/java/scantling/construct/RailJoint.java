package scantling.construct;

import java.util.Map;
import scantling.measure.Dim;
import scantling.piece.Element;
import scantling.piece.Field;

/**
 * How rails are joined to stiles and legs.
 *
 * @param kind as chosen
 * @param tenon how far a tenon, loose tenon or dowel goes in
 * @param through how far it is through what it goes into
 */
record RailJoint(Joint.Kind kind, Dim tenon, Dim through) {
    private static final String TENON_LENGTH = "tenon length";

    /** What can be said of it. */
    static Field[] fields(String... words) {
        return new Field[] {
            Butting.plain("How the rails are joined to what they stand between.", words),
            Field.optional(
                    TENON_LENGTH,
                    Field.Kind.LENGTH,
                    "How far a tenon goes in; 25 mm when not said, or less where that leaves too little wood behind"
                            + " it.",
                    "30 mm")
        };
    }

    /** As said, or as long as is usual and leaves wood behind it. @param through how far it is through what it goes into */
    static RailJoint of(Site site, Element said, Dim through) {
        return of(site, said, through, through);
    }

    /** The same where something else is in the way. @param room how far a tenon can go before it meets that */
    static RailJoint of(Site site, Element said, Dim through, Dim room) {
        Joint.Kind kind = Butting.kind(said);
        Dim behind = through.minus(Fittings.of("tenon", "wood behind"));
        Dim usual = Dim.smallerOf(Fittings.of("tenon", "length"), behind, room);
        Dim tenon = said.findLength(TENON_LENGTH).orElse(usual);
        if (tenon.compareTo(room) > 0 || !tenon.value().isPositive()) {
            site.problem(
                    said.span(),
                    "A tenon %s long has only %s to go into.".formatted(site.say(tenon), site.say(room)),
                    "Make the tenon shorter, or what it goes into wider.");
            return new RailJoint(kind, Dim.ZERO, through);
        }
        return new RailJoint(kind, tenon, through);
    }

    /** What the joint adds to the rail at each end. */
    Dim adds() {
        return switch (kind) {
            case MORTISE_AND_TENON, HAUNCHED -> tenon;
            case HALF_LAP, BRIDLE -> through;
            default -> Dim.ZERO;
        };
    }

    /** What is known of it here; how thick it is the rules of joinery say. */
    Map<String, Dim> sizes() {
        return Map.of("length", tenon);
    }
}
