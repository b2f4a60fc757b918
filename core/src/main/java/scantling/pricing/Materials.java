package scantling.pricing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import scantling.cutting.CutPiece;
import scantling.cutting.CutTree;
import scantling.cutting.Stock;
import scantling.measure.Length;
import scantling.piece.Material;
import scantling.piece.Supply;
import scantling.stock.BoardMeasure;
import scantling.stock.SheetSize;

/** Stock as bought, whole boards and whole sheets, with what goes back to the rack credited. */
final class Materials {
    private final Rates rates;
    private final Told told;
    private final List<Line> lines = new ArrayList<>();

    Materials(Rates rates, Told told) {
        this.rates = rates;
        this.told = told;
    }

    List<Line> of(List<Basis.Sawn> sawn) {
        sawn.forEach(this::add);
        return lines;
    }

    private void add(Basis.Sawn sawn) {
        Map<String, List<CutPiece>> byStock = new LinkedHashMap<>();
        sawn.plan()
                .used()
                .forEach(piece -> byStock.computeIfAbsent(piece.stock().name(), key -> new ArrayList<>())
                        .add(piece));
        Money credit = rates.sum(0);
        for (List<CutPiece> pieces : byStock.values()) {
            Stock stock = pieces.get(0).stock();
            Optional<Rates.Price> each = each(sawn, stock);
            if (each.isEmpty()) {
                told.unpriced(sawn.material().of(), pieces.size() + " x " + stock.name());
                continue;
            }
            boolean free = stock.onHand() && rates.rackIsFree();
            Money one = free ? rates.sum(0) : each.get().money();
            String source =
                    free ? "off the rack, free by the shop's rule" : each.get().source();
            lines.add(new Line(
                    Line.Section.MATERIALS,
                    sawn.title(),
                    quantity(sawn, stock, pieces.size()),
                    Spread.exactly(one.times(pieces.size())),
                    source));
            for (CutPiece piece : pieces) {
                credit = credit.plus(one.times(keptShare(piece)));
            }
        }
        credit(sawn, credit);
    }

    private void credit(Basis.Sawn sawn, Money kept) {
        Money credit = kept.percent(rates.number("offcut credit"));
        if (credit.amount().signum() > 0) {
            lines.add(new Line(
                    Line.Section.MATERIALS,
                    "back to the rack from " + sawn.title(),
                    "%s %% of its price".formatted(Words.plain(rates.number("offcut credit"))),
                    Spread.exactly(rates.sum(0).minus(credit)),
                    "the shop's rule for offcuts"));
        }
    }

    /** How much of a piece of stock is kept: by area, of sticks by length. */
    private static double keptShare(CutPiece piece) {
        double whole = size(piece.stock().length(), piece.stock().width());
        double kept = piece.offcuts().stream()
                .filter(CutTree.Offcut::keep)
                .mapToDouble(offcut -> size(offcut.length(), offcut.width()))
                .sum();
        return Math.min(1, kept / whole);
    }

    private static double size(Length length, Length width) {
        return length.toMillimetres() * (width.isZero() ? 1 : width.toMillimetres());
    }

    private Optional<Rates.Price> each(Basis.Sawn sawn, Stock stock) {
        Material material = sawn.material();
        Optional<Rates.Price> said = material.price()
                .map(price -> new Rates.Price(
                        Money.ofHundredths(price, rates.currency()), "the price in the piece's text", false));
        if (!stock.onHand() && isListed(material, stock)) {
            return Optional.of(new Rates.Price(
                    Money.ofHundredths(stock.cost(), rates.currency()), "the list in the piece's text", false));
        }
        return switch (material.kind()) {
            case SOLID -> said.or(() -> timber(material.of())).map(price -> times(price, boardFeet(sawn, stock)));
            case SHEET -> said.or(() -> sheet(material)).map(price -> times(price, shareOfASheet(material, stock)));
            case STICK -> said.or(() -> rates.price("stick", material.name()));
        };
    }

    /** Whether the costs of its saw plan are the prices that the maker lists. */
    private static boolean isListed(Material material, Stock stock) {
        Supply supply = material.supply();
        boolean counted = !supply.boards().isEmpty() && stock.count().isPresent();
        return (counted || !supply.sheets().isEmpty()) && supply.isPriced(material.price());
    }

    /** An offcut from the rack is worth its share of a whole sheet. */
    private static double shareOfASheet(Material material, Stock stock) {
        SheetSize usual = SheetSize.usualFor(material.of());
        double whole = size(usual.length().value(), usual.width().value());
        return stock.onHand() ? Math.min(1, size(stock.length(), stock.width()) / whole) : 1;
    }

    private Optional<Rates.Price> timber(String wood) {
        return example(wood, rates.price("timber", wood));
    }

    private Optional<Rates.Price> sheet(Material material) {
        double thickness =
                material.nominal().orElse(material.thickness()).value().toMillimetres();
        return example(material.of(), rates.sheet(material.of(), thickness));
    }

    private Optional<Rates.Price> example(String what, Optional<Rates.Price> price) {
        price.filter(Rates.Price::example).ifPresent(found -> told.example(what));
        return price;
    }

    private static Rates.Price times(Rates.Price price, double count) {
        return new Rates.Price(price.money().times(count), price.source(), price.example());
    }

    static double boardFeet(Basis.Sawn sawn, Stock stock) {
        return sawn.rough()
                .map(rough -> BoardMeasure.boardFeet(
                        rough, stock.width(), stock.length().plus(sawn.ends())))
                .orElse(0.0);
    }

    private static String quantity(Basis.Sawn sawn, Stock stock, int count) {
        return sawn.material().kind() == Material.Kind.SOLID
                ? String.format(
                        Locale.ROOT, "%d x %s, %.1f board feet", count, stock.name(), count * boardFeet(sawn, stock))
                : "%d x %s".formatted(count, stock.name());
    }
}
