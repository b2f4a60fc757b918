package scantling.piece;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads the air of the home, moisture measured in the wood, and findings that are accepted. */
final class ConditionsReader {
    static final Map<String, String> HOME_KEYS = homeKeys();

    static final List<String> SAWN = List.of("flat", "quarter", "mixed");

    private static final Pattern NUMBER = Pattern.compile("(-?\\d{1,4}(?:\\.\\d{1,6})?)\\s*(%|C|F|)");
    private static final int MONTHS = 12;

    private final Reading reading;

    ConditionsReader(Reading reading) {
        this.reading = reading;
    }

    private static Map<String, String> homeKeys() {
        Map<String, String> keys = new LinkedHashMap<>();
        keys.put("temperature", "Temperature indoors, C or with F behind it: one number, or twelve from January.");
        keys.put("humidity", "Relative humidity indoors in %: one number, or twelve from January.");
        return keys;
    }

    Conditions read(Node.Fields root) {
        return new Conditions(
                root.find("home").flatMap(this::home),
                root.find("shop").flatMap(this::shop),
                root.find("moisture").map(this::moisture).orElse(Map.of()),
                root.find("materials").map(this::sawn).orElse(Map.of()),
                root.find("accepted").map(this::accepted).orElse(Map.of()));
    }

    private Optional<Conditions.Home> home(Node node) {
        if (node instanceof Node.Scalar scalar && !scalar.text().isBlank()) {
            return Optional.of(new Conditions.Home(scalar.text().strip(), List.of(), List.of(), scalar.span()));
        }
        return reading.fields(node, "home", "the name of a climate, or temperature and humidity")
                .flatMap(fields ->
                        air(fields, "home", "Give one for the whole year, or twelve, January first.", MONTHS));
    }

    /** The air of the shop now: one temperature and one humidity. */
    private Optional<Conditions.Home> shop(Node node) {
        return reading.fields(node, "shop", "temperature and humidity")
                .flatMap(fields -> air(fields, "shop", "Give one: the air as it is now.", 1));
    }

    private Optional<Conditions.Home> air(Node.Fields fields, String where, String remedy, int most) {
        fields.entries().stream()
                .map(Node.Entry::key)
                .filter(key -> !HOME_KEYS.containsKey(key.text()))
                .forEach(key -> reading.unknownKey(key, "a " + where, List.copyOf(HOME_KEYS.keySet())));
        Optional<List<Double>> celsius = year(fields, where, "temperature", remedy, most);
        Optional<List<Double>> humidity = year(fields, where, "humidity", remedy, most);
        return celsius.flatMap(warm -> humidity.map(damp -> new Conditions.Home("", warm, damp, fields.span())));
    }

    private Optional<List<Double>> year(Node.Fields fields, String where, String key, String remedy, int most) {
        Optional<Node> node = fields.find(key);
        if (node.isEmpty()) {
            return reading.problems().fail(fields.span(), "The air of a %s needs its %s.".formatted(where, key), "");
        }
        List<Node> each = node.get() instanceof Node.Items list ? list.items() : List.of(node.get());
        if (each.size() != 1 && each.size() != most) {
            return reading.problems()
                    .fail(node.get().span(), "\"%s\" has %d numbers.".formatted(key, each.size()), remedy);
        }
        List<Double> numbers = new ArrayList<>();
        each.forEach(one -> number(one, where + " / " + key).ifPresent(numbers::add));
        return numbers.size() == each.size() ? Optional.of(numbers) : Optional.empty();
    }

    private Optional<Double> number(Node node, String label) {
        return reading.scalar(node, label, "a number").flatMap(scalar -> {
            Matcher said = NUMBER.matcher(scalar.text().strip());
            if (!said.matches()) {
                return reading.problems()
                        .fail(
                                scalar.span(),
                                "%s is not a number for %s."
                                        .formatted(Problems.quoted(scalar.text()), Problems.quoted(label)),
                                "As in 35, 8.5 or 68 F.");
            }
            double number = Double.parseDouble(said.group(1));
            return Optional.of(said.group(2).equals("F") ? (number - 32) / 1.8 : number);
        });
    }

    private Map<String, Double> moisture(Node node) {
        Map<String, Double> moisture = new LinkedHashMap<>();
        if (node instanceof Node.Scalar) {
            number(node, "moisture").ifPresent(all -> moisture.put(Conditions.ALL, all));
            return moisture;
        }
        entries(node, "moisture", "a number, or numbers by material").forEach(entry -> {
            String material = entry.key().text();
            if (!reading.declared().contains(material)) {
                reading.unknownKey(entry.key(), "moisture", List.copyOf(reading.declared()));
            }
            number(entry.value(), "moisture / " + material).ifPresent(number -> moisture.put(material, number));
        });
        return moisture;
    }

    /** What stands under {@code sawn} in each material; whatever else is wrong there is told by who reads materials. */
    private Map<String, String> sawn(Node node) {
        Map<String, String> sawn = new LinkedHashMap<>();
        if (node instanceof Node.Fields fields) {
            for (Node.Entry entry : fields.entries()) {
                Optional<Node> said =
                        entry.value() instanceof Node.Fields material ? material.find("sawn") : Optional.empty();
                String label = "materials / %s / sawn".formatted(entry.key().text());
                said.flatMap(word -> reading.scalar(word, label, String.join(", ", SAWN)))
                        .ifPresent(word -> sawn(word, label)
                                .ifPresent(way -> sawn.put(entry.key().text(), way)));
            }
        }
        return sawn;
    }

    private Optional<String> sawn(Node.Scalar word, String label) {
        String way = word.text().strip();
        return SAWN.contains(way)
                ? Optional.of(way)
                : reading.problems()
                        .fail(
                                word.span(),
                                "%s cannot be %s.".formatted(Problems.quoted(label), Problems.quoted(way)),
                                Suggestions.remedy(way, SAWN));
    }

    private Map<String, Conditions.Reason> accepted(Node node) {
        Map<String, Conditions.Reason> accepted = new LinkedHashMap<>();
        entries(node, "accepted", "findings with reasons, as in top / sag: it is meant to be thin")
                .forEach(entry -> reading.scalar(
                                entry.value(), "accepted / " + entry.key().text(), "a reason")
                        .ifPresent(reason -> accepted.put(
                                entry.key().text().strip(),
                                new Conditions.Reason(
                                        reason.text().strip(), entry.key().span()))));
        return accepted;
    }

    private Stream<Node.Entry> entries(Node node, String label, String wanted) {
        return reading.fields(node, label, wanted).stream().flatMap(fields -> fields.entries().stream());
    }
}
