package scantling.piece;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.measure.Dim;
import scantling.space.Side;

/** Reads lengths by side; what names fewer sides wins over what names more. */
final class SidesReader {
    /** From the word for most sides to those for one. */
    private static final Map<String, List<Side>> WORDS = words();

    private final Reading reading;

    SidesReader(Reading reading) {
        this.reading = reading;
    }

    private static Map<String, List<Side>> words() {
        Map<String, List<Side>> words = new LinkedHashMap<>();
        words.put("sides", List.of(Side.LEFT, Side.RIGHT, Side.FRONT, Side.BACK));
        words.put("ends", List.of(Side.LEFT, Side.RIGHT));
        for (Side side : List.of(Side.FRONT, Side.BACK, Side.LEFT, Side.RIGHT, Side.TOP, Side.BOTTOM)) {
            words.put(side.word(), List.of(side));
        }
        return words;
    }

    /** The words allowed. */
    static List<String> allowed() {
        return List.copyOf(WORDS.keySet());
    }

    Optional<Value> read(Node node, Literals literals, Reading.Sign sign) {
        Map<Side, Dim> sides = new EnumMap<>(Side.class);
        if (!(node instanceof Node.Fields fields)) {
            return reading.length(node, literals, sign).map(all -> {
                List.of(Side.values()).forEach(side -> sides.put(side, all));
                return new Value.OfSides(Collections.unmodifiableMap(sides));
            });
        }
        fields.entries().stream()
                .map(Node.Entry::key)
                .filter(key -> !WORDS.containsKey(key.text()))
                .forEach(key -> reading.unknownKey(key, literals.label(), allowed()));
        boolean whole = true;
        for (Map.Entry<String, List<Side>> word : WORDS.entrySet()) {
            Optional<Node> given = fields.find(word.getKey());
            Optional<Dim> length = given.flatMap(value -> reading.length(value, literals.inside(word.getKey()), sign));
            length.ifPresent(dim -> word.getValue().forEach(side -> sides.put(side, dim)));
            whole &= given.isPresent() == length.isPresent();
        }
        return whole ? Optional.of(new Value.OfSides(Collections.unmodifiableMap(sides))) : Optional.empty();
    }
}
