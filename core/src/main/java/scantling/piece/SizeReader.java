package scantling.piece;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.measure.Dim;

/** Reads the overall size, said as a sentence or by keys, and gives it its names. */
final class SizeReader {
    private static final List<String> NAMES = List.of("width", "depth", "height");

    private final Reading reading;

    SizeReader(Reading reading) {
        this.reading = reading;
    }

    /** Gives width, depth and height their names; they are worked out when asked for. */
    void define(Optional<Node> size) {
        Map<String, Phrase> said = size.map(this::said).orElse(Map.of());
        for (String name : NAMES) {
            Optional<Phrase> phrase = Optional.ofNullable(said.get(name));
            reading.scope()
                    .define(
                            name,
                            () -> phrase.flatMap(length ->
                                    reading.length(length, reading.written("size / " + name), Reading.Sign.POSITIVE)));
        }
    }

    /** One of width, depth, height. */
    Optional<Dim> find(String name, Node place) {
        return reading.scope().resolve(name, place.span());
    }

    private Map<String, Phrase> said(Node node) {
        Map<String, Phrase> said = new LinkedHashMap<>();
        if (node instanceof Node.Scalar scalar && !scalar.text().isBlank()) {
            SizeSentence.Said sentence = SizeSentence.read(scalar);
            said.putAll(sentence.sizes());
            sentence.others()
                    .values()
                    .forEach(other -> reading.problems()
                            .add(
                                    other.span(),
                                    "%s does not say a size that is still open."
                                            .formatted(Problems.quoted(other.text())),
                                    "Say each once: 500 wide, 420 deep, 620 high."));
            missing(said, node, sentence.others().isEmpty());
        } else {
            reading.fields(node, "size", "a sentence: 500 wide, 420 deep, 620 high")
                    .ifPresent(fields -> {
                        fields.entries().forEach(entry -> entry(entry, said));
                        missing(said, node, true);
                    });
        }
        return said;
    }

    private void entry(Node.Entry entry, Map<String, Phrase> said) {
        if (NAMES.contains(entry.key().text())) {
            reading.scalar(entry.value(), "size / " + entry.key().text(), "a length")
                    .ifPresent(scalar -> said.put(entry.key().text(), Phrase.of(scalar)));
        } else {
            reading.unknownKey(entry.key(), "size", NAMES);
        }
    }

    private void missing(Map<String, Phrase> said, Node node, boolean report) {
        List<String> open =
                NAMES.stream().filter(name -> !said.containsKey(name)).toList();
        if (report && !open.isEmpty()) {
            reading.problems()
                    .add(
                            node.span(),
                            "The size lacks its %s: %s.".formatted(String.join(" and ", open), node.word()),
                            "Say it as in: 500 wide, 420 deep, 620 high.");
        }
    }
}
