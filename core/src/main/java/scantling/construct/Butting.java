package scantling.construct;

import java.util.Arrays;
import java.util.Set;
import scantling.piece.Element;
import scantling.piece.Field;

/** The ways to join boards at their ends, as one field that several elements share. */
final class Butting {
    private static final String KEY = "joint";
    private static final Set<Joint.Kind> HOUSED = Set.of(Joint.Kind.DADO, Joint.Kind.STOPPED_DADO, Joint.Kind.TONGUE);

    private Butting() {}

    /** The field; being let in is usual. */
    static Field field(String says) {
        return Field.choice(
                KEY,
                says,
                "dado",
                "stopped dado",
                "tongue and groove",
                "dowel",
                "biscuit",
                "butt and screw",
                "pocket screw",
                "glued edge",
                "auto");
    }

    /** The field where nothing is let in. */
    static Field plain(String says, String... words) {
        return Field.choice(KEY, says, words);
    }

    /** Whether the end goes into the other board. */
    static boolean isHoused(Element element) {
        return HOUSED.contains(kind(element));
    }

    /** How its end goes into the other board, for one that does; a plain channel for any other. */
    static Joint.Kind housed(Element element) {
        return isHoused(element) ? kind(element) : Joint.Kind.DADO;
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
