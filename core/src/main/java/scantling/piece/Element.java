package scantling.piece;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import scantling.measure.Dim;
import scantling.measure.Span;
import scantling.space.Outline;
import scantling.space.Side;

/**
 * One element as the maker said it, with the usual values filled in. The reader has checked it against its
 * {@link Shape}: asking for a field that the shape does not promise is a fault of the element's code and throws.
 *
 * @param kind the word it goes by
 * @param name the maker's own name for it, or else its kind
 * @param values by field; a field that was left out and has no usual value is not there
 * @param span where it stands
 */
public record Element(String kind, String name, Map<String, Value> values, Span span) {
    /** Takes its own copy. */
    public Element {
        values = Map.copyOf(values);
    }

    /** Whether the field was said or has a usual value. */
    public boolean has(String key) {
        return values.containsKey(key);
    }

    /** A length. */
    public Dim length(String key) {
        return get(key, Value.OfLength.class).length();
    }

    /** A length that may be left out. */
    public Optional<Dim> findLength(String key) {
        return find(key, Value.OfLength.class).map(Value.OfLength::length);
    }

    /** A material with perhaps a width. */
    public Stock stock(String key) {
        return get(key, Value.OfStock.class).stock();
    }

    /** A material that may be left out. */
    public Optional<Stock> findStock(String key) {
        return find(key, Value.OfStock.class).map(Value.OfStock::stock);
    }

    /** A whole number. */
    public int count(String key) {
        return get(key, Value.OfCount.class).count();
    }

    /** A whole number that may be left out. */
    public Optional<Integer> findCount(String key) {
        return find(key, Value.OfCount.class).map(Value.OfCount::count);
    }

    /** A chosen word or free text. */
    public String text(String key) {
        return get(key, Value.OfText.class).text();
    }

    /** A text that may be left out. */
    public Optional<String> findText(String key) {
        return find(key, Value.OfText.class).map(Value.OfText::text);
    }

    /** Whether a choice is that word. */
    public boolean is(String key, String word) {
        return findText(key).filter(word::equals).isPresent();
    }

    /** Yes or no; no when left out. */
    public boolean flag(String key) {
        return find(key, Value.OfFlag.class).map(Value.OfFlag::yes).orElse(false);
    }

    /** The sizes that a space is divided into. */
    public List<Portion> portions(String key) {
        return get(key, Value.OfPortions.class).portions();
    }

    /** Several lengths; none when left out. */
    public List<Dim> lengths(String key) {
        return find(key, Value.OfLengths.class).map(Value.OfLengths::lengths).orElse(List.of());
    }

    /** The length for a side; nothing at all when not said. */
    public Dim onSide(String key, Side side) {
        return find(key, Value.OfSides.class)
                .map(sides -> sides.sides().getOrDefault(side, Dim.ZERO))
                .orElse(Dim.ZERO);
    }

    /** An angle in degrees that may be left out. */
    public OptionalDouble findAngle(String key) {
        Optional<Value.OfAngle> angle = find(key, Value.OfAngle.class);
        return angle.isPresent() ? OptionalDouble.of(angle.get().degrees()) : OptionalDouble.empty();
    }

    /** How far something leans toward a side, if at all. */
    public Optional<Lean> findLean(String key, Side side) {
        return find(key, Value.OfLeans.class)
                .flatMap(leans -> Optional.ofNullable(leans.sides().get(side)));
    }

    /** Fields inside a field. */
    public Element part(String key) {
        return get(key, Value.OfPart.class).part();
    }

    /** Fields inside a field that may be left out. */
    public Optional<Element> findPart(String key) {
        return find(key, Value.OfPart.class).map(Value.OfPart::part);
    }

    /** Several, each with fields of its own, or the elements built in a space; none when left out. */
    public List<Element> parts(String key) {
        return find(key, Value.OfParts.class).map(Value.OfParts::parts).orElse(List.of());
    }

    /** A polygon that may be left out. */
    public Optional<Outline> findOutline(String key) {
        return find(key, Value.OfOutline.class).map(Value.OfOutline::outline);
    }

    private <T extends Value> T get(String key, Class<T> type) {
        return find(key, type)
                .orElseThrow(() -> new IllegalStateException("(%s) has no field (%s).".formatted(kind, key)));
    }

    private <T extends Value> Optional<T> find(String key, Class<T> type) {
        return Optional.ofNullable(values.get(key)).map(type::cast);
    }
}
