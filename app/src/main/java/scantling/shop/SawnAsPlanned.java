package scantling.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.cutting.CutPiece;
import scantling.cutting.CutTree;
import scantling.cutting.PlacedPart;
import scantling.measure.Length;
import scantling.stock.Board;
import scantling.stock.Offcut;
import scantling.stock.Rack;
import scantling.stock.Sheet;
import scantling.stock.Stick;
import scantling.stock.Stock;

/** The bench entry for a piece of stock from the rack that was sawn just as its saw plan says. */
public final class SawnAsPlanned {
    private SawnAsPlanned() {}

    /**
     * The entry: the rough pieces, and the offcuts worth keeping under names made of the stock's.
     *
     * @return empty when the stock is not in the rack, because it is still to be bought
     */
    public static Optional<BenchEntry.Sawn> of(CutPiece piece, Rack rack) {
        return rack.find(piece.stock().name()).map(stock -> entry(piece, stock, rack));
    }

    private static BenchEntry.Sawn entry(CutPiece piece, Stock stock, Rack rack) {
        Map<BenchEntry.SawnPart, Integer> pieces = new LinkedHashMap<>();
        for (PlacedPart placed : piece.parts()) {
            Length width = placed.part().width().isZero()
                    ? stock.width()
                    : placed.part().width();
            pieces.merge(
                    new BenchEntry.SawnPart(placed.part().name(), placed.part().length(), width, 1), 1, Integer::sum);
        }
        List<BenchEntry.SawnPart> parts = pieces.entrySet().stream()
                .map(one -> new BenchEntry.SawnPart(
                        one.getKey().part(), one.getKey().length(), one.getKey().width(), one.getValue()))
                .toList();
        List<OnHand> offcuts = new ArrayList<>();
        for (CutTree.Offcut left : piece.offcuts()) {
            if (left.keep()) {
                offcuts.add(OnHand.of(rest(stock, left, name(stock.id(), offcuts.size() + 1, rack))));
            }
        }
        return new BenchEntry.Sawn(Optional.of(stock.id()), parts, offcuts);
    }

    /** {@code C1.2}; a number further where the rack has that name already. */
    private static String name(String id, int nr, Rack rack) {
        String name = id + "." + nr;
        for (int n = nr + 1; rack.find(name).isPresent(); n++) {
            name = id + "." + nr + "." + n;
        }
        return name;
    }

    private static Stock rest(Stock stock, CutTree.Offcut left, String id) {
        Stock whole = stock instanceof Offcut offcut ? offcut.piece() : stock;
        Length width = left.width().isZero() ? stock.width() : left.width();
        if (whole instanceof Board board) {
            return new Board(
                    id, board.material(), board.roughClass(), board.thickness(), width, left.length(), board.grade());
        } else if (whole instanceof Sheet sheet) {
            boolean across = sheet.grain() == Sheet.Grain.ACROSS;
            return new Sheet(
                    id,
                    sheet.material(),
                    sheet.nominal(),
                    sheet.measured(),
                    across ? width : left.length(),
                    across ? left.length() : width,
                    sheet.grain());
        }
        Stick stick = (Stick) whole;
        return new Stick(id, stick.material(), stick.thickness(), stick.width(), left.length());
    }
}
