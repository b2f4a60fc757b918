package scantling.piece;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import scantling.measure.Dim;
import scantling.measure.Tolerance;

/** Reads the materials by the maker's own names. */
final class MaterialsReader {
    /** What can be said about a material, with its meaning. */
    static final Map<String, String> KEYS = keys();

    private final Reading reading;
    private final Woods woods;
    private final SupplyReader supplies;
    private final Map<String, Node.Entry> given = new LinkedHashMap<>();

    MaterialsReader(Reading reading, Woods woods) {
        this.reading = reading;
        this.woods = woods;
        this.supplies = new SupplyReader(reading);
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
        keys.put("sheets", "Sheets of more than one size, each with what it costs and how many there are.");
        keys.put("boards", "The boards that a yard has: which of them to buy is for the saw plan to say.");
        keys.put("grade", "The grade that its boards are bought in, as in FAS.");
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
        Optional<Long> price = fields.get().find("price").flatMap(node -> supplies.price(node, label));
        List<Dim> size = fields.get()
                .find("sheet size")
                .map(node -> supplies.size(node, label + " / sheet size"))
                .orElse(List.of());
        Supply supply = supplies.read(fields.get(), kind, label);
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
                price,
                supply));
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
        return fields.find(key)
                .map(node -> supplies.flag(node, label + " / " + key))
                .orElse(usual);
    }
}
