package scantling.construct;

import java.util.Arrays;
import scantling.piece.Element;
import scantling.piece.Field;

/** The ways to join boards at their ends, as one field that several elements share. */
final class Butting {
    private static final String KEY = "joint";

    private Butting() {}

    /** The field; being let in is usual. */
    static Field field(String says) {
        return Field.choice(KEY, says, "dado", "dowel", "biscuit", "butt and screw", "glued edge");
    }

    /** The field where nothing is let in. */
    static Field plain(String says, String... words) {
        return Field.choice(KEY, says, words);
    }

    /** Whether the end goes into the other board. */
    static boolean isHoused(Element element) {
        return element.is(KEY, "dado");
    }

    /** The joint chosen. */
    static Joint.Kind kind(Element element) {
        String words = element.text(KEY);
        return Arrays.stream(Joint.Kind.values())
                .filter(kind -> kind.words().equals(words))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("No joint is called (%s).".formatted(words)));
    }
}
