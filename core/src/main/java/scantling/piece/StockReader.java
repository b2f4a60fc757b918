package scantling.piece;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import scantling.measure.Dim;

/** Reads a material with perhaps a width: {@code cherry}, {@code leg 40}, {@code {of: cherry, width: 40}}. */
final class StockReader {
    private static final Pattern BEFORE_WIDTH = Pattern.compile("\\s+[\\d.].*", Pattern.DOTALL);

    private final Reading reading;

    StockReader(Reading reading) {
        this.reading = reading;
    }

    Optional<Value> read(Node node, Literals literals) {
        if (node instanceof Node.Fields fields) {
            return mapped(fields, literals);
        }
        return reading.scalar(node, literals.label(), "a material")
                .flatMap(scalar -> phrase(Phrase.of(scalar), literals));
    }

    private Optional<Value> phrase(Phrase phrase, Literals literals) {
        String text = phrase.text();
        Optional<String> name = reading.declared().stream()
                .filter(candidate -> text.startsWith(candidate) && endsThere(text, candidate.length()))
                .max(Comparator.comparingInt(String::length));
        if (name.isEmpty()) {
            return unknown(phrase, literals);
        }
        Phrase rest = phrase.sub(name.get().length(), text.length()).strip();
        Optional<Material> material = Optional.ofNullable(reading.materials().get(name.get()));
        if (rest.text().isEmpty()) {
            return material.map(found -> new Value.OfStock(new Stock(found, Optional.empty())));
        }
        Optional<Dim> width = reading.length(rest, literals, Reading.Sign.POSITIVE);
        return material.isEmpty()
                ? Optional.empty()
                : width.map(w -> new Value.OfStock(new Stock(material.get(), width)));
    }

    private static boolean endsThere(String text, int end) {
        return end == text.length() || Character.isWhitespace(text.charAt(end));
    }

    private Optional<Value> unknown(Phrase phrase, Literals literals) {
        String name = BEFORE_WIDTH.matcher(phrase.text()).replaceFirst("");
        String usual = literals instanceof Literals.Usual ? " (its usual material)" : "";
        return reading.problems()
                .fail(
                        phrase.span(),
                        "%s for %s%s is none of the materials."
                                .formatted(Problems.quoted(name), literals.label(), usual),
                        reading.declared().isEmpty()
                                ? "Name it under \"materials\"."
                                : Suggestions.remedy(name, reading.declared()));
    }

    private Optional<Value> mapped(Node.Fields fields, Literals literals) {
        fields.entries().stream()
                .map(Node.Entry::key)
                .filter(key -> !List.of("of", "width").contains(key.text()))
                .forEach(key -> reading.unknownKey(key, literals.label(), List.of("of", "width")));
        Optional<Node> of = fields.find("of");
        if (of.isEmpty()) {
            return reading.refuse(fields, literals.label(), "a material behind \"of\"");
        }
        Optional<Value> stock = reading.scalar(of.get(), literals.inside("of").label(), "a material")
                .flatMap(scalar -> phrase(Phrase.of(scalar), literals.inside("of")));
        Optional<Dim> width = fields.find("width")
                .flatMap(node -> reading.length(node, literals.inside("width"), Reading.Sign.POSITIVE));
        return width.isEmpty()
                ? stock
                : stock.map(Value.OfStock.class::cast)
                        .map(value -> new Value.OfStock(new Stock(value.stock().material(), width)));
    }
}
