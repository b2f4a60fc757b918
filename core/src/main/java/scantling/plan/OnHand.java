package scantling.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import scantling.cutting.Stock;
import scantling.measure.Length;
import scantling.milling.Blank;
import scantling.piece.Material;
import scantling.stock.Board;
import scantling.stock.Grade;
import scantling.stock.Offcut;
import scantling.stock.Rack;
import scantling.stock.RoughClass;
import scantling.stock.Sheet;
import scantling.stock.Stick;

/**
 * What the rack holds of a material, as stock for a saw plan: one of each, and free, so that it is used before any is bought.
 * What the saw left of something is as long and wide as it is: its ends and edges are sawn and are not trimmed again.
 */
record OnHand(Rack rack, Set<String> sawn) {
    private static final OptionalInt ONE = OptionalInt.of(1);

    OnHand(Rack rack) {
        this(rack, rack.offcuts().stream().map(Offcut::id).collect(Collectors.toSet()));
    }

    private Length usable(scantling.stock.Stock piece, Length ends) {
        return sawn.contains(piece.id()) ? piece.length() : piece.length().minus(ends);
    }

    List<Stock> boards(Material material, RoughClass rough, Length end) {
        List<Stock> stock = new ArrayList<>();
        for (Board board : rack.boards()) {
            if (board.material().equals(material.of()) && board.roughClass().equals(rough)) {
                Length ends = sawn.contains(board.id()) ? Length.ZERO : end;
                board(board, ends, ONE, 0, true).ifPresent(stock::add);
            }
        }
        return stock;
    }

    /** Grades of its boards, where they are known, by what is written on them. */
    Map<String, Grade> grades(Material material) {
        Map<String, Grade> grades = new LinkedHashMap<>();
        rack.boards().stream()
                .filter(board -> board.material().equals(material.of()))
                .forEach(board -> board.grade().ifPresent(grade -> grades.put(board.id(), grade)));
        return grades;
    }

    /** A board with so much off each end; empty when nothing of it can be used. */
    static Optional<Stock> board(Board board, Length ends, OptionalInt count, long cost, boolean onHand) {
        Board.Usable usable = board.usable(ends);
        return usable.length().isPositive()
                ? Optional.of(new Stock.BoardStock(
                        board.id(), usable.length(), board.width(), count, cost, onHand, usable.defects()))
                : Optional.empty();
    }

    /** Sheets sold as this thickness, or measured to be of it; along the grain comes first. */
    List<Stock> sheets(Material material) {
        List<Stock> stock = new ArrayList<>();
        for (Sheet sheet : rack.sheets()) {
            boolean grain = sheet.grain() != Sheet.Grain.NONE || !material.grained();
            if (sheet.material().equals(material.of()) && isOf(sheet, material) && grain) {
                boolean across = sheet.grain() == Sheet.Grain.ACROSS;
                Length along = across ? sheet.width() : sheet.length();
                Length other = across ? sheet.length() : sheet.width();
                stock.add(new Stock.SheetStock(sheet.id(), along, other, ONE, 0, sawn.contains(sheet.id()), true));
            }
        }
        return stock;
    }

    private static boolean isOf(Sheet sheet, Material material) {
        Length wanted = material.thickness().value();
        Length sold = material.nominal().orElse(material.thickness()).value();
        return sheet.nominal().equals(sold) || sheet.thickness().equals(wanted);
    }

    /** Sticks of the section that a blank has. */
    List<Stock> sticks(Blank blank, Length ends) {
        List<Stock> stock = new ArrayList<>();
        for (Stick stick : rack.sticks()) {
            Length usable = usable(stick, ends);
            boolean section = stick.thickness().equals(blank.rough().thickness().value())
                    && stick.width().equals(blank.rough().width().value());
            if (stick.material().equals(blank.material().of()) && section && usable.isPositive()) {
                stock.add(new Stock.StickStock(stick.id(), usable, ONE, 0, false, true));
            }
        }
        return stock;
    }
}
