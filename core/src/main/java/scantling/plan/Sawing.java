package scantling.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import scantling.cutting.FirstCut;
import scantling.cutting.Wishes;
import scantling.piece.SettingsText.Entry;
import scantling.timber.Table;

/**
 * How the shop saws, and what it likes better among plans of the same cost.
 *
 * @param firstCut which way the first cuts of a sheet go
 * @param stages how many times the way of cutting a sheet may change; 0 for any
 * @param lift kilograms that one person lifts: a heavier sheet is first broken down near its edge
 * @param wishes what counts after money, told in fence settings
 */
public record Sawing(FirstCut firstCut, int stages, double lift, Wishes wishes) {
    /** Of a shop that has not said. */
    public static final Sawing USUAL = new Sawing(
            FirstCut.ANY,
            0,
            Table.read("cutting/wishes.csv").getRow("name", "lift").number("value"),
            Wishes.USUAL);

    private static final Pattern NUMBER = Pattern.compile("(\\d{1,4}(?:\\.\\d{1,3})?)(?: kg)?");
    private static final Map<String, String> KEYS = keys();

    private static Map<String, String> keys() {
        Map<String, String> keys = new LinkedHashMap<>();
        keys.put("first cut", "along, across or free");
        keys.put("stages", "how often the way of cutting may change, as in 2, or free");
        keys.put("one person lifts", "as in 25 kg: a heavier sheet is first broken down near its edge");
        keys.put("fence setting", "what moving the fence counts, as in 1");
        keys.put("cut", "what one cut counts, in fence settings");
        keys.put("whole offcut", "what keeping a whole sheet or board is worth, in fence settings");
        keys.put("another size", "what one more size of part on a sheet counts, in fence settings");
        keys.put("strips together", "what it is worth to take the strips of a glue-up from one board less");
        return keys;
    }

    /** What can be set, each with what to write. */
    public static Map<String, String> known() {
        return KEYS;
    }

    /** What counts, as it is written. @param key one of {@link #known} */
    public String written(String key) {
        return switch (key) {
            case "first cut" ->
                firstCut == FirstCut.ANY ? "free" : firstCut.name().toLowerCase(Locale.ROOT);
            case "stages" -> stages == 0 ? "free" : Integer.toString(stages);
            case "one person lifts" -> plain(lift) + " kg";
            case "fence setting" -> plain(wishes.setting());
            case "cut" -> plain(wishes.cut());
            case "whole offcut" -> plain(wishes.offcut());
            case "another size" -> plain(wishes.sizes());
            default -> plain(wishes.together());
        };
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
    }

    /** Reads what a shop says; what it does not say is as usual. */
    static Sawing read(List<Entry> entries, ShopWords words) {
        Sawing sawing = USUAL;
        for (Entry entry : words.known(entries, new ArrayList<>(KEYS.keySet()), "wish for sawing")) {
            Optional<Sawing> next = sawing.with(entry.key(), entry.value());
            if (next.isEmpty()) {
                words.problem(
                        entry,
                        "\"%s\" cannot be said for \"%s\".".formatted(entry.value(), entry.key()),
                        "Write %s.".formatted(KEYS.getOrDefault(entry.key(), "")));
            }
            sawing = next.orElse(sawing);
        }
        return sawing;
    }

    private Optional<Sawing> with(String key, String value) {
        return switch (key) {
            case "first cut" -> first(value).map(cut -> new Sawing(cut, stages, lift, wishes));
            case "stages" -> stages(value).map(many -> new Sawing(firstCut, many, lift, wishes));
            case "one person lifts" -> number(value).map(kilograms -> new Sawing(firstCut, stages, kilograms, wishes));
            default -> number(value).map(worth -> new Sawing(firstCut, stages, lift, wish(key, worth)));
        };
    }

    private static Optional<FirstCut> first(String value) {
        return switch (value.toLowerCase(Locale.ROOT)) {
            case "along" -> Optional.of(FirstCut.ALONG);
            case "across" -> Optional.of(FirstCut.ACROSS);
            case "free" -> Optional.of(FirstCut.ANY);
            default -> Optional.empty();
        };
    }

    private static Optional<Integer> stages(String value) {
        if (value.equals("free")) {
            return Optional.of(0);
        }
        return value.matches("[1-9]") ? Optional.of(Integer.parseInt(value)) : Optional.empty();
    }

    private static Optional<Double> number(String value) {
        Matcher said = NUMBER.matcher(value);
        return said.matches() ? Optional.of(Double.parseDouble(said.group(1))) : Optional.empty();
    }

    private Wishes wish(String key, double worth) {
        return switch (key) {
            case "fence setting" -> wishes.withSetting(worth);
            case "cut" -> wishes.withCut(worth);
            case "whole offcut" -> wishes.withOffcut(worth);
            case "another size" -> wishes.withSizes(worth);
            default -> wishes.withTogether(worth);
        };
    }
}
