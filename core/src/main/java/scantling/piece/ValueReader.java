package scantling.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.LengthReader;
import scantling.measure.Unit;
import scantling.space.Outline;

/** Reads what stands in a field, by its kind. */
final class ValueReader {
    private static final Pattern WHOLE = Pattern.compile("\\d{1,6}");
    private static final int MOST = 1000;
    /** Sizes that may well be nothing. */
    private static final Pattern MAY_BE_NOTHING =
            Pattern.compile(".*\\b(gap|overhang|clearance|setback|inset|reveal|stands?|projection)\\b.*");

    private static final Pattern PLACE = Pattern.compile(".*\\b(at|offset)\\b.*");
    private static final Set<String> YES = Set.of("yes", "true");
    private static final Set<String> NO = Set.of("no", "false");

    private final Reading reading;
    private final ElementReader elements;
    private final StockReader stocks;
    private final PortionReader portions;

    ValueReader(Reading reading, ElementReader elements) {
        this.reading = reading;
        this.elements = elements;
        this.stocks = new StockReader(reading);
        this.portions = new PortionReader(reading);
    }

    /** What is wanted in a place. @param sign which lengths the field around it allows */
    record Wanted(Field field, Literals literals, Reading.Sign around) {
        String label() {
            return literals.label();
        }

        /** Which lengths make sense in the field. */
        Reading.Sign sign() {
            if (around == Reading.Sign.ANY || PLACE.matcher(field.key()).matches()) {
                return Reading.Sign.ANY;
            }
            boolean usuallyNothing = field.usual()
                    .flatMap(text -> LengthReader.read(text, Unit.MM))
                    .filter(Length::isZero)
                    .isPresent();
            boolean zeroToo = usuallyNothing
                    || field.kind() == Field.Kind.SIDES
                    || MAY_BE_NOTHING.matcher(field.key()).matches();
            return zeroToo ? Reading.Sign.ZERO_TOO : Reading.Sign.POSITIVE;
        }
    }

    /** The value; empty when it cannot be read, which is then among the problems. */
    Optional<Value> read(Wanted wanted, Node node) {
        return switch (wanted.field().kind()) {
            case LENGTH ->
                reading.length(node, wanted.literals(), wanted.sign()).map(Value.OfLength::new);
            case STOCK -> stocks.read(node, wanted.literals());
            case COUNT, COUNT_OR_NONE -> count(wanted, node);
            case CHOICE -> choice(wanted, node);
            case TEXT -> reading.scalar(node, wanted.label(), "a text").map(s -> new Value.OfText(s.text()));
            case FLAG -> flag(wanted, node);
            case PORTIONS -> portions.read(node, wanted.literals());
            case LENGTHS -> lengths(wanted, node);
            case SIDES -> sides(wanted, node);
            case LEANS -> leans(wanted, node);
            case ANGLE -> new LeanReader(reading).angle(node, wanted.literals()).map(Value.OfAngle::new);
            case PART -> part(wanted, node);
            case PARTS -> parts(wanted, node);
            case OUTLINE -> outline(wanted, node);
            case STEPS -> Optional.of(new Value.OfParts(elements.steps(node, wanted.literals())));
        };
    }

    private Optional<Value> sides(Wanted wanted, Node node) {
        return new SidesReader(reading)
                .read(node, wanted.literals(), (one, literals) -> reading.length(one, literals, wanted.sign()))
                .map(Value.OfSides::new);
    }

    private Optional<Value> leans(Wanted wanted, Node node) {
        LeanReader lean = new LeanReader(reading);
        return new SidesReader(reading)
                .read(node, wanted.literals(), lean::read)
                .map(Value.OfLeans::new);
    }

    private Optional<Value> count(Wanted wanted, Node node) {
        boolean zeroToo = wanted.field().kind() == Field.Kind.COUNT_OR_NONE;
        String rule = "a whole number from %d to %d".formatted(zeroToo ? 0 : 1, MOST);
        Optional<Node.Scalar> scalar = reading.scalar(node, wanted.label(), rule);
        Optional<Integer> count = scalar.map(Node.Scalar::text)
                .map(String::strip)
                .filter(text -> WHOLE.matcher(text).matches())
                .map(Integer::parseInt)
                .filter(number -> number <= MOST && number >= (zeroToo ? 0 : 1));
        return count.isEmpty() && scalar.isPresent()
                ? reading.refuse(node, wanted.label(), rule)
                : count.map(Value.OfCount::new);
    }

    private Optional<Value> choice(Wanted wanted, Node node) {
        List<String> words = wanted.field().choices();
        Optional<Node.Scalar> scalar = reading.scalar(node, wanted.label(), "one of: " + String.join(", ", words));
        Optional<Value> chosen = scalar.map(s -> s.text().strip().toLowerCase(Locale.ROOT))
                .flatMap(text -> words.stream()
                        .filter(word -> word.toLowerCase(Locale.ROOT).equals(text))
                        .findFirst())
                .map(Value.OfText::new);
        return chosen.isEmpty() && scalar.isPresent()
                ? reading.problems()
                        .fail(
                                node.span(),
                                "%s is no choice for %s.".formatted(node.word(), wanted.label()),
                                Suggestions.remedy(scalar.get().text(), words))
                : chosen;
    }

