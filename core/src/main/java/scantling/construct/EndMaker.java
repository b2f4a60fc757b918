package scantling.construct;

import java.util.Optional;
import scantling.measure.Dim;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.piece.Stock;
import scantling.space.Axis;
import scantling.space.Lie;
import scantling.space.Side;

/** Makes one upright side of a space: a frame with infill, or a plain board. */
final class EndMaker {
    private final Site in;
    private final Side side;

    EndMaker(Site in, Side side) {
        this.in = in;
        this.side = side;
    }

    /** The field for a plain board. */
    static Field board() {
        return Field.optional("of", Field.Kind.STOCK, "A plain board in place of a frame: what it is of.", "oak");
    }

    /** Makes it. @return the plane of its inner side; nothing when it could not be made, which the site has been told */
    Optional<Dim> make(Element said) {
        Optional<Element> frame = said.findPart("frame");
        Optional<Stock> board = said.findStock("of");
        if (frame.isPresent() == board.isPresent()) {
            in.problem(
                    said.span(),
                    "(%s) needs either a frame or a plain board.".formatted(said.name()),
                    "Write (frame: {stiles: ..., top rail: ..., bottom rail: ...}), or (of: ...) for a board.");
            return Optional.empty();
        }
        if (board.isPresent()) {
            Part end = board(board.get());
            Fastening.above(in, end);
            return Optional.of(end.box().plane(side.opposite()));
        }
        Optional<FrameMaker.Framed> framed =
                new FrameMaker(in, side, frame.orElseThrow()).make(in.space(), said.findPart("infill"));
        framed.ifPresent(
                made -> Fastening.above(in, made.rails().get(made.rails().size() - 1)));
        return framed.map(FrameMaker.Framed::inner);
    }

    private Part board(Stock stock) {
        return in.part("board", stock.material())
                .holding(side)
                .showing(side)
                .place(in.space().slab(side, stock.thickness()), Lie.along(Axis.UP, side));
    }
}
