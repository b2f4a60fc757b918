package scantling.piece;

import java.util.List;
import java.util.Optional;

/**
 * One thing that can be said about an element: the reader checks it, the schema publishes it, the guide explains it.
 *
 * @param key as the maker writes it
 * @param kind what may stand there
 * @param usual what holds when nothing is said, as the maker would have written it; empty when the field is required or optional
 * @param required whether it must be said
 * @param says its meaning in one plain sentence
 * @param example as the maker would write it
 * @param choices the words allowed, for a choice
 * @param shape the fields inside, for a part or a list of parts
 * @param source who says the usual value; 'common practice' where nobody does
 */
public record Field(
        String key,
        Kind kind,
        Optional<String> usual,
        boolean required,
        String says,
        String example,
        List<String> choices,
        Optional<Shape> shape,
        String source) {
    /** What may stand in a field. */
    public enum Kind {
        /** A length or an expression. */
        LENGTH,
        /** A material, with a width behind it where the element needs one: {@code leg 40}. */
        STOCK,
        /** A whole number from 1. */
        COUNT,
        /** A whole number from 0. */
        COUNT_OR_NONE,
        /** One of the words allowed. */
        CHOICE,
        /** Free text. */
        TEXT,
        /** yes or no. */
        FLAG,
        /** A list of sizes: lengths, {@code rest}, {@code 2 shares}; or one count of equal ones, {@code 3 equal}. */
        PORTIONS,
        /** A list of lengths. */
        LENGTHS,
        /** A length for all sides, or by side: front, back, left, right, ends (left and right), sides (all four), top, bottom. */
        SIDES,
        /** How far something leans, by side as above: a length at its foot, or an angle off upright, {@code 8°}. */
        LEANS,
        /** An angle off upright, {@code 12°}. */
        ANGLE,
        /** Fields of its own. */
        PART,
        /** A list of parts with fields of their own. */
        PARTS,
        /** A list of corners, each {@code [along, across]}. */
        OUTLINE,
        /** What is built in the space: a list of elements. */
        STEPS
    }

    /** A field that must be said. */
    public static Field required(String key, Kind kind, String says, String example) {
        return new Field(key, kind, Optional.empty(), true, says, example, List.of(), Optional.empty(), "");
    }

    /** A field that may be left out, and then is not there. */
    public static Field optional(String key, Kind kind, String says, String example) {
        return new Field(key, kind, Optional.empty(), false, says, example, List.of(), Optional.empty(), "");
    }

    /** A field that has a usual value when left out. */
    public static Field usual(String key, Kind kind, String usual, String source, String says) {
        return new Field(key, kind, Optional.of(usual), false, says, usual, List.of(), Optional.empty(), source);
    }

    /** One of several words; the first is the usual one. */
    public static Field choice(String key, String says, String... words) {
        return new Field(
                key, Kind.CHOICE, Optional.of(words[0]), false, says, words[0], List.of(words), Optional.empty(), "");
    }

    /** Fields inside a field; may be left out. */
    public static Field part(String key, Kind kind, Shape shape, String says, String example) {
        return new Field(key, kind, Optional.empty(), false, says, example, List.of(), Optional.of(shape), "");
    }

    /** The same field, but it must be said. */
    public Field butRequired() {
        return new Field(key, kind, Optional.empty(), true, says, example, choices, shape, source);
    }
}
