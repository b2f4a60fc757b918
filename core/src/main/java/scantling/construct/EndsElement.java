package scantling.construct;

import java.util.Optional;
import scantling.measure.Dim;
import scantling.piece.Element;
import scantling.piece.Shape;
import scantling.space.Box;
import scantling.space.Side;

/** A mirrored pair of ends, left and right: frames with infill, or plain boards. */
final class EndsElement implements ElementKind {
    private static final String KEY = "ends";

    @Override
    public Shape shape() {
        return Shape.of(
                KEY,
                "A mirrored pair of ends, left and right: frames with infill, or plain boards.",
                EndMaker.board(),
                FrameMaker.field(),
                InfillMaker.field());
    }

    @Override
    public Box build(Element element, Site site) {
        Box space = site.space();
        String word = element.name().equals(KEY) ? "end" : element.name();
        for (Side side : new Side[] {Side.LEFT, Side.RIGHT}) {
            Site in = site.inside(side.word() + " " + word, site.space());
            Optional<Dim> inner = new EndMaker(in, side).make(element);
            space = inner.isPresent() ? space.with(side, inner.get()) : space;
        }
        return space;
    }
}
