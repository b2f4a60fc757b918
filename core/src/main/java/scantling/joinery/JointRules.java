package scantling.joinery;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import scantling.feature.WoodScrew;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.LengthReader;
import scantling.measure.Unit;
import scantling.timber.Table;

/**
 * The rules of thumb that joints are chosen by, and the sizes of biscuits, dowels, bits and screws that the shop has. Each
 * number knows its source; a shop replaces any of them.
 *
 * @param lengths by key, see {@link #keys}
 * @param inches those that differ for pieces in inches, by key
 * @param shares parts of something, by key
 * @param biscuits from the smallest up
 * @param dowels from the thinnest up
 * @param bits straight bits from the thinnest up
 * @param screws all gauges, from the thinnest up
 * @param pockets by thickness of stock, thinnest first
 */
public record JointRules(
        Map<String, Dim> lengths,
        Map<String, Dim> inches,
        Map<String, Share> shares,
        List<Biscuit> biscuits,
        List<Dowel> dowels,
        List<Bit> bits,
        List<WoodScrew> screws,
        List<Pocket> pockets) {
    private static final String FIGURES = "joinery/figures.csv";
    private static final JointRules STANDARD = with(key -> Optional.empty(), OwnRows.NONE);

    /** A part of something: a third. @param source who says so */
    public record Share(long numerator, long denominator, String source) {
        /** That part of a number. */
        public Dim of(Dim whole) {
            return whole.share(numerator, denominator);
        }
    }

    /** A size of biscuit. @param slot how deep its slot is in each part @param leastStock the thinnest part it suits */
    public record Biscuit(String name, Dim length, Dim width, Dim thickness, Dim slot, Dim leastStock, String source) {}

    /** A diameter of dowel. @param inch whether it goes with pieces in inches @param lengths that it is sold in, shortest first */
    public record Dowel(boolean inch, Dim diameter, List<Dim> lengths, String source) {}

    /** A straight bit. @param inch whether it goes with pieces in inches */
    public record Bit(boolean inch, Dim diameter) {}

    /** What a thickness of stock is pocket-screwed with. @param screw how long @param gauge of it */
    public record Pocket(Dim thickness, Dim screw, int gauge, String source) {}

    /** Takes its own copies. */
    public JointRules {
        lengths = Map.copyOf(lengths);
        inches = Map.copyOf(inches);
        shares = Map.copyOf(shares);
        biscuits = List.copyOf(biscuits);
        dowels = List.copyOf(dowels);
        bits = List.copyOf(bits);
        screws = List.copyOf(screws);
        pockets = List.copyOf(pockets);
    }

    /** The tables' own. */
    public static JointRules standard() {
        return STANDARD;
    }

    /** The keys by which a shop can replace lengths and shares, and say which sizes it has. */
    public static List<String> keys() {
        return Stream.concat(Table.read(FIGURES).rows().stream().map(row -> row.text("key")), OwnSizes.KEYS.stream())
                .toList();
    }

    /** The shop's own rules where it has any, with the rows of the tables as they are. */
    public static JointRules with(Function<String, Optional<String>> own) {
        return with(own, OwnRows.NONE);
    }

    /**
     * The shop's own where it has one, else the table's.
     *
     * @param own what the shop writes for a key: {@code 4 mm}, {@code 1/3}, {@code 6 mm, 8 mm, 12 mm}
     * @param rows rows of biscuits, dowels and screws of its own
     * @throws IllegalArgumentException if it is neither a length, a share nor a list of sizes, as its key asks, or a row is
     *     not whole
     */
    public static JointRules with(Function<String, Optional<String>> own, OwnRows rows) {
        Map<String, Dim> lengths = new LinkedHashMap<>();
        Map<String, Dim> inches = new LinkedHashMap<>();
        Map<String, Share> shares = new LinkedHashMap<>();
        for (Table.Row row : Table.read(FIGURES).rows()) {
            String key = row.text("key");
            String text = own.apply(key).orElse(row.text("value"));
            String source = own.apply(key).map(said -> "the shop's own").orElse(row.source());
            if (isLength(row.text("value"))) {
                lengths.put(key, Dim.lookedUp(length(key, text), FIGURES, key, source));
                if (own.apply(key).isEmpty()) {
                    row.findLength("inch").ifPresent(inch -> inches.put(key, Dim.lookedUp(inch, FIGURES, key, source)));
                }
            } else {
                shares.put(key, share(key, text, source));
            }
        }
        return new JointRules(
                lengths,
                inches,
                shares,
                OwnSizes.biscuits(rows.biscuits(readBiscuits()), own),
                OwnSizes.dowels(rows.dowels(readDowels()), own),
                OwnSizes.bits(readBits(), own),
                rows.screws(WoodScrew.all()),
                withScrews(rows.pockets(readPockets()), rows.screws(WoodScrew.all())));
    }

    private static boolean isLength(String text) {
        return text.endsWith("mm");
    }

    private static Length length(String key, String text) {
        return LengthReader.read(text, Unit.MM)
                .orElseThrow(() -> new IllegalArgumentException("(%s) of %s is no length.".formatted(text, key)));
    }

    private static Share share(String key, String text, String source) {
        try {
            int slash = text.indexOf('/');
            long numerator = Long.parseLong(slash < 0 ? text : text.substring(0, slash));
            return new Share(numerator, slash < 0 ? 1 : Long.parseLong(text.substring(slash + 1)), source);
        } catch (NumberFormatException unreadable) {
            throw new IllegalArgumentException(
                    "(%s) of %s is no share: write it like 1/3.".formatted(text, key), unreadable);
        }
    }

    private static List<Biscuit> readBiscuits() {
        return Table.read("joinery/biscuits.csv").rows().stream()
                .map(row -> new Biscuit(
                        row.text("name"),
                        row.dim("length", row.text("name")),
                        row.dim("width", row.text("name")),
                        row.dim("thickness", row.text("name")),
                        row.dim("slot_depth", row.text("name")),
                        row.dim("least_stock", row.text("name")),
                        row.source()))
                .toList();
    }

    private static List<Dowel> readDowels() {
        return Table.read("joinery/dowels.csv").rows().stream()
                .map(row -> new Dowel(
                        row.text("system").equals("in"),
                        row.dim("diameter", row.text("diameter")),
                        sizes(row, "lengths", row.text("diameter")),
                        row.source()))
                .toList();
    }

    private static List<Bit> readBits() {
        return Table.read("joinery/bits.csv").rows().stream()
                .map(row -> new Bit(row.text("system").equals("in"), row.dim("diameter", row.text("diameter"))))
                .toList();
    }

    /** Checks that each is driven with a screw that is known. */
    private static List<Pocket> withScrews(List<Pocket> pockets, List<WoodScrew> screws) {
        for (Pocket pocket : pockets) {
            if (screws.stream().noneMatch(screw -> screw.gauge() == pocket.gauge())) {
                throw new IllegalArgumentException("No screw of gauge (%d) is known.".formatted(pocket.gauge()));
            }
        }
        return pockets;
    }

    private static List<Pocket> readPockets() {
        return Table.read("joinery/pockets.csv").rows().stream()
                .map(row -> new Pocket(
                        row.dim("thickness", row.text("thickness")),
                        row.dim("screw", row.text("thickness")),
                        Integer.parseInt(row.text("gauge")),
                        row.source()))
                .toList();
    }

    private static List<Dim> sizes(Table.Row row, String column, String key) {
        return row.list(column).stream()
                .map(text -> Dim.lookedUp(length(key, text), "joinery", key + " x " + text, row.source()))
                .toList();
    }

    /** The rules for a piece: its dowels and bits, and lengths that a rule in its unit shows. */
    JointRules in(boolean inch) {
        Map<String, Dim> all = new LinkedHashMap<>(lengths);
        if (inch) {
            all.putAll(inches);
        }
        return new JointRules(
                all,
                inches,
                shares,
                biscuits,
                dowels.stream().filter(dowel -> dowel.inch() == inch).toList(),
                bits.stream().filter(bit -> bit.inch() == inch).toList(),
                screws,
                pockets);
    }

    /** A length of the rules. @throws IllegalStateException for a key that they do not have, which is a fault of the code */
    Dim length(String key) {
        return known(lengths.get(key), key);
    }

    /** A share of the rules. @throws IllegalStateException for a key that they do not have, which is a fault of the code */
    Share share(String key) {
        return known(shares.get(key), key);
    }

    /** A gauge of screw. @throws IllegalStateException for one that is not there, which is a fault of the code */
    WoodScrew screw(int gauge) {
        return screws.stream()
                .filter(screw -> screw.gauge() == gauge)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("No screw of gauge (%d) is known.".formatted(gauge)));
    }

    private static <T> T known(@org.jspecify.annotations.Nullable T found, String key) {
        if (found == null) {
            throw new IllegalStateException("The joint rules have no (%s).".formatted(key));
        }
        return found;
    }

    /** What must stay behind a hole in wood of a thickness. */
    Dim behind(Dim thickness) {
        Dim share = share("behind a hole").of(thickness);
        Dim least = length("least behind a hole");
        return share.compareTo(least) > 0 ? share : least;
    }
}
