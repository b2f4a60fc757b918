package scantling.finishing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.stock.Packs;
import scantling.timber.Table;

/** Adds up what is needed of each coat, and how it is mixed and bought. */
final class Buying {
    private static final Packs TINS = Packs.of(Table.read("finishing/tins.csv").rows().stream()
            .map(row -> row.number("litres"))
            .toList());

    private Buying() {}

    static List<FinishPlan.Buy> of(List<FinishGroup> groups) {
        Map<String, List<Coating>> byCoat = new LinkedHashMap<>();
        groups.forEach(group -> group.coatings()
                .forEach(coating -> byCoat.computeIfAbsent(coating.coat().name(), key -> new ArrayList<>())
                        .add(coating)));
        return byCoat.values().stream().map(Buying::buy).toList();
    }

    private static FinishPlan.Buy buy(List<Coating> coatings) {
        Coat coat = coatings.get(0).coat();
        Amount litres = Amount.ZERO;
        Amount thinner = Amount.ZERO;
        for (Coating coating : coatings) {
            litres = litres.plus(coating.litres());
            thinner = thinner.plus(coating.litres().times(coating.thinned() / (1 + coating.thinned())));
        }
        Optional<Amount> parts = coat.find("parts to one of hardener");
        Amount unthinned = minus(litres, thinner);
        Optional<Amount> hardener = parts.map(each -> unthinned.times(1 / (1 + each.likely())));
        Amount toBuy = hardener.map(each -> minus(unthinned, each)).orElse(unthinned);
        Optional<Amount> thinning = thinner.high() > 0 ? Optional.of(thinner) : Optional.empty();
        return new FinishPlan.Buy(
                coat, litres, tins(toBuy.high()), hardener, thinning, mixing(coat, parts, thinning.isPresent()));
    }

    private static Amount minus(Amount all, Amount share) {
        return new Amount(all.low() - share.low(), all.likely() - share.likely(), all.high() - share.high());
    }

    private static String mixing(Coat coat, Optional<Amount> parts, boolean thinned) {
        String hardener = parts.map(
                        each -> "%s parts to 1 of hardener by volume, as its sheet says".formatted(Say.range(each)))
                .orElse("");
        String thinner = thinned ? "thinned with " + coat.solvent() : "";
        String both = hardener.isEmpty() || thinner.isEmpty() ? hardener + thinner : hardener + ", then " + thinner;
        return both.isEmpty() ? "" : both + ".";
    }

    static List<Double> tins(double litres) {
        return TINS.filled(litres);
    }
}
