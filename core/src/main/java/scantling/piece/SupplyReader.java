package scantling.piece;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.regex.Pattern;
import scantling.measure.Dim;
import scantling.stock.Defect;
import scantling.stock.Grade;
import scantling.stock.RoughClass;
import scantling.stock.SheetSize;

/** Reads in which sizes a material is to be had: sheets with their prices, a yard's boards. */
final class SupplyReader {
    /** What can be said about sheets of one size. */
    static final Map<String, String> SHEETS = sheetKeys();

    /** What can be said about a board of the yard. */
    static final Map<String, String> BOARDS = boardKeys();

    private static final Pattern MONEY = Pattern.compile("\\d{1,9}(?:\\.\\d{1,2})?");
    private static final Pattern BY = Pattern.compile("\\s*(?:\\bx\\b|\u00d7|\\bby\\b)\\s*");
    private static final Pattern FEET = Pattern.compile("\\d+\\s*(?:x|\u00d7|by)\\s*\\d+\\s*ft");
    private static final int MOST = 200;

    private final Reading reading;

    SupplyReader(Reading reading) {
        this.reading = reading;
    }

    private static Map<String, String> sheetKeys() {
        Map<String, String> keys = new LinkedHashMap<>();
        keys.put("name", "What you call them.");
        keys.put("size", "Length along the grain by width, as in 2440 x 1220, or 5 x 5 ft.");
        keys.put("price", "What one costs.");
        keys.put("count", "How many there are; as many as wanted when not said.");
        keys.put("trimmed", "Whether their edges are sawn already, so that nothing is trimmed off: yes or no.");
        return keys;
    }

    private static Map<String, String> boardKeys() {
        Map<String, String> keys = new LinkedHashMap<>();
        keys.put("name", "What is written on it.");
        keys.put("size", "Length along the grain by width, as in 2450 x 165.");
        keys.put("rough", "The thickness it is sold as, as in 5/4; what the material needs when not said.");
        keys.put("grade", "Its grade, as in FAS.");
        keys.put("price", "What a board foot of it costs.");
        keys.put("count", "How many such boards there are; 1 when not said.");
        keys.put(
                "defects",
                "What no part may have, from its near end: 300 to 420; 2300 to end; 900 to 1100, 40 off the far edge.");
        return keys;
    }

    /** All that a material says of its supply. */
    Supply read(Node.Fields fields, Optional<Material.Kind> kind, String label) {
        fits(fields, "sheets", kind.filter(one -> one == Material.Kind.SHEET), kind, label);
        fits(fields, "boards", kind.filter(one -> one == Material.Kind.SOLID), kind, label);
        fits(fields, "grade", kind.filter(one -> one == Material.Kind.SOLID), kind, label);
        if (fields.find("sheets").isPresent() && fields.find("sheet size").isPresent()) {
            fields.find("sheet size")
                    .ifPresent(node -> reading.problems()
                            .add(
                                    node.span(),
                                    "%s says both \"sheets\" and \"sheet size\".".formatted(Problems.quoted(label)),
                                    "Say all sizes under \"sheets\"."));
        }
        return new Supply(
                list(fields, "sheets", label, this::sheets),
                list(fields, "boards", label, this::boards),
                fields.find("grade").flatMap(node -> grade(node, label + " / grade")));
    }

    private void fits(
            Node.Fields fields, String key, Optional<Material.Kind> right, Optional<Material.Kind> kind, String label) {
        if (right.isEmpty() && kind.isPresent()) {
            fields.find(key)
                    .ifPresent(node -> reading.problems()
                            .add(
                                    node.span(),
                                    "%s comes as %s: it has no %s."
                                            .formatted(
                                                    Problems.quoted(label),
                                                    kind.get().words(),
                                                    Problems.quoted(key)),
                                    key.equals("sheets")
                                            ? "Sheets are listed under a material that says \"sheet\"."
                                            : "Boards and their grade stand under a material that says \"solid\"."));
        }
    }

    /** One of a list, where it stands. */
    private record Item(Node.Fields fields, String label) {
        Optional<Node> find(String key) {
            return fields.find(key);
        }

        String at(String key) {
            return label + " / " + key;
        }
    }

    private <T> List<T> list(Node.Fields fields, String key, String label, Function<Item, Optional<T>> read) {
        List<T> all = new ArrayList<>();
        Optional<Node> node = fields.find(key);
        List<Node> items = node.flatMap(
                        said -> reading.items(said, label + " / " + key, "a list, as in [{size: 2440 x 1220}]"))
                .orElse(List.of());
        if (items.size() > MOST) {
            reading.refuse(node.orElse(fields), label + " / " + key, "at most %d sizes".formatted(MOST));
            return List.of();
        }
        for (int i = 0; i < items.size(); i++) {
            String here = "%s / %s / %d".formatted(label, key, i + 1);
            reading.fields(items.get(i), here, "keys with values, as in {size: 2440 x 1220, price: 84.00}")
                    .flatMap(item -> read.apply(new Item(item, here)))
                    .ifPresent(all::add);
        }
        return all;
    }

    private Optional<Supply.Sheets> sheets(Item item) {
        known(item, SHEETS);
        List<Dim> size = size(item);
        Optional<String> name = name(item);
        Optional<Long> price = item.find("price").flatMap(node -> price(node, item.label));
        OptionalInt count = count(item);
        boolean trimmed =
                item.find("trimmed").map(node -> flag(node, item.at("trimmed"))).orElse(false);
        return size.size() != 2
                ? Optional.empty()
                : Optional.of(new Supply.Sheets(name, size.get(0), size.get(1), count, price, trimmed));
    }

