package scantling.construct;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.piece.Shape;
import scantling.piece.Stock;
import scantling.space.Box;
import scantling.space.Side;

/** Spaces side by side, with upright dividers or only air between. */
final class ColumnsElement implements ElementKind {
    private static final Division DIVISION = new Division(Side.LEFT, "column");

    @Override
    public Shape shape() {
        List<Field> fields = new ArrayList<>(DIVISION.fields("left to right"));
        fields.add(1, Field.optional("divider", Field.Kind.STOCK, "The upright boards between them.", "ply"));
        return new Shape("columns", "Divides the space into columns, side by side.", Optional.of("sizes"), fields);
    }

    @Override
    public Box build(Element element, Site outer) {
        Site site = Sides.siteOf(element, outer);
        Optional<Stock> divider = element.findStock("divider");
        return DIVISION.build(
                element,
                site,
                divider.map(Stock::thickness).orElseGet(() -> element.length("gap")),
                divider.map(of -> place -> Dividers.whole(element, site, of, place, Side.LEFT)));
    }
}
