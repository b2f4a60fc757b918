package scantling.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.cutting.CutPiece;
import scantling.cutting.CutTree;
import scantling.cutting.PlacedPart;
import scantling.cutting.Stock.Place;
import scantling.measure.Length;
import scantling.milling.Blank;
import scantling.piece.Material;
import scantling.plan.CutGroup;
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

    /**
     * The entry for any piece of a saw plan; one that was bought for it never lay in the rack, and only its offcuts come
     * there.
     *
     * @param blanks of the plan, of which those of the piece tell what was bought
     * @param job after which offcuts of bought stock are named
     */
    public static BenchEntry.Sawn of(CutPiece piece, CutGroup group, List<Blank> blanks, Rack rack, String job) {
        return of(piece, rack).orElseGet(() -> {
            BenchEntry.Sawn sawn = entry(piece, stock(piece, group, blanks, rack, job), rack);
            return new BenchEntry.Sawn(Optional.empty(), sawn.parts(), sawn.offcuts());
        });
    }

    /** The piece in the rack that is sawn, else what was bought for it. */
    static Stock stock(CutPiece piece, CutGroup group, List<Blank> blanks, Rack rack, String job) {
        return rack.find(piece.stock().name()).orElseGet(() -> {
            String id = "%s %s %d".formatted(job, group.material().name(), piece.number());
            return bought(piece, group.material(), blanks, id);
        });
    }

    /** An entry as a page keeps it until it can be sent. */
    public static String written(BenchEntry.Sawn sawn) {
        return BenchRows.row(0, "", sawn).json();
    }

    /** Reads what {@link #written} wrote; empty for anything else. */
    public static Optional<BenchEntry.Sawn> read(String written) {
        try {
            return BenchRows.entry(Row.ofJson(written)) instanceof BenchEntry.Sawn sawn
                    ? Optional.of(sawn)
                    : Optional.empty();
        } catch (IllegalArgumentException noEntry) {
            return Optional.empty();
        }
    }

    private static Stock bought(CutPiece piece, Material material, List<Blank> blanks, String id) {
        Blank blank = blanks.stream()
                .filter(one -> piece.parts().stream()
                        .anyMatch(placed -> placed.part().name().equals(one.part())))
                .findFirst()
                .orElseThrow();
        Length thickness = blank.rough().thickness().value();
        Length length = piece.stock().length();
        if (piece.stock() instanceof scantling.cutting.Stock.BoardStock board) {
            return Board.rough(id, material.of(), blank.roughClass().orElseThrow(), board.width(), length);
        } else if (piece.stock() instanceof scantling.cutting.Stock.SheetStock sheet) {
            Sheet.Grain grain = material.grained() ? Sheet.Grain.ALONG : Sheet.Grain.NONE;
            Length nominal = material.nominal().orElse(material.thickness()).value();
            Optional<Length> measured = Optional.of(thickness).filter(size -> !size.equals(nominal));
            return new Sheet(id, material.of(), nominal, measured, length, sheet.width(), grain);
        }
        return new Stick(id, material.of(), thickness, blank.rough().width().value(), length);
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
                String id = name(stock.id(), offcuts.size() + 1, rack);
                Place at = new Place(left.x(), left.y(), left.length(), left.width());
                offcuts.add(OnHand.of(rest(stock, piece.stock(), at, id)));
            }
        }
        return new BenchEntry.Sawn(Optional.of(stock.id()), parts, offcuts);
    }

    /** {@code C1.2}; a number further where the rack has that name already. */
    static String name(String id, int nr, Rack rack) {
        String name = id + "." + nr;
        for (int n = nr + 1; rack.find(name).isPresent(); n++) {
            name = id + "." + nr + "." + n;
        }
        return name;
    }

    /**
     * What is left of a piece of stock, with the defects that lie in it.
     *
     * @param planned the stock as its saw plan has it
     * @param at where it lay; of no width for a stick
     */
    static Stock rest(Stock stock, scantling.cutting.Stock planned, Place at, String id) {
        Stock rest = rest(stock, at.length(), at.width(), id);
        return rest instanceof Board board ? board.marked(planned.inHand(id, at).defects()) : rest;
    }

    private static Stock rest(Stock stock, Length length, Length wide, String id) {
        Stock whole = stock instanceof Offcut offcut ? offcut.piece() : stock;
        Length width = wide.isZero() ? stock.width() : wide;
        if (whole instanceof Board board) {
            return new Board(id, board.material(), board.roughClass(), board.thickness(), width, length, board.grade());
        } else if (whole instanceof Sheet sheet) {
            boolean across = sheet.grain() == Sheet.Grain.ACROSS;
            return new Sheet(
                    id,
                    sheet.material(),
                    sheet.nominal(),
                    sheet.measured(),
                    across ? width : length,
                    across ? length : width,
                    sheet.grain());
        }
        Stick stick = (Stick) whole;
        return new Stick(id, stick.material(), stick.thickness(), stick.width(), length);
    }
}
