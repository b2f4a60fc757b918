package scantling.piece;

import java.util.Collection;

/** The nearest right spelling of a name. */
public final class Spelling {
    private Spelling() {}

    /** What was probably meant, as words to put behind a message: {@code  Maybe "length"?}; nothing when all are far off. */
    public static String maybe(String written, Collection<String> allowed) {
        return Suggestions.nearest(written, allowed)
                .map(" Maybe \"%s\"?"::formatted)
                .orElse("");
    }
}
