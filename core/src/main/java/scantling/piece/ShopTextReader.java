package scantling.piece;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.measure.Unit;

/**
 * Reads what a shop says of itself; every section may be left out, and is then as usual:
 *
 * <pre>{@code
 * allowances: {kerf: 3.2 mm}
 * tolerances: {cut to stop: 0.2 mm}
 * hardware: {concealed undermount: {side clearance: 21 mm}}
 * home: {temperature: 20, humidity: [35, 35, 38, 42, 48, 55, 60, 62, 58, 50, 42, 37]}
 * calendar: {zone: Europe/Lisbon, hours: "8:00-12:30, 13:00-17:00", benches: 2}
 * rates: {currency: EUR, hour: 48, hours: {finishing: 42}, margin: 20 %}
 * times: {dowel: 3 to 6 min}
 * coats: {house lacquer: {like: waterborne lacquer, solids: 32 %}}
 * }</pre>
 */
public final class ShopTextReader {
    private static final String HOME = "home";
    private static final String CALENDAR = "calendar";
    private static final String COATS = "coats";

    private final Problems problems = new Problems();
    private final Reading reading = new Reading(new Language(List.of()), problems, Unit.MM);
    private final Map<String, List<SettingsText.Entry>> sections = new LinkedHashMap<>();
    private Optional<Workshop> calendar = Optional.empty();
    private Optional<Conditions.Home> home = Optional.empty();
    private List<FinishText.Own> coats = List.of();

    private ShopTextReader() {}

    /** What became of reading. @param shop there only when nothing is wrong @param problems everything that is wrong */
    public record Result(Optional<ShopText> shop, List<Problem> problems) {
        /** Takes its own copy. */
        public Result {
            problems = List.copyOf(problems);
        }
    }

    /** Reads the bytes of a file. */
    public static Result readBytes(byte[] bytes) {
        PieceBytes read = PieceBytes.of(bytes);
        return read.text()
                .map(ShopTextReader::read)
                .orElseGet(() ->
                        new Result(Optional.empty(), read.problem().stream().toList()));
    }

    /** Reads a text. */
    public static Result read(String text) {
        if (text.isBlank()) {
            return new Result(Optional.of(ShopText.NONE), List.of());
        }
        ShopTextReader reader = new ShopTextReader();
        YamlTree.read(text, reader.problems).ifPresent(reader::root);
        List<Problem> wrong = reader.problems.list();
        ShopText shop = new ShopText(reader.sections, reader.calendar, reader.home, reader.coats);
        return new Result(wrong.isEmpty() ? Optional.of(shop) : Optional.empty(), wrong);
    }

    private void root(Node root) {
        if (!(root instanceof Node.Fields fields)) {
            problems.add(root.span(), "Here stands %s.".formatted(root.word()), "Write rates: {hour: 48}.");
            return;
        }
        fields.entries().forEach(this::entry);
    }

    private void entry(Node.Entry entry) {
        String key = entry.key().text();
        Node value = entry.value();
        Node.Fields alone = new Node.Fields(List.of(entry), value.span());
        switch (key) {
            case CALENDAR -> calendar = Optional.of(new WorkshopReader(problems).read(value));
            case HOME -> home = new ConditionsReader(reading).read(alone).home();
            case COATS -> coats = new FinishReader(reading).read(alone).coats();
            default -> section(entry);
        }
    }

    private void section(Node.Entry entry) {
        List<String> known = new ArrayList<>(ShopText.keys().keySet());
        String key = entry.key().text();
        if (known.contains(key)) {
            List<SettingsText.Entry> entries = new ArrayList<>();
            SettingsText.fields(entry.value(), "", entries, problems);
            sections.put(key, entries);
        } else {
            known.addAll(List.of(HOME, CALENDAR, COATS));
            problems.add(
                    entry.key().span(),
                    "A shop has no %s.".formatted(Problems.quoted(key)),
                    (Spelling.maybe(key, known) + " Say " + String.join(", ", known) + ".").strip());
        }
    }
}