    /** A key that stands alone means yes: {@code {of: cherry, inset}}. */
    private Optional<Value> flag(Wanted wanted, Node node) {
        if (node.isEmpty()) {
            return Optional.of(new Value.OfFlag(true));
        }
        String text = node instanceof Node.Scalar scalar ? scalar.text().strip().toLowerCase(Locale.ROOT) : "";
        return YES.contains(text) || NO.contains(text)
                ? Optional.of(new Value.OfFlag(YES.contains(text)))
                : reading.refuse(node, wanted.label(), "yes or no");
    }

    private Optional<Value> lengths(Wanted wanted, Node node) {
        List<Node> items = node instanceof Node.Scalar
                ? List.of(node)
                : reading.items(node, wanted.label(), "a list of lengths").orElse(List.of());
        if (node instanceof Node.Items && items.isEmpty()) {
            return reading.refuse(node, wanted.label(), "one length or more");
        }
        List<Dim> lengths = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            Literals inside = node instanceof Node.Scalar
                    ? wanted.literals()
                    : wanted.literals().inside("" + (i + 1));
            reading.length(items.get(i), inside, wanted.sign()).ifPresent(lengths::add);
        }
        return lengths.size() == items.size() && !items.isEmpty()
                ? Optional.of(new Value.OfLengths(List.copyOf(lengths)))
                : Optional.empty();
    }

    private static Shape shape(Wanted wanted) {
        return wanted.field()
                .shape()
                .orElseThrow(() -> new IllegalStateException(
                        "The field (%s) has no shape.".formatted(wanted.field().key())));
    }

    private Optional<Value> part(Wanted wanted, Node node) {
        Shape shape = shape(wanted);
        return elements.element(
                        new ElementReader.Asked(shape, shape.key(), node.span(), inherited(wanted)),
                        node,
                        wanted.literals())
                .map(Value.OfPart::new);
    }

    private static Reading.Sign inherited(Wanted wanted) {
        return wanted.sign() == Reading.Sign.ANY ? Reading.Sign.ANY : Reading.Sign.POSITIVE;
    }

    private Optional<Value> parts(Wanted wanted, Node node) {
        Shape shape = shape(wanted);
        List<Element> parts = new ArrayList<>();
        List<Node> items;
        List<String> names;
        if (node instanceof Node.Fields fields && !isOne(fields, shape)) {
            items = fields.entries().stream().map(Node.Entry::value).toList();
            names = fields.entries().stream().map(entry -> entry.key().text()).toList();
        } else {
            items = node instanceof Node.Fields
                    ? List.of(node)
                    : reading.items(node, wanted.label(), "a list").orElse(List.of());
            names = ItemNames.of(items, false);
        }
        if (items.isEmpty() && node instanceof Node.Items) {
            return reading.refuse(node, wanted.label(), "one or more");
        }
        boolean byName = node instanceof Node.Fields fields && !isOne(fields, shape);
        for (int i = 0; i < items.size(); i++) {
            Node item = items.get(i);
            elements.element(
                            new ElementReader.Asked(
                                    shape, byName ? names.get(i) : shape.key(), item.span(), inherited(wanted)),
                            item,
                            node instanceof Node.Fields && !byName
                                    ? wanted.literals()
                                    : wanted.literals().inside(names.get(i)))
                    .ifPresent(parts::add);
        }
        return parts.size() == items.size() && !items.isEmpty()
                ? Optional.of(new Value.OfParts(List.copyOf(parts)))
                : Optional.empty();
    }

    /** Whether these are the fields of one part, not parts by name. */
    private static boolean isOne(Node.Fields fields, Shape shape) {
        return fields.entries().stream()
                .allMatch(entry -> entry.key().text().equals("name")
                        || shape.fields().stream()
                                .anyMatch(
                                        field -> field.key().equals(entry.key().text())));
    }

    private Optional<Value> outline(Wanted wanted, Node node) {
        List<Node> items = reading.items(node, wanted.label(), "a list of corners, each [along, across]")
                .orElse(List.of());
        List<Outline.Corner> corners = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            corner(items.get(i), wanted.literals().inside("" + (i + 1))).ifPresent(corners::add);
        }
        if (items.size() < 3 && node instanceof Node.Items) {
            return reading.refuse(node, wanted.label(), "three corners or more");
        }
        return corners.size() == items.size() && !items.isEmpty()
                ? Optional.of(new Value.OfOutline(new Outline(corners)))
                : Optional.empty();
    }

    private Optional<Outline.Corner> corner(Node node, Literals literals) {
        if (!(node instanceof Node.Items pair) || pair.items().size() != 2) {
            return reading.refuse(node, literals.label(), "two lengths: [along, across]");
        }
        Optional<Dim> along = reading.length(pair.items().get(0), literals.inside("1"), Reading.Sign.ANY);
        Optional<Dim> across = reading.length(pair.items().get(1), literals.inside("2"), Reading.Sign.ANY);
        return along.isEmpty() || across.isEmpty()
                ? Optional.empty()
                : Optional.of(new Outline.Corner(along.get(), across.get()));
    }
}
