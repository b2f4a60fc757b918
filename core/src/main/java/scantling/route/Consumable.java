package scantling.route;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.stock.Packs;
import scantling.timber.Table;

/**
 * What a whole route uses up of one thing besides coats, and the packs it comes in.
 *
 * @param name what
 * @param amount how much, for all operations together
 * @param unit of what
 * @param packs sizes of the packs to buy, the largest first; empty where it is not sold in packs
 */
public record Consumable(String name, double amount, String unit, List<Double> packs) {
    private static final List<Table.Row> SOLD = Table.read("route/packs.csv").rows();

    /** Takes its own copy. */
    public Consumable {
        packs = List.copyOf(packs);
    }

    /** Everything a route uses up but its coats, which the finish counts; in the order in which it is needed. */
    public static List<Consumable> of(Route route) {
        Map<String, Supply> sums = new LinkedHashMap<>();
        for (Operation operation : route.operations()) {
            for (Supply supply : operation.supplies()) {
                if (!isCoat(operation, supply)) {
                    sums.merge(supply.name(), supply, Supply::plus);
                }
            }
        }
        return sums.values().stream().map(Consumable::packed).toList();
    }

    private static boolean isCoat(Operation operation, Supply supply) {
        return operation.step() == Step.FINISH && supply.unit().equals("l");
    }

    private static Consumable packed(Supply sum) {
        List<Double> sizes = new ArrayList<>();
        for (Table.Row row : SOLD) {
            if (sum.name().startsWith(row.text("supply")) && sum.unit().equals(row.text("unit"))) {
                sizes.add(row.number("size"));
            }
        }
        Optional<Packs> packs = sizes.isEmpty() ? Optional.empty() : Optional.of(Packs.of(sizes));
        double least = sum.unit().equals("piece") ? Math.ceil(sum.amount() - 1e-9) : sum.amount();
        return new Consumable(
                sum.name(),
                least,
                sum.unit(),
                packs.map(sold -> sold.filled(least)).orElse(List.of()));
    }
}
