package scantling.construct;

import java.util.List;
import java.util.Map;
import scantling.piece.Element;
import scantling.piece.Field;

/** Levelling feet under a case. */
final class Feet {
    private static final String PROFILE = "levelling foot";
    private static final int CORNERS = 4;
    static final Field FEET = Field.optional(
            "feet",
            Field.Kind.COUNT,
            "How many levelling feet stand under its bottom: four at the corners, further pairs evenly between.",
            "4");

    private Feet() {}

    static void under(Site in, Element said, Part bottom) {
        int count = said.findCount("feet").orElse(0);
        if (count > 0) {
            in.fitting(
                    "levelling feet",
                    PROFILE,
                    Math.max(CORNERS, count + count % 2),
                    "piece",
                    List.of(bottom),
                    Map.of(),
                    Map.of("profile", PROFILE));
        }
    }
}
