package scantling.piece;

import java.util.List;
import java.util.Optional;

/** All elements that a piece may be built of. */
public record Language(List<Shape> elements) {
    /** Takes its own copy. */
    public Language {
        elements = List.copyOf(elements);
    }

    /** The element of that word. */
    public Optional<Shape> find(String key) {
        return elements.stream().filter(shape -> shape.key().equals(key)).findFirst();
    }
}
