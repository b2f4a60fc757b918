package scantling.piece;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import scantling.measure.Dim;
import scantling.measure.Span;
import scantling.measure.Unit;

/**
 * Reads the description of a piece. Whatever is wrong is collected and told at once, each with its place, what is allowed
 * and the nearest right spelling. Nothing in a text can run, nothing in it can make reading it costly.
 */
public final class PieceReader {
    /** What stands at the top of a description, with its meaning. */
    static final Map<String, String> KEYS = keys();

    static final List<String> UNITS = List.of("mm", "cm", "in", "inch");
    private static final Pattern LENGTH_NAME = Pattern.compile("\\p{L}[\\p{L}\\d_' ]*");
    private static final Span START = new Span(1, 1, 0, 0);

    private final String text;
    private final Node.Fields root;
    private final Reading reading;
    private final Woods woods;

    private PieceReader(String text, Node.Fields root, Reading reading, Woods woods) {
        this.text = text;
        this.root = root;
        this.reading = reading;
        this.woods = woods;
    }

    private static Map<String, String> keys() {
        Map<String, String> keys = new LinkedHashMap<>();
        keys.put("piece", "What it is.");
        keys.put("for", "For whom.");
        keys.put("unit", "The unit of lengths that name none: mm, cm or in.");
        keys.put("size", "Overall width, depth and height.");
        keys.put("lengths", "Lengths that get a name of their own.");
        keys.put("materials", "The materials, by the maker's own names.");
        keys.put("build", "What is built, from the outside in.");
        keys.put("sizes", "Sizes set against what their sums say, by path.");
        keys.put("finish", "What goes on it, step by step; groups that are finished otherwise.");
        keys.put("home", "The air it will stand in: a climate by name, or temperature and humidity by month.");
        keys.put("shop", "The air of the shop now: temperature and humidity.");
        keys.put("moisture", "Moisture content measured in the wood, %: one number, or by material.");
        keys.put(
                "matched",
                "Rows of parts cut one after the other along the grain, so that it runs through them; with beside,"
                        + " side by side across it.");
        keys.put("accepted", "Findings taken as they are, each with the reason.");
        return keys;
    }

    /** Reads a text. */
    public static ReadResult read(String text, Language language, Woods woods) {
        Problems problems = new Problems();
        Optional<Piece> piece = Optional.empty();
        if (PieceBytes.isTooLong(text.length())) {
            problems.add(START, PieceBytes.TOO_LONG, PieceBytes.TOO_LONG_REMEDY);
        } else {
            piece = root(text, problems)
                    .flatMap(root -> new PieceReader(
                                    text, root, new Reading(language, problems, unit(root, problems)), woods)
                            .piece());
        }
        return new ReadResult(problems.isEmpty() ? piece : Optional.empty(), problems.list());
    }

    /** Turns bytes into text; says plainly when they are none. */
    public static PieceBytes readBytes(byte[] bytes) {
        return PieceBytes.of(bytes);
    }

    private static Optional<Node.Fields> root(String text, Problems problems) {
        Optional<Node> tree = YamlTree.read(text, problems);
        if (tree.isEmpty() && problems.isEmpty()) {
            return problems.fail(START, "The text says nothing.", "Begin with \"piece: what it is\".");
        }
        if (tree.isPresent() && !(tree.get() instanceof Node.Fields)) {
            return problems.fail(
                    tree.get().span(),
                    "A description needs keys with values; here stands %s."
                            .formatted(tree.get().word()),
                    "Begin with \"piece: what it is\".");
        }
        return tree.map(Node.Fields.class::cast);
    }

    private static Unit unit(Node.Fields root, Problems problems) {
        Optional<Node> node = root.find("unit");
        String word = node.map(said ->
                        said instanceof Node.Scalar scalar ? scalar.text().strip() : "")
                .orElse("mm");
        if (!UNITS.contains(word) && node.isPresent()) {
            problems.add(
                    node.get().span(),
                    "The unit cannot be %s.".formatted(node.get().word()),
                    Suggestions.remedy(word, UNITS));
        }
        return switch (word) {
            case "cm" -> Unit.CM;
            case "in", "inch" -> Unit.INCH;
            default -> Unit.MM;
        };
    }

