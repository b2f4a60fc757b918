package scantling.plan;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import scantling.cutting.CutJob;
import scantling.cutting.Effort;
import scantling.cutting.FirstCut;
import scantling.cutting.Saw;
import scantling.cutting.Stock;
import scantling.measure.Length;
import scantling.piece.BenchLog;

/** The sheet goods of a starter as cut jobs with two sizes of sheet to choose from; the prices are made up. */
final class ShopSheets {
    private static final List<Stock> STOCK = List.of(
            new Stock.SheetStock("four by eight", Length.mm(2440), Length.mm(1220), OptionalInt.empty(), 70),
            new Stock.SheetStock("five by five", Length.mm(1525), Length.mm(1525), OptionalInt.empty(), 52));
    private static final Saw SAW = new Saw(Length.mm("3.2"), Length.mm(10), 0, FirstCut.ANY);

    private ShopSheets() {}

    record Named(String name, CutJob job) {}

    static List<Named> ofAll() {
        return Stream.of("bookcase", "bedside-chest", "sideboard", "kitchen")
                .flatMap(starter -> of(starter).stream())
                .toList();
    }

    private static List<Named> of(String starter) {
        Shop usual = Shop.usual();
        Shop shop = new Shop(usual.tolerances(), usual.allowances(), usual.rack(), new Effort(0, 1));
        return Planner.plan(Started.piece(starter), BenchLog.EMPTY, shop).plan().cuts().stream()
                .filter(group -> group.job().stock().get(0) instanceof Stock.SheetStock)
                .map(group -> new Named(
                        starter + ": " + group.title(),
                        new CutJob(SAW, group.job().keep(), STOCK, group.job().parts())))
                .toList();
    }
}
