package scantling.construct;

import java.util.Arrays;
import scantling.piece.Element;
import scantling.space.Side;

/** Sides as a maker says them. */
final class Sides {
    private Sides() {}

    /** The side a field names. */
    static Side of(Element element, String key) {
        String word = element.text(key);
        return Arrays.stream(Side.values())
                .filter(side -> side.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("No side is called (%s).".formatted(word)));
    }

    /** A site for what an element builds: under the maker's name for it, or where it stands when it has none of its own. */
    static Site siteOf(Element element, Site site) {
        return element.name().equals(element.kind()) ? site : site.inside(element.name(), site.space());
    }
}
