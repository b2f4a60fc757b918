package scantling.construct;

import java.util.List;
import java.util.Map;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.space.Side;

/** Bolts through a leg into a nut in the rail, as in beds that come apart. */
final class Bolts {
    private static final String PROFILE = "bed fitting";
    static final Field BOLTED = Field.optional(
            "bolted",
            Field.Kind.FLAG,
            "Whether bolts through the legs into nuts in the rails hold it, so that it comes apart; its joints stay"
                    + " dry.",
            "yes");

    private Bolts() {}

    /** Adds those of one joint. @param end the end of the rail */
    static void fix(Site in, Element said, Part rail, Part leg, Side end) {
        if (!said.flag("bolted")) {
            return;
        }
        int count = rail.width().compareTo(in.hardware().of(PROFILE, "two from")) >= 0 ? 2 : 1;
        in.fitting(
                "%s / %s bolts".formatted(in.nameOf(rail), end.word()),
                "bolt with cross-dowel nut",
                count,
                "set",
                List.of(rail, leg),
                Map.of(),
                Map.of("profile", PROFILE, "end", end.word()));
    }
}
