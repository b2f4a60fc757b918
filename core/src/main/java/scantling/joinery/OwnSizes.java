package scantling.joinery;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import scantling.measure.Dim;
import scantling.measure.LengthReader;
import scantling.measure.Unit;

/** The sizes of bits, dowels and biscuits that a shop has, where it says so, in place of those of the tables. */
final class OwnSizes {
    /** What a shop can list. */
    static final List<String> KEYS = List.of("bits", "dowels", "biscuits");

    private static final String OWN = "the shop's own";

    private OwnSizes() {}

    private static List<String> list(String said) {
        return Arrays.stream(said.split("[,;]", -1))
                .map(String::strip)
                .filter(one -> !one.isEmpty())
                .toList();
    }

    private static Optional<List<Dim>> lengths(String key, Function<String, Optional<String>> own) {
        return own.apply(key)
                .map(said -> list(said).stream()
                        .map(one -> Dim.lookedUp(
                                LengthReader.read(one, Unit.MM)
                                        .filter(length -> length.isPositive())
                                        .orElseThrow(() -> new IllegalArgumentException(
                                                "(%s) of %s is no length.".formatted(one, key))),
                                "shop",
                                key,
                                OWN))
                        .sorted()
                        .toList());
    }

    /** The straight bits in its drawer, for pieces in either unit. */
    static List<JointRules.Bit> bits(List<JointRules.Bit> usual, Function<String, Optional<String>> own) {
        return lengths("bits", own)
                .filter(sizes -> !sizes.isEmpty())
                .map(sizes -> sizes.stream()
                        .flatMap(size -> Stream.of(new JointRules.Bit(false, size), new JointRules.Bit(true, size)))
                        .toList())
                .orElse(usual);
    }

    /** The dowels on its shelf; lengths are those of the table where that knows the diameter. */
    static List<JointRules.Dowel> dowels(List<JointRules.Dowel> usual, Function<String, Optional<String>> own) {
        return lengths("dowels", own)
                .filter(sizes -> !sizes.isEmpty())
                .map(sizes -> sizes.stream()
                        .flatMap(size -> Stream.of(dowel(size, false, usual), dowel(size, true, usual)))
                        .toList())
                .orElse(usual);
    }

    private static JointRules.Dowel dowel(Dim size, boolean inch, List<JointRules.Dowel> usual) {
        List<Dim> lengths = usual.stream()
                .filter(each -> each.diameter().value().equals(size.value()))
                .map(JointRules.Dowel::lengths)
                .findFirst()
                .orElse(List.of());
        return new JointRules.Dowel(inch, size, lengths, OWN);
    }

    /** The biscuits it has, by their names. */
    static List<JointRules.Biscuit> biscuits(List<JointRules.Biscuit> usual, Function<String, Optional<String>> own) {
        return own.apply("biscuits")
                .map(said -> list(said).stream()
                        .map(name -> biscuit(name, usual))
                        .sorted(Comparator.comparing(JointRules.Biscuit::length))
                        .toList())
                .filter(named -> !named.isEmpty())
                .orElse(usual);
    }

    private static JointRules.Biscuit biscuit(String name, List<JointRules.Biscuit> usual) {
        return usual.stream()
                .filter(each -> each.name().equals(name) || each.name().equals("#" + name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No biscuit is called (%s); there are %s."
                        .formatted(
                                name,
                                String.join(
                                        ", ",
                                        usual.stream()
                                                .map(JointRules.Biscuit::name)
                                                .toList()))));
    }
}
