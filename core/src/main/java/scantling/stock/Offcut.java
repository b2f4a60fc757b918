package scantling.stock;

import scantling.measure.Length;

/**
 * What was left of a board, a sheet or a stick and is kept.
 *
 * @param piece what it is now
 * @param cutFrom the id of the stock it was left of
 */
public record Offcut(Stock piece, String cutFrom) implements Stock {
    /** An offcut of an offcut is an offcut of the same kind of piece. */
    public Offcut {
        piece = piece instanceof Offcut offcut ? offcut.piece() : piece;
    }

    @Override
    public String id() {
        return piece.id();
    }

    @Override
    public String material() {
        return piece.material();
    }

    @Override
    public Length length() {
        return piece.length();
    }

    @Override
    public Length width() {
        return piece.width();
    }

    @Override
    public Length thickness() {
        return piece.thickness();
    }
}
