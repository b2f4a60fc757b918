package scantling.pricing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.timber.Table;

/**
 * What a shop charges and how. The program's own are an invented example; a shop says its own.
 *
 * @param currency three letters
 * @param numbers rates by key, see {@code pricing/rates.csv}
 * @param words rules by key: rounding rule, rack stock
 * @param hours rate of an hour by class of operation, where it differs
 * @param stages share of the price in % due at named moments, in order; the deposit comes before, the rest at delivery
 * @param prices what things cost, by name
 * @param work the maker's own guess of hours by class, where made
 * @param isExample whether the rates are still the example's
 */
public record Rates(
        String currency,
        Map<String, Double> numbers,
        Map<String, String> words,
        Map<String, Double> hours,
        Map<String, Double> stages,
        Map<String, Double> prices,
        Work work,
        boolean isExample) {
    private static final Table TABLE = Table.read("pricing/rates.csv");
    private static final Table PRICES = Table.read("pricing/prices.csv");

    /** Takes its own copies, in the order given. */
    public Rates {
        numbers = Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
        words = Map.copyOf(words);
        hours = Collections.unmodifiableMap(new LinkedHashMap<>(hours));
        stages = Collections.unmodifiableMap(new LinkedHashMap<>(stages));
        prices = Collections.unmodifiableMap(new LinkedHashMap<>(prices));
    }

    /** The example shop. */
    public static Rates example() {
        Map<String, Double> numbers = new LinkedHashMap<>();
        Map<String, String> words = new LinkedHashMap<>();
        for (Table.Row row : TABLE.rows()) {
            if (row.text("kind").equals("word")) {
                words.put(row.text("key"), row.text("value"));
            } else {
                numbers.put(row.text("key"), row.number("value"));
            }
        }
        return new Rates(
                words.getOrDefault("currency", ""), numbers, words, Map.of(), Map.of(), Map.of(), Work.NONE, true);
    }

    /** Everything a shop may say, in the order of the table. */
    static List<Table.Row> rows() {
        return TABLE.rows();
    }

    /** A rate. @throws IllegalArgumentException for a key that is none */
    public double number(String key) {
        Double number = numbers.get(key);
        if (number == null) {
            throw new IllegalArgumentException("No rate is called (%s).".formatted(key));
        }
        return number;
    }

    /** A rate that is money. */
    public Money money(String key) {
        return sum(number(key));
    }

    Money sum(double amount) {
        return new Money(BigDecimal.valueOf(amount), currency);
    }

    /** What an hour of a class costs. */
    public Money hour(String operation) {
        return sum(hours.getOrDefault(operation, number("hour")));
    }

    /** What the shop says in its own words, where it does. */
    Optional<String> word(String key) {
        return Optional.of(words.getOrDefault(key, "")).filter(word -> !word.isEmpty());
    }

    /** How the price is rounded. */
    public RoundingMode rounding() {
        return switch (words.getOrDefault("rounding rule", "up")) {
            case "down" -> RoundingMode.FLOOR;
            case "near" -> RoundingMode.HALF_UP;
            default -> RoundingMode.CEILING;
        };
    }

    /** Whether stock off the rack costs nothing. */
    public boolean rackIsFree() {
        return words.getOrDefault("rack stock", "").equals("free");
    }

    /** The price of a thing: the shop's own, else the example's. @param kind timber, sheet, hardware, finish */
    public Optional<Price> price(String kind, String item) {
        Double own = prices.get(item);
        if (own != null) {
            return Optional.of(new Price(sum(own), "the shop's price", false));
        }
        return PRICES.rows().stream()
                .filter(row -> row.text("kind").equals(kind) && row.text("item").equals(item))
                .findFirst()
                .map(this::price);
    }

    /** The price of hardware: of what it is called, else of the first known kind whose name is in it. */
    public Optional<Price> hardware(String what) {
        Optional<Price> own = prices.keySet().stream()
                .filter(what::contains)
                .max(Comparator.comparingInt(String::length))
                .map(item -> new Price(sum(prices.getOrDefault(item, 0.0)), "the shop's price", false));
        return own.or(() -> PRICES.rows().stream()
                .filter(row -> row.text("kind").equals("hardware") && what.contains(row.text("item")))
                .findFirst()
                .map(this::price));
    }

    /** A sheet's price by its kind; an example price grows with its thickness. @param millimetres nominal thickness */
    Optional<Price> sheet(String panel, double millimetres) {
        if (prices.containsKey(panel)) {
            return price("sheet", panel);
        }
        return PRICES.rows().stream()
                .filter(row -> row.text("kind").equals("sheet")
                        && (row.text("item").equals(panel) || panel.contains(row.text("item"))))
                .findFirst()
                .map(row -> new Price(
                        sum(row.number("price") * (1 + millimetres / row.number("thickness_mm")) / 2),
                        row.source(),
                        true));
    }

    private Price price(Table.Row row) {
        return new Price(sum(row.number("price")), row.source(), true);
    }

    /** What one costs. @param money for one @param source who says so @param example whether it is only the example's */
    public record Price(Money money, String source, boolean example) {}

    /** Solid woods that have a price, own and example. */
    public List<String> pricedWoods() {
        return PRICES.rows().stream()
                .filter(row -> row.text("kind").equals("timber"))
                .map(row -> row.text("item"))
                .toList();
    }
}
