package scantling.piece;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import scantling.measure.Dim;
import scantling.measure.Tolerance;

/** Reads the materials by the maker's own names. */
final class MaterialsReader {
    /** What can be said about a material, with its meaning. */
    static final Map<String, String> KEYS = keys();

    private static final Pattern MONEY = Pattern.compile("\\d{1,9}(?:\\.\\d{1,2})?");
    private static final Pattern BY = Pattern.compile("\\s*(?:\\bx\\b|\u00d7|\\bby\\b)\\s*");

    private final Reading reading;
    private final Woods woods;
    private final Map<String, Node.Entry> given = new LinkedHashMap<>();

    MaterialsReader(Reading reading, Woods woods) {
        this.reading = reading;
        this.woods = woods;
    }

    private static Map<String, String> keys() {
        Map<String, String> keys = new LinkedHashMap<>();
        keys.put("solid", "The species of sawn timber.");
        keys.put("sheet", "The kind of plywood, fibreboard or other panel.");
        keys.put("stick", "The species of what is bought to section: edging, moulding, dowel rod.");
        keys.put("thickness", "The finished thickness; for a sheet the one it is sold as.");
        keys.put("measured", "The thickness that was measured on the sheet at hand.");
        keys.put("sawn", "How its boards were sawn: flat, quarter or mixed (when not said).");
        keys.put("sheet size", "Length along the grain by width, as in 2440 x 1220.");
        keys.put("grain", "Whether parts keep their grain along the sheet: yes or no.");
        keys.put("prefinished", "Whether a sheet comes with its faces finished: yes or no.");
        keys.put("price", "What a sheet, a board foot or a stick costs.");
        return keys;
    }

    /** Gives every thickness its name; nothing is worked out yet. */
    void define(Node node) {
        reading.fields(node, "materials", "materials by name, as in cherry: {solid: black cherry, thickness: 20}")
                .ifPresent(fields -> fields.entries().forEach(this::define));
    }

    private void define(Node.Entry entry) {
        String name = entry.key().text();
        if (name.isBlank() || !name.equals(name.strip())) {
            reading.problems().add(entry.key().span(), "A material needs a name.", "As in: cherry.");
            return;
        }
        given.put(name, entry);
        reading.declared().add(name);
        Supplier<Optional<Dim>> thickness = () -> actual(entry);
        reading.scope().define(name + " thickness", thickness);
        reading.scope()
                .define(
                        name + ".thickness",
                        () -> reading.scope()
                                .resolve(name + " thickness", entry.key().span()));
    }

    private Optional<Dim> actual(Node.Entry entry) {
        return find(entry, "measured").isPresent() ? length(entry, "measured") : length(entry, "thickness");
    }

    private static Optional<Node> find(Node.Entry entry, String key) {
        return entry.value() instanceof Node.Fields fields ? fields.find(key) : Optional.empty();
    }

    private Optional<Dim> length(Node.Entry entry, String key) {
        String label = "materials / %s / %s".formatted(entry.key().text(), key);
        return find(entry, key)
                .flatMap(node -> reading.length(node, reading.written(label), Reading.Sign.POSITIVE))
                .map(dim -> named(label, dim));
    }

    /** A sum gets its name; what was typed has it already. */
    static Dim named(String label, Dim dim) {
        return dim.making().inputs().isEmpty() ? dim : Dim.named(label, dim, Tolerance.NONE);
    }

    /** Reads all of them. */
    void read() {
        given.forEach((name, entry) ->
                read(name, entry).ifPresent(m -> reading.materials().put(name, m)));
    }

    private Optional<Material> read(String name, Node.Entry entry) {
        String label = "materials / " + name;
        Optional<Node.Fields> fields =
                reading.fields(entry.value(), label, "keys: " + String.join(", ", KEYS.keySet()));
        if (fields.isEmpty()) {
            return Optional.empty();
        }
        fields.get().entries().stream()
                .map(Node.Entry::key)
                .filter(key -> !KEYS.containsKey(key.text()))
                .forEach(key -> reading.unknownKey(key, label, List.copyOf(KEYS.keySet())));
        Optional<Material.Kind> kind = kind(fields.get(), entry, label);
        Optional<String> of = kind.flatMap(k -> of(k, fields.get(), label));
        Optional<Dim> thickness = thickness(entry, label);
        Optional<Dim> nominal =
                fields.get().find("measured").isPresent() ? length(entry, "thickness") : Optional.empty();
        boolean grained = yes(fields.get(), "grain", label, true);
        boolean prefinished = yes(fields.get(), "prefinished", label, false);
        Optional<Long> price = fields.get().find("price").flatMap(node -> price(node, label));
        List<Dim> size = fields.get()
                .find("sheet size")
                .map(node -> sheetSize(node, label))
                .orElse(List.of());
        if (kind.isEmpty() || of.isEmpty() || thickness.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Material(
                name,
                kind.get(),
                of.get(),
                thickness.get(),
                nominal,
                size.stream().findFirst(),
                size.stream().skip(1).findFirst(),
                grained,
                prefinished,
                price));
    }

