package scantling.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import scantling.cutting.Stock;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.piece.Material;
import scantling.piece.Supply;
import scantling.stock.Board;
import scantling.stock.Grade;
import scantling.stock.RoughClass;
import scantling.stock.SheetSize;

/**
 * What there is to buy of a material, as stock for a saw plan: the sizes that the maker lists, else the usual one. Money
 * decides where every size has a price; else the wood itself does, by its area.
 */
record ForSale(LengthFormat format) {
    private static final double SQUARE_MM_TO_COST = 0.01;

    List<Stock> sheets(Material material) {
        List<Stock> stock = new ArrayList<>();
        boolean priced = material.supply().isPriced(material.price());
        for (Supply.Sheets one : material.supply().sheets()) {
            Length length = one.length().value();
            Length width = one.width().value();
            long cost = one.price().or(material::price).filter(price -> priced).orElseGet(() -> area(length, width));
            String name = one.name().map(said -> said + ", ").orElse("sheet, ") + sizes(length, width);
            stock.add(new Stock.SheetStock(name, length, width, one.count(), cost, one.trimmed()));
        }
        return stock.isEmpty() ? List.of(usual(material)) : stock;
    }

    private Stock usual(Material material) {
        SheetSize usual = SheetSize.usualFor(material.of());
        Length length = material.sheetLength().orElse(usual.length()).value();
        Length width = material.sheetWidth().orElse(usual.width()).value();
        long cost = material.price().orElseGet(() -> area(length, width));
        return new Stock.SheetStock("sheet, " + sizes(length, width), length, width, OptionalInt.empty(), cost);
    }

    /** Those of the yard's boards that are of a thickness; none listed, none are given. */
    List<Stock> boards(Material material, RoughClass rough, Length ends) {
        List<Stock> stock = new ArrayList<>();
        boolean priced = material.supply().isPriced(material.price());
        int number = 0;
        for (Supply.Boards one : material.supply().boards()) {
            number++;
            if (one.rough().or(() -> usualClass(material)).filter(rough::equals).isPresent()) {
                Length length = one.length().value();
                Length width = one.width().value();
                Board board = Board.rough(name(one, number), material.of(), rough, width, length)
                        .marked(one.defects());
                long cost = one.price()
                        .or(material::price)
                        .filter(price -> priced)
                        .map(price -> Math.round(price * board.boardFeet()))
                        .orElseGet(() -> area(length, width));
                OnHand.board(board, ends, OptionalInt.of(one.count()), cost, false)
                        .ifPresent(stock::add);
            }
        }
        return stock;
    }

    private String name(Supply.Boards one, int number) {
        return "board %s, %s"
                .formatted(
                        one.name().orElse("number " + number),
                        sizes(one.length().value(), one.width().value()));
    }

    /** Grades of the boards listed, by their name in a saw plan; those that say none are of their material's. */
    Map<String, Grade> grades(Material material) {
        Map<String, Grade> grades = new LinkedHashMap<>();
        int number = 0;
        for (Supply.Boards one : material.supply().boards()) {
            String name = name(one, ++number);
            one.grade().ifPresent(grade -> grades.put(name, grade));
        }
        return grades;
    }

    private static Optional<RoughClass> usualClass(Material material) {
        return RoughClass.forFinished(material.thickness().value());
    }

    private String sizes(Length length, Length width) {
        return "%s x %s".formatted(format.format(length), format.formatWithUnit(width));
    }

    /** Without a price the wood itself is what a plan costs: square centimetres. */
    static long area(Length length, Length width) {
        return Math.max(1, Math.round(length.toMillimetres() * width.toMillimetres() * SQUARE_MM_TO_COST));
    }
}
