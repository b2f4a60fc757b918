package scantling.shop;

import java.util.List;
import java.util.Optional;
import scantling.measure.Length;
import scantling.measure.Unit;
import scantling.stock.Board;
import scantling.stock.Defect;
import scantling.stock.Grade;
import scantling.stock.Offcut;
import scantling.stock.RoughClass;
import scantling.stock.Sheet;
import scantling.stock.Stick;
import scantling.stock.Stock;

/** Pieces of stock as rows and back. */
final class RackRows {
    private RackRows() {}

    static Row row(OnHand piece, long nr) {
        Stock stock = piece.stock();
        Stock whole = stock instanceof Offcut offcut ? offcut.piece() : stock;
        Row row = Row.empty()
                .with("id", stock.id())
                .with("nr", nr)
                .with("form", form(whole))
                .with("material", stock.material())
                .with("rough", whole instanceof Board board ? board.roughClass().name() : "")
                .with("thickness", (whole instanceof Sheet sheet ? sheet.nominal() : stock.thickness()).toString())
                .with("measured", measured(whole));
        return row.with("length", stock.length().toString())
                .with("width", stock.width().toString())
                .with(
                        "grade",
                        whole instanceof Board board
                                ? board.grade().map(Grade::name).orElse("")
                                : "")
                .with("grain", whole instanceof Sheet sheet ? Words.of(sheet.grain()) : "")
                .with("cut_from", stock instanceof Offcut offcut ? offcut.cutFrom() : "")
                .with("price", Words.of(piece.price()))
                .with("place", piece.place());
    }

    /** Of a sheet its thickness by the calliper, of a board its defects as they were measured from its near end. */
    private static String measured(Stock whole) {
        if (whole instanceof Board board) {
            return Defect.written(board.defects());
        }
        return whole instanceof Sheet sheet
                ? sheet.measured().map(Length::toString).orElse("")
                : "";
    }

    private static String form(Stock stock) {
        if (stock instanceof Board) {
            return "board";
        }
        return stock instanceof Sheet ? "sheet" : "stick";
    }

    /** @throws IllegalArgumentException for a row that is no piece of stock */
    static OnHand onHand(Row row) {
        Stock whole = whole(row);
        Stock stock =
                row.said("cut_from").<Stock>map(from -> new Offcut(whole, from)).orElse(whole);
        return new OnHand(stock, Words.price(row.text("price")), row.text("place"));
    }

    private static Stock whole(Row row) {
        String id = row.text("id");
        String material = row.text("material");
        Length thickness = length(row, "thickness");
        Length length = length(row, "length");
        Length width = length(row, "width");
        return switch (row.text("form")) {
            case "board" ->
                new Board(
                        id,
                        material,
                        RoughClass.get(row.text("rough")),
                        thickness,
                        width,
                        length,
                        grade(row.text("grade")),
                        defects(row.text("measured")));
            case "sheet" ->
                new Sheet(
                        id,
                        material,
                        thickness,
                        row.said("measured").map(said -> length(row, "measured")),
                        length,
                        width,
                        Words.find(Sheet.Grain.values(), row.text("grain")));
            case "stick" -> new Stick(id, material, thickness, width, length);
            default ->
                throw new IllegalArgumentException(
                        "Stock is a board, a sheet or a stick, not (%s).".formatted(row.text("form")));
        };
    }

    private static Optional<Grade> grade(String name) {
        if (name.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(Grade.find(name)
                .orElseThrow(() -> new IllegalArgumentException("There is no grade (%s).".formatted(name))));
    }

    private static List<Defect> defects(String written) {
        return Defect.readAll(written, Unit.MM)
                .orElseThrow(() -> new IllegalArgumentException("(%s) are no defects.".formatted(written)));
    }

    private static Length length(Row row, String column) {
        return Words.length(row.text(column));
    }
}