    private Optional<Supply.Boards> boards(Item item) {
        known(item, BOARDS);
        List<Dim> size = size(item);
        Optional<String> name = name(item);
        Optional<RoughClass> rough = item.find("rough").flatMap(node -> rough(node, item.at("rough")));
        Optional<Grade> grade = item.find("grade").flatMap(node -> grade(node, item.at("grade")));
        Optional<Long> price = item.find("price").flatMap(node -> price(node, item.label));
        OptionalInt count = count(item);
        List<Defect> defects = item.find("defects")
                .map(node -> defects(node, item.at("defects")))
                .orElse(List.of());
        return size.size() != 2
                ? Optional.empty()
                : Optional.of(new Supply.Boards(
                        name, size.get(0), size.get(1), count.orElse(1), rough, grade, price, defects));
    }

    private void known(Item item, Map<String, String> keys) {
        item.fields.entries().stream()
                .map(Node.Entry::key)
                .filter(key -> !keys.containsKey(key.text()))
                .forEach(key -> reading.unknownKey(key, item.label, List.copyOf(keys.keySet())));
    }

    private Optional<String> name(Item item) {
        return item.find("name")
                .flatMap(node -> reading.scalar(node, item.at("name"), "a name"))
                .map(scalar -> scalar.text().strip());
    }

    private List<Dim> size(Item item) {
        return item.find("size").map(node -> size(node, item.at("size"))).orElseGet(() -> {
            reading.refuse(item.fields, item.label, "a \"size\", as in 2440 x 1220");
            return List.of();
        });
    }

    private OptionalInt count(Item item) {
        Optional<String> text = item.find("count")
                .flatMap(node -> reading.scalar(node, item.at("count"), "how many there are"))
                .map(scalar -> scalar.text().strip());
        if (text.isPresent() && !text.get().matches("[1-9]\\d{0,3}")) {
            item.find("count").ifPresent(node -> reading.refuse(node, item.at("count"), "a whole number, 1 or more"));
            return OptionalInt.empty();
        }
        return text.map(number -> OptionalInt.of(Integer.parseInt(number))).orElse(OptionalInt.empty());
    }

    private Optional<RoughClass> rough(Node node, String path) {
        return named(
                node,
                path,
                RoughClass::find,
                RoughClass.all().stream().map(RoughClass::name).toList());
    }

    private Optional<Grade> grade(Node node, String path) {
        return named(
                node, path, Grade::find, Grade.all().stream().map(Grade::name).toList());
    }

    private <T> Optional<T> named(Node node, String path, Function<String, Optional<T>> find, List<String> all) {
        return reading.scalar(node, path, "one of " + String.join(", ", all))
                .flatMap(scalar -> find.apply(scalar.text())
                        .or(() -> reading.problems()
                                .fail(
                                        scalar.span(),
                                        "%s is none that the tables know.".formatted(Problems.quoted(scalar.text())),
                                        Suggestions.remedy(scalar.text(), all))));
    }

    private List<Defect> defects(Node node, String path) {
        List<Node> items = node instanceof Node.Items list ? list.items() : List.of(node);
        List<Defect> all = new ArrayList<>();
        for (Node one : items) {
            Optional<List<Defect>> read = reading.scalar(one, path, "a stretch, as in 300 to 420")
                    .flatMap(scalar -> Defect.readAll(scalar.text(), reading.unit()));
            read.ifPresent(all::addAll);
            if (read.isEmpty() && one instanceof Node.Scalar) {
                reading.refuse(one, path, "a stretch from the near end, as in 300 to 420, 40 off the far edge");
            }
        }
        return all;
    }

    boolean flag(Node node, String label) {
        String text = node instanceof Node.Scalar scalar ? scalar.text().strip().toLowerCase(Locale.ROOT) : "";
        if (!List.of("yes", "no", "true", "false").contains(text)) {
            reading.refuse(node, label, "yes or no");
        }
        return !(text.equals("no") || text.equals("false"));
    }

    /** A sum of money in hundredths. @param label of what it is the price */
    Optional<Long> price(Node node, String label) {
        Optional<String> text = reading.scalar(node, label + " / price", "a sum of money, as in 84.00")
                .map(scalar -> scalar.text().strip());
        return text.isPresent() && !MONEY.matcher(text.get()).matches()
                ? reading.refuse(node, label + " / price", "a sum of money, as in 84.00")
                : text.map(money -> new BigDecimal(money)
                        .movePointRight(2)
                        .setScale(0, RoundingMode.UNNECESSARY)
                        .longValueExact());
    }

    /** A length and a width; a size by its name in feet, longer side along the grain. */
    List<Dim> size(Node node, String path) {
        Optional<Phrase> phrase =
                reading.scalar(node, path, "a size, as in 2440 x 1220").map(Phrase::of);
        String text = phrase.map(Phrase::text).orElse("");
        Optional<SheetSize> sold =
                Optional.of(text).filter(words -> FEET.matcher(words).matches()).flatMap(SheetSize::find);
        if (sold.isPresent()) {
            return List.of(sold.get().length(), sold.get().width());
        }
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
