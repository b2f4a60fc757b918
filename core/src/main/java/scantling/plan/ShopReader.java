package scantling.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Tolerances;
import scantling.finishing.CoatTable;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Tolerance;
import scantling.piece.Problem;
import scantling.piece.SettingsText.Entry;
import scantling.piece.ShopText;
import scantling.piece.ShopTextReader;
import scantling.pricing.Rates;
import scantling.pricing.RatesReader;
import scantling.stock.Allowances;
import scantling.stock.Rack;

/**
 * Makes a shop of what it says of itself (docs/shop.md). Whatever it does not say is as usual. Every problem is told at
 * once, each where it stands in the text.
 */
public final class ShopReader {
    private static final String OWN = "the shop's own";

    private final ShopText text;
    private final Rack rack;
    private final List<Problem> problems = new ArrayList<>();
    private final ShopWords words = new ShopWords(problems);

    private ShopReader(ShopText text, Rack rack) {
        this.text = text;
        this.rack = rack;
    }

    /** What became of reading. @param shop there only when nothing is wrong @param problems everything that is wrong */
    public record Result(Optional<Shop> shop, List<Problem> problems) {
        /** Takes its own copy. */
        public Result {
            problems = List.copyOf(problems);
        }
    }

    /** Reads the bytes of a file. @param rack what is on hand */
    public static Result readBytes(byte[] bytes, Rack rack) {
        return of(ShopTextReader.readBytes(bytes), rack);
    }

    /** Reads a text. @param rack what is on hand */
    public static Result read(String text, Rack rack) {
        return of(ShopTextReader.read(text), rack);
    }

    private static Result of(ShopTextReader.Result read, Rack rack) {
        if (read.shop().isEmpty()) {
            return new Result(Optional.empty(), read.problems());
        }
        ShopReader reader = new ShopReader(read.shop().get(), rack);
        Optional<Shop> shop = reader.shop();
        return new Result(reader.problems.isEmpty() ? shop : Optional.empty(), reader.problems);
    }

    private Optional<Shop> shop() {
        Map<String, Length> tools = words.lengths(text.section("tools"), Map.of());
        Allowances allowances = allowances(tools);
        Optional<Rates> rates = rates();
        problems.addAll(CoatTable.problems(text.coats()));
        Shop usual = Shop.usual();
        Office office = new Office(
                rates.orElseGet(Rates::example),
                text.calendar().orElseGet(() -> usual.office().calendar()),
                new TimeWords(words).read(text.section("times"), text.section("set-ups")),
                text.home(),
                text.coats(),
                tools);
        return Optional.of(new Shop(
                tolerances(),
                allowances,
                rack,
                usual.effort(),
                words.hardware(text.section("hardware")),
                words.joints(text.section("joints")),
                office,
                Sawing.read(text.section("sawing"), words)));
    }

    private Optional<Rates> rates() {
        List<Entry> entries = text.section("rates");
        if (entries.isEmpty()) {
            return Optional.empty();
        }
        RatesReader.Result result = RatesReader.read(entries);
        problems.addAll(result.problems());
        return result.rates();
    }

    /** A kerf may name a tool instead of a width. */
    private Allowances allowances(Map<String, Length> tools) {
        Map<String, Dim> own = new LinkedHashMap<>();
        List<Entry> known = words.known(text.section("allowances"), Allowances.keys(), "allowance");
        Map<String, Length> lengths = words.lengths(known, tools);
        lengths.forEach((key, length) -> own.put(key, Dim.lookedUp(length, "shop", key, OWN)));
        return Allowances.with(key -> Optional.ofNullable(own.get(key)));
    }

    private Tolerances tolerances() {
        Map<String, Tolerance> all = new LinkedHashMap<>(Tolerances.standard().byProcess());
        List<String> processes = all.keySet().stream().sorted().toList();
        words.lengths(words.known(text.section("tolerances"), processes, "process"), Map.of())
                .forEach((process, half) -> all.put(process, new Tolerance(half, process)));
        return new Tolerances(all);
    }
}
