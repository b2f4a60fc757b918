package scantling.piece;

import java.util.List;
import java.util.Map;
import scantling.measure.Dim;
import scantling.space.Outline;
import scantling.space.Side;

/** What stands in a field, read and checked. */
public sealed interface Value {
    /** A length. */
    record OfLength(Dim length) implements Value {}

    /** A material, perhaps with a width. */
    record OfStock(Stock stock) implements Value {}

    /** A whole number. */
    record OfCount(int count) implements Value {}

    /** A chosen word or free text. */
    record OfText(String text) implements Value {}

    /** Yes or no. */
    record OfFlag(boolean yes) implements Value {}

    /** Sizes that a space is divided into. */
    record OfPortions(List<Portion> portions) implements Value {}

    /** Several lengths. */
    record OfLengths(List<Dim> lengths) implements Value {}

    /** Lengths by side; a side not said is not there. */
    record OfSides(Map<Side, Dim> sides) implements Value {}

    /** How far something leans, by side; a side not said is not there. */
    record OfLeans(Map<Side, Lean> sides) implements Value {}

    /** An angle in degrees. */
    record OfAngle(double degrees) implements Value {}

    /** Fields of its own. */
    record OfPart(Element part) implements Value {}

    /** Several, each with fields of its own; also the elements built in a space. */
    record OfParts(List<Element> parts) implements Value {}

    /** A polygon. */
    record OfOutline(Outline outline) implements Value {}
}
