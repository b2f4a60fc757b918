package scantling.piece;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import scantling.measure.Span;

/** Reads elements and parts against their shapes: every field checked, usual values filled in. */
final class ElementReader {
    private final Reading reading;
    private final ValueReader values;

    ElementReader(Reading reading) {
        this.reading = reading;
        this.values = new ValueReader(reading, this);
    }

    /** The elements built in a space; those that cannot be read are left out and reported. */
    List<Element> steps(Node node, Literals literals) {
        if (node instanceof Node.Fields fields) {
            return fields.entries().stream()
                    .flatMap(entry -> step(entry, literals.inside(entry.key().text())).stream())
                    .toList();
        }
        List<Node> items = reading.items(
                        node, literals.label().isEmpty() ? "build" : literals.label(), "a list of elements")
                .orElse(List.of());
        List<String> names = ItemNames.of(items, true);
        List<Element> steps = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            Literals inside = literals.inside(names.get(i));
            asEntry(items.get(i), inside).flatMap(entry -> step(entry, inside)).ifPresent(steps::add);
        }
        return List.copyOf(steps);
    }

    private Optional<Node.Entry> asEntry(Node item, Literals literals) {
        if (item instanceof Node.Scalar scalar && !scalar.text().isBlank()) {
            return Optional.of(new Node.Entry(scalar, Node.Scalar.usual("", scalar.span())));
        }
        Optional<Node.Entry> entry = ItemNames.stepEntry(item);
        if (entry.isEmpty()
                && item instanceof Node.Fields fields
                && fields.entries().size() > 1) {
            List<String> keys =
                    fields.entries().stream().map(e -> e.key().text()).toList();
            return reading.problems()
                    .fail(
                            item.span(),
                            "A step names one element; here stand (%d): %s."
                                    .formatted(keys.size(), Problems.quoted(String.join(", ", keys))),
                            "Begin each element with a dash, and indent its fields below it.");
        }
        return entry.isPresent() ? entry : reading.refuse(item, literals.label(), "an element");
    }

    private Optional<Element> step(Node.Entry entry, Literals literals) {
        String word = entry.key().text();
        Optional<Shape> shape = reading.language().find(word);
        if (shape.isEmpty()) {
            List<String> allowed =
                    reading.language().elements().stream().map(Shape::key).toList();
            return reading.problems()
                    .fail(
                            entry.key().span(),
                            "%s is no element.".formatted(Problems.quoted(word)),
                            Suggestions.remedy(word, allowed));
        }
        return element(
                new Asked(shape.get(), word, entry.key().span(), Reading.Sign.POSITIVE), entry.value(), literals);
    }

    /**
     * What is to be read.
     *
     * @param shape what may be said
     * @param name what it is called when the maker gives no name
     * @param span where it stands
     * @param sign which lengths the field around it allows
     */
    record Asked(Shape shape, String name, Span span, Reading.Sign sign) {}

    /** One element or part. */
    Optional<Element> element(Asked asked, Node node, Literals literals) {
        return entries(asked.shape(), node, literals).flatMap(given -> filled(asked, given, literals));
    }

    private Optional<Map<String, Node.Entry>> entries(Shape shape, Node node, Literals literals) {
        Map<String, Node.Entry> given = new LinkedHashMap<>();
        if (node instanceof Node.Fields fields) {
            fields.entries().forEach(entry -> given.put(entry.key().text(), entry));
        } else if (!node.isEmpty()) {
            if (node instanceof Node.Refused || shape.shortField().isEmpty()) {
                return reading.refuse(
                        node, literals.label(), "fields of its own: " + String.join(", ", allowed(shape)));
            }
            String key = shape.shortField().get();
            given.put(key, new Node.Entry(Node.Scalar.usual(key, node.span()), node));
        }
        return Optional.of(given);
    }

    private static List<String> allowed(Shape shape) {
        return Stream.concat(shape.fields().stream().map(Field::key), Stream.of("name"))
                .distinct()
                .toList();
    }

    private Optional<Element> filled(Asked asked, Map<String, Node.Entry> given, Literals literals) {
        Shape shape = asked.shape();
        List<String> allowed = allowed(shape);
        given.values().stream()
                .map(Node.Entry::key)
                .filter(key -> !allowed.contains(key.text()))
                .forEach(key -> reading.unknownKey(key, literals.label(), allowed));
        Map<String, Value> filled = new LinkedHashMap<>();
        boolean whole = true;
        for (Field field : shape.fields()) {
            Optional<Value> value = given.containsKey(field.key())
                    ? given(asked, field, given.get(field.key()), literals)
                    : usual(asked, field, literals);
            value.ifPresent(read -> filled.put(field.key(), read));
            whole &= value.isPresent() || !(field.required() || given.containsKey(field.key()));
        }
        String name = Optional.ofNullable(given.get("name"))
                .flatMap(entry ->
                        reading.scalar(entry.value(), literals.inside("name").label(), "a name"))
                .map(scalar -> scalar.text().strip())
                .orElse(asked.name());
        return whole ? Optional.of(new Element(shape.key(), name, filled, asked.span())) : Optional.empty();
    }

    private Optional<Value> given(Asked asked, Field field, Node.Entry entry, Literals literals) {
        boolean written = !(entry.key().span().equals(entry.value().span())) || !shortOf(asked.shape(), field);
        Literals inside = written ? literals.inside(field.key()) : literals;
        return values.read(new ValueReader.Wanted(field, inside, asked.sign()), entry.value());
    }

    /** A bare value in place of the fields goes by the path of the element itself. */
    private static boolean shortOf(Shape shape, Field field) {
        return shape.shortField().filter(field.key()::equals).isPresent();
    }

    private Optional<Value> usual(Asked asked, Field field, Literals literals) {
        if (field.usual().isEmpty()) {
            return field.required() ? missing(asked, field, literals) : Optional.empty();
        }
        Literals usual = new Literals.Usual(
                literals.inside(field.key()).label(), asked.shape().key() + " / " + field.key(), field.source());
        return values.read(
                new ValueReader.Wanted(field, usual, asked.sign()),
                YamlTree.usual(field.usual().get(), asked.span()));
    }

    private Optional<Value> missing(Asked asked, Field field, Literals literals) {
        return reading.problems()
                .fail(
                        asked.span(),
                        "%s needs %s: %s"
                                .formatted(
                                        Problems.quoted(literals.label()), Problems.quoted(field.key()), field.says()),
                        field.example().isEmpty() ? "" : "For example: %s: %s".formatted(field.key(), field.example()));
    }
}
