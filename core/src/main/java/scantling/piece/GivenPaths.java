package scantling.piece;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Finds what the maker gave by its path, and the paths of all that was given. */
final class GivenPaths {
    private static final Pattern WIDTH = Pattern.compile("[\\d.(].*");
    private static final List<String> SIZE_NAMES = List.of("width", "depth", "height");

    private final Node.Fields root;
    private final Set<String> stepKeys = new TreeSet<>(Set.of("build"));
    private final Set<String> materials;
    private final Set<String> lengths;

    GivenPaths(Node.Fields root, Language language) {
        this.root = root;
        this.materials = keys(root, "materials");
        this.lengths = keys(root, "lengths");
        lengths.addAll(SIZE_NAMES);
        materials.forEach(name -> lengths.add(name + " thickness"));
        language.elements().forEach(this::collectStepKeys);
    }

    private static Set<String> keys(Node.Fields root, String key) {
        return root.find(key)
                .filter(Node.Fields.class::isInstance)
                .map(node -> ((Node.Fields) node)
                        .entries().stream()
                                .map(entry -> entry.key().text())
                                .collect(Collectors.toCollection(LinkedHashSet::new)))
                .orElseGet(LinkedHashSet::new);
    }

    private void collectStepKeys(Shape shape) {
        for (Field field : shape.fields()) {
            if (field.kind() == Field.Kind.STEPS) {
                stepKeys.add(field.key());
            }
            field.shape().ifPresent(this::collectStepKeys);
        }
    }

    /**
     * Something with a path.
     *
     * @param names what it is called where it stands, the usual name first
     * @param word the element's word, which may be said besides or left out
     * @param node what stands there
     * @param phrase the stretch of the value that is meant, when it is not all of it
     * @param key the key it stands under
     */
    record Spot(List<String> names, Optional<String> word, Node node, Optional<Phrase> phrase, String key) {
        /** The value or the stretch of it; empty for lists and keys with values. */
        Optional<Phrase> value() {
            return phrase.or(() -> node instanceof Node.Scalar scalar
                    ? Optional.of(new Phrase(scalar, 0, scalar.text().length()))
                    : Optional.empty());
        }
    }

    /** What stands at a path; the word build in front may be left out. */
    Optional<Spot> find(String path) {
        String clean = clean(path);
        Spot top = new Spot(List.of(), Optional.empty(), root, Optional.empty(), "");
        return locate(top, clean).or(() -> locate(top, "build / " + clean));
    }

    private static String clean(String path) {
        return Arrays.stream(path.split("/", -1)).map(String::strip).collect(Collectors.joining(" / "));
    }

    private Optional<Spot> locate(Spot spot, String rest) {
        if (rest.isEmpty()) {
            return Optional.of(spot);
        }
        for (Spot child : children(spot)) {
            for (String name : child.names()) {
                Optional<Spot> found = behind(name, rest).flatMap(further -> locate(child, further));
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return spot.word().flatMap(word -> behind(word, rest)).flatMap(further -> locate(withoutWord(spot), further));
    }

    private static Spot withoutWord(Spot spot) {
        return new Spot(spot.names(), Optional.empty(), spot.node(), spot.phrase(), spot.key());
    }

    private static Optional<String> behind(String name, String rest) {
        String clean = clean(name);
        if (rest.equals(clean)) {
            return Optional.of("");
        }
        return rest.startsWith(clean + " / ") ? Optional.of(rest.substring(clean.length() + 3)) : Optional.empty();
    }

    /** The paths of every value, in the order of the text. */
    List<String> all() {
        Set<String> paths = new LinkedHashSet<>();
        collect(new Spot(List.of(), Optional.empty(), root, Optional.empty(), ""), "", paths);
        return List.copyOf(paths);
    }

    private void collect(Spot spot, String path, Set<String> paths) {
        if (spot.value().filter(value -> !value.text().isEmpty()).isPresent()) {
            paths.add(shortened(path, spot));
        }
        for (Spot child : children(spot)) {
            String name = clean(child.names().get(0));
            collect(child, path.isEmpty() ? name : path + " / " + name, paths);
        }
    }

    private String shortened(String path, Spot spot) {
        String without = path.startsWith("build / ") ? path.substring("build / ".length()) : path;
        return find(without).flatMap(Spot::value).equals(spot.value()) ? without : path;
    }

    private List<Spot> children(Spot spot) {
        if (spot.phrase().isPresent()) {
            return List.of();
        }
        if (spot.node() instanceof Node.Fields fields) {
            return fields.entries().stream()
                    .map(entry -> spot(
                            List.of(entry.key().text()),
                            entry.value(),
                            entry.key().text()))
                    .toList();
        }
        if (spot.node() instanceof Node.Items list) {
            return items(list.items(), stepKeys.contains(spot.key()));
        }
        return spot.node() instanceof Node.Scalar scalar ? stretches(scalar, spot.key()) : List.of();
    }

    private static Spot spot(List<String> names, Node node, String key) {
        return new Spot(names, Optional.empty(), node, Optional.empty(), key);
    }

    private static List<Spot> items(List<Node> items, boolean steps) {
        List<String> names = ItemNames.of(items, steps);
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            Node item = items.get(i);
            Optional<Node.Entry> entry = steps ? ItemNames.stepEntry(item) : Optional.empty();
            Optional<String> word = entry.map(step -> step.key().text());
            Set<String> called = new LinkedHashSet<>(List.of(names.get(i), String.valueOf(i + 1)));
            word.ifPresent(called::add);
            spots.add(new Spot(
                    List.copyOf(called),
                    word,
                    entry.map(Node.Entry::value).orElse(item),
                    Optional.empty(),
                    word.orElse("")));
        }
        return spots;
    }

    private List<Spot> stretches(Node.Scalar scalar, String key) {
        List<Spot> spots = new ArrayList<>();
        Map<String, Phrase> parts =
                key.equals("size") ? SizeSentence.read(scalar).sizes() : stockWidth(Phrase.of(scalar));
        parts.forEach((name, phrase) ->
                spots.add(new Spot(List.of(name), Optional.empty(), scalar, Optional.of(phrase), name)));
        return spots;
    }

    /** The width behind a material: {@code leg 40}. */
    private Map<String, Phrase> stockWidth(Phrase phrase) {
        String text = phrase.text();
        return materials.stream()
                .filter(name -> text.startsWith(name + " "))
                .max(java.util.Comparator.comparingInt(String::length))
                .map(name -> phrase.sub(name.length(), text.length()).strip())
                .filter(rest ->
                        WIDTH.matcher(rest.text()).matches() || lengths.stream().anyMatch(rest.text()::startsWith))
                .map(rest -> Map.of("width", rest))
                .orElse(Map.of());
    }
}
