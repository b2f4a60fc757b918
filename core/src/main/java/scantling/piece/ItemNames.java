package scantling.piece;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * What the items of a list are called in a path: by their own name where that is one of a kind among its neighbours, else
 * by their number from 1. A step may go by its element's word.
 */
final class ItemNames {
    private ItemNames() {}

    /** The names of all items, in order. @param steps whether each item is one element with its fields */
    static List<String> of(List<Node> items, boolean steps) {
        List<Optional<String>> words = items.stream()
                .map(item -> steps ? stepWord(item) : nameIn(item))
                .toList();
        List<String> flat = words.stream().map(word -> word.orElse("")).toList();
        List<String> names = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            String word = flat.get(i);
            boolean alone = usable(word) && Collections.frequency(flat, word) == 1;
            names.add(alone ? word : String.valueOf(i + 1));
        }
        return names;
    }

    /** The element's word of a step. */
    static Optional<Node.Entry> stepEntry(Node item) {
        return item instanceof Node.Fields fields && fields.entries().size() == 1
                ? Optional.of(fields.entries().get(0))
                : Optional.empty();
    }

    private static Optional<String> stepWord(Node item) {
        if (item instanceof Node.Scalar scalar) {
            return Optional.of(scalar.text());
        }
        return stepEntry(item)
                .flatMap(entry ->
                        nameIn(entry.value()).or(() -> Optional.of(entry.key().text())));
    }

    /** The maker's own name for something. */
    static Optional<String> nameIn(Node node) {
        return node instanceof Node.Fields fields
                ? fields.find("name")
                        .filter(Node.Scalar.class::isInstance)
                        .map(name -> ((Node.Scalar) name).text().strip())
                        .filter(name -> !name.isEmpty())
                : Optional.empty();
    }

    private static boolean usable(String word) {
        return !word.isBlank() && !word.contains("/") && !word.chars().allMatch(Character::isDigit);
    }
}