    private Optional<Dim> thickness(Node.Entry entry, String label) {
        if (find(entry, "thickness").isEmpty() && find(entry, "measured").isEmpty()) {
            return reading.problems()
                    .fail(
                            entry.key().span(),
                            "%s needs a \"thickness\".".formatted(Problems.quoted(label)),
                            "As in: {solid: black cherry, thickness: 20}.");
        }
        return reading.scope()
                .resolve(entry.key().text() + " thickness", entry.key().span());
    }

    private Optional<Material.Kind> kind(Node.Fields fields, Node.Entry entry, String label) {
        List<Material.Kind> said = List.of(Material.Kind.values()).stream()
                .filter(kind -> fields.find(word(kind)).isPresent())
                .toList();
        return said.size() == 1
                ? Optional.of(said.get(0))
                : reading.problems()
                        .fail(
                                entry.key().span(),
                                said.isEmpty()
                                        ? "%s does not say what it is.".formatted(Problems.quoted(label))
                                        : "%s is said to be several things.".formatted(Problems.quoted(label)),
                                "Say one of: solid, sheet, stick.");
    }

    private static String word(Material.Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }

    private Optional<String> of(Material.Kind kind, Node.Fields fields, String label) {
        String path = label + " / " + word(kind);
        Optional<Node.Scalar> scalar =
                fields.find(word(kind)).flatMap(node -> reading.scalar(node, path, "the name of a wood"));
        boolean sheet = kind == Material.Kind.SHEET;
        Optional<String> known = scalar.map(s -> s.text().strip())
                .flatMap(text -> sheet ? woods.findSheet(text) : woods.findSolid(text));
        return known.isEmpty() && scalar.isPresent()
                ? reading.problems()
                        .fail(
                                scalar.get().span(),
                                "%s is no %s that the tables know."
                                        .formatted(Problems.quoted(scalar.get().text()), sheet ? "sheet good" : "wood"),
                                Suggestions.remedy(scalar.get().text(), sheet ? woods.sheets() : woods.solids()))
                : known;
    }

    private boolean yes(Node.Fields fields, String key, String label, boolean usual) {
        return fields.find(key).map(node -> flag(node, label + " / " + key)).orElse(usual);
    }

    private boolean flag(Node node, String label) {
        String text = node instanceof Node.Scalar scalar ? scalar.text().strip().toLowerCase(Locale.ROOT) : "";
        if (!List.of("yes", "no", "true", "false").contains(text)) {
            reading.refuse(node, label, "yes or no");
        }
        return !(text.equals("no") || text.equals("false"));
    }

    private Optional<Long> price(Node node, String label) {
        Optional<String> text = reading.scalar(node, label + " / price", "a sum of money, as in 84.00")
                .map(scalar -> scalar.text().strip());
        return text.isPresent() && !MONEY.matcher(text.get()).matches()
                ? reading.refuse(node, label + " / price", "a sum of money, as in 84.00")
                : text.map(money -> new BigDecimal(money)
                        .movePointRight(2)
                        .setScale(0, RoundingMode.UNNECESSARY)
                        .longValueExact());
    }

    private List<Dim> sheetSize(Node node, String label) {
        String path = label + " / sheet size";
        Optional<Phrase> phrase =
                reading.scalar(node, path, "a size, as in 2440 x 1220").map(Phrase::of);
        String text = phrase.map(Phrase::text).orElse("");
        String[] sides = BY.split(text, -1);
        if (phrase.isEmpty() || sides.length != 2) {
            reading.refuse(node, path, "a length and a width, as in 2440 x 1220");
            return List.of();
        }
        Phrase along = phrase.get().sub(0, sides[0].length()).strip();
        Phrase across = phrase.get()
                .sub(text.length() - sides[1].length(), text.length())
                .strip();
        return List.of(along, across).stream()
                .flatMap(side -> reading.length(side, reading.written(path), Reading.Sign.POSITIVE).stream())
                .toList();
    }
}
