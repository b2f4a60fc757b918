package scantling.piece;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import scantling.space.Side;

/** Reads what is said by side; what names fewer sides wins over what names more. */
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

    /** What stands there for each side. @param one reads it for one of them */
    <T> Optional<Map<Side, T>> read(Node node, Literals literals, BiFunction<Node, Literals, Optional<T>> one) {
        Map<Side, T> sides = new EnumMap<>(Side.class);
        if (!(node instanceof Node.Fields fields)) {
            return one.apply(node, literals).map(all -> {
                List.of(Side.values()).forEach(side -> sides.put(side, all));
                return Collections.unmodifiableMap(sides);
            });
        }
        fields.entries().stream()
                .map(Node.Entry::key)
                .filter(key -> !WORDS.containsKey(key.text()))
                .forEach(key -> reading.unknownKey(key, literals.label(), allowed()));
        boolean whole = true;
        for (Map.Entry<String, List<Side>> word : WORDS.entrySet()) {
            Optional<Node> given = fields.find(word.getKey());
            Optional<T> read = given.flatMap(value -> one.apply(value, literals.inside(word.getKey())));
            read.ifPresent(value -> word.getValue().forEach(side -> sides.put(side, value)));
            whole &= given.isPresent() == read.isPresent();
        }
        return whole ? Optional.of(Collections.unmodifiableMap(sides)) : Optional.empty();
    }
}
