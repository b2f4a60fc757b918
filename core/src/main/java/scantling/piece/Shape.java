package scantling.piece;

import java.util.List;
import java.util.Optional;

/**
 * What can be said about an element.
 *
 * @param key the word it goes by in a list of elements
 * @param says what it does, in one plain sentence
 * @param shortField the field meant when a bare value stands in place of the fields, as in {@code top: oak}; empty when none
 * @param fields in the order a maker would say them; {@code name} is always allowed besides
 */
public record Shape(String key, String says, Optional<String> shortField, List<Field> fields) {
    /** Takes its own copy. */
    public Shape {
        fields = List.copyOf(fields);
    }

    /** An element whose fields must be named. */
    public static Shape of(String key, String says, Field... fields) {
        return new Shape(key, says, Optional.empty(), List.of(fields));
    }

    /** An element that may be said with one bare value. */
    public static Shape shortly(String key, String shortField, String says, Field... fields) {
        return new Shape(key, says, Optional.of(shortField), List.of(fields));
    }
}
