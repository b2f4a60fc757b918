package scantling.piece;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.piece.FinishText.Group;
import scantling.piece.FinishText.Own;
import scantling.piece.FinishText.Step;
import scantling.piece.FinishText.Word;

/** Reads what is said of the finish. A key that means nothing else names a step. */
final class FinishReader {
    /** What can be said beside steps, with its meaning. */
    static final Map<String, String> KEYS = keys();

    /** What can be said of a group beside steps, with its meaning. */
    static final Map<String, String> GROUP_KEYS = groupKeys();

    private static final String EXAMPLE = "its steps, as in {stain: oil stain, top: waterborne lacquer x 3}";

    private final Reading reading;

    FinishReader(Reading reading) {
        this.reading = reading;
    }

    private static Map<String, String> keys() {
        Map<String, String> keys = new LinkedHashMap<>();
        keys.put("by", "How it is put on: gun, brush, cloth, roller, as in high-volume low-pressure gun.");
        keys.put("air", "Temperature and humidity where it dries: 18 C, 55 %.");
        keys.put("sand", "The last grit before the finish: 180.");
        keys.put("use", "Whether food or a small child will touch it: food, nursery.");
        keys.put("groups", "What is finished otherwise than the rest, by name.");
        keys.put("coats", "Coats of your own, or known ones with your own figures, by name.");
        return keys;
    }

    private static Map<String, String> groupKeys() {
        Map<String, String> keys = new LinkedHashMap<>();
        keys.put("on", "Which parts: a name, or a list of names; drawer box names the box of every drawer.");
        keys.put("of", "Only parts of these materials.");
        keys.put("faces", "Which faces: show, inside, hidden, faces, edges, ends, top, top edges; all when not said.");
        keys.put("before assembly", "Whether it is finished before the glue-up: yes or no.");
        keys.put("by", KEYS.get("by"));
        keys.put("sand", KEYS.get("sand"));
        return keys;
    }

    /** Everything said of the finish. */
    FinishText read(Node node) {
        Optional<Node.Fields> fields = reading.fields(node, "finish", EXAMPLE);
        if (fields.isEmpty()) {
            return FinishText.NONE;
        }
        Map<String, Word> settings = new LinkedHashMap<>();
        List<String> own = List.copyOf(KEYS.keySet());
        for (Node.Entry entry : fields.get().entries()) {
            String key = entry.key().text();
            if (own.contains(key) && !key.equals("groups") && !key.equals("coats")) {
                word(entry.value(), "finish / " + key).ifPresent(word -> settings.put(key, word));
            }
        }
        return new FinishText(
                steps(fields.get(), "finish", own),
                fields.get().find("groups").map(this::groups).orElse(List.of()),
                fields.get().find("coats").map(this::coats).orElse(List.of()),
                settings);
    }

    private List<Step> steps(Node.Fields fields, String label, List<String> others) {
        List<Step> steps = new ArrayList<>();
        for (Node.Entry entry : fields.entries()) {
            String key = entry.key().text();
            if (!others.contains(key)) {
                reading.scalar(entry.value(), label + " / " + key, "what goes on")
                        .ifPresent(
                                scalar -> steps.add(new Step(key, scalar.text().strip(), scalar.span())));
            }
        }
        return steps;
    }

    private List<Group> groups(Node node) {
        return reading.fields(node, "finish / groups", "groups by name, as in inside: {faces: inside, wax: wax}")
                .map(fields -> fields.entries().stream()
                        .flatMap(entry -> group(entry).stream())
                        .toList())
                .orElse(List.of());
    }

    private Optional<Group> group(Node.Entry entry) {
        String label = "finish / groups / " + entry.key().text();
        return reading.fields(entry.value(), label, "what it is on and " + EXAMPLE)
                .map(fields -> new Group(
                        entry.key().text(),
                        words(fields, "on", label),
                        words(fields, "of", label),
                        words(fields, "faces", label),
                        one(fields, "before assembly", label),
                        one(fields, "by", label),
                        one(fields, "sand", label),
                        steps(fields, label, List.copyOf(GROUP_KEYS.keySet())),
                        entry.key().span()));
    }

    private Optional<Word> one(Node.Fields fields, String key, String label) {
        return fields.find(key).flatMap(node -> word(node, label + " / " + key));
    }

    /** One word, a list of words, or words between commas. */
    private List<Word> words(Node.Fields fields, String key, String label) {
        Optional<Node> node = fields.find(key);
        if (node.isEmpty()) {
            return List.of();
        }
        if (node.get() instanceof Node.Items list) {
            return list.items().stream()
                    .flatMap(item -> word(item, label + " / " + key).stream())
                    .toList();
        }
        return word(node.get(), label + " / " + key).stream()
                .flatMap(word -> List.of(word.text().split(",", -1)).stream()
                        .map(String::strip)
                        .filter(text -> !text.isEmpty())
                        .map(text -> new Word(text, word.span())))
                .toList();
    }

    private Optional<Word> word(Node node, String label) {
        return reading.scalar(node, label, "a word or two")
                .map(scalar -> new Word(scalar.text().strip(), scalar.span()));
    }

    private List<Own> coats(Node node) {
        return reading.fields(node, "finish / coats", "coats by name, as in shop lacquer: {like: waterborne lacquer}")
                .map(fields -> fields.entries().stream()
                        .flatMap(entry -> own(entry).stream())
                        .toList())
                .orElse(List.of());
    }

    private Optional<Own> own(Node.Entry entry) {
        String label = "finish / coats / " + entry.key().text();
        return reading.fields(
                        entry.value(), label, "what is known of it, as in {like: waterborne lacquer, solids: 32 %}")
                .map(fields -> {
                    Map<String, Word> facts = new LinkedHashMap<>();
                    fields.entries()
                            .forEach(fact -> word(
                                            fact.value(),
                                            label + " / " + fact.key().text())
                                    .ifPresent(word -> facts.put(fact.key().text(), word)));
                    return new Own(entry.key().text(), facts, entry.key().span());
                });
    }
}