    private Optional<Piece> piece() {
        root.entries().stream()
                .map(Node.Entry::key)
                .filter(key -> !KEYS.containsKey(key.text()))
                .forEach(key -> reading.unknownKey(key, "a piece", List.copyOf(KEYS.keySet())));
        Optional<String> title = title();
        Optional<String> client = root.find("for")
                .flatMap(node -> reading.scalar(node, "for", "a name"))
                .map(Node.Scalar::text);
        SizeReader size = new SizeReader(reading);
        if (required("size", "As in: size: 500 wide, 420 deep, 620 high.")) {
            size.define(root.find("size"));
        } else {
            size.define(Optional.empty());
        }
        MaterialsReader materials = new MaterialsReader(reading, woods);
        root.find("materials").ifPresent(materials::define);
        root.find("lengths").ifPresent(this::defineLengths);
        materials.read();
        List.copyOf(reading.scope().names()).forEach(name -> reading.scope().resolve(name, root.span()));
        List<Element> steps = steps();
        Map<String, Dim> sizes = root.find("sizes").map(this::sizes).orElse(Map.of());
        FinishText finish =
                root.find("finish").map(new FinishReader(reading)::read).orElse(FinishText.NONE);
        Conditions conditions = new ConditionsReader(reading).read(root);
        Optional<Dim> width = size.find("width", root);
        Optional<Dim> depth = size.find("depth", root);
        Optional<Dim> height = size.find("height", root);
        if (title.isEmpty() || width.isEmpty() || depth.isEmpty() || height.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Piece(
                title.get(),
                client,
                reading.unit(),
                reading.unit(),
                width.get(),
                depth.get(),
                height.get(),
                Collections.unmodifiableMap(reading.materials()),
                steps,
                sizes,
                Collections.unmodifiableMap(finish.words()),
                finish,
                conditions,
                root.find("matched")
                        .map(node -> new MatchedReader(reading).rows(node))
                        .orElse(List.of()),
                text));
    }

    private Optional<String> title() {
        return required("piece", "As in: piece: Bedside chest.")
                ? root.find("piece")
                        .flatMap(node -> reading.scalar(node, "piece", "what it is"))
                        .map(scalar -> scalar.text().strip())
                : Optional.empty();
    }

    private boolean required(String key, String remedy) {
        boolean there = root.find(key).isPresent();
        if (!there) {
            reading.problems().add(START, "The description lacks %s.".formatted(Problems.quoted(key)), remedy);
        }
        return there;
    }

    private void defineLengths(Node node) {
        reading.fields(node, "lengths", "lengths by name, as in leg: 40")
                .ifPresent(fields -> fields.entries().forEach(this::defineLength));
    }

    private void defineLength(Node.Entry entry) {
        String name = entry.key().text();
        Span place = entry.key().span();
        if (!LENGTH_NAME.matcher(name).matches() || !name.equals(name.strip())) {
            reading.problems()
                    .add(
                            place,
                            "%s cannot be the name of a length.".formatted(Problems.quoted(name)),
                            "A name begins with a letter and is made of letters, digits and single spaces.");
            return;
        }
        String label = "lengths / " + name;
        boolean open = reading.scope()
                .define(
                        name,
                        () -> reading.length(entry.value(), reading.written(label), Reading.Sign.ANY)
                                .map(dim -> MaterialsReader.named(label, dim)));
        if (!open) {
            reading.problems()
                    .add(
                            place,
                            "%s already is the name of a length.".formatted(Problems.quoted(name)),
                            "Take another.");
        }
    }

    private List<Element> steps() {
        return required("build", "Say what is built: a list of elements.")
                ? root.find("build")
                        .map(node -> new ElementReader(reading).steps(node, reading.written("")))
                        .orElse(List.of())
                : List.of();
    }

    private Map<String, Dim> sizes(Node node) {
        Map<String, Dim> sizes = new LinkedHashMap<>();
        reading.fields(node, "sizes", "sizes by path, as in drawer 2 / front / width: 149")
                .ifPresent(fields -> fields.entries()
                        .forEach(entry -> reading.length(
                                        entry.value(),
                                        reading.written("sizes / " + entry.key().text()),
                                        Reading.Sign.ZERO_TOO)
                                .ifPresent(dim -> sizes.put(entry.key().text(), dim))));
        return Collections.unmodifiableMap(sizes);
    }
}
