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

/** Spaces one below the other, with boards, rails or only air between. */
final class RowsElement implements ElementKind {
    private static final Division DIVISION = new Division(Side.TOP, "row");

    @Override
    public Shape shape() {
        List<Field> fields = new ArrayList<>(DIVISION.fields("top to bottom"));
        fields.add(1, Field.optional("divider", Field.Kind.STOCK, "The flat boards between them.", "ply"));
        fields.add(2, Field.optional("rail", Field.Kind.STOCK, "Rails at the front in place of boards.", "oak 60"));
        return new Shape("rows", "Divides the space into rows, one below the other.", Optional.of("sizes"), fields);
    }

    @Override
    public Box build(Element element, Site outer) {
        Site site = Sides.siteOf(element, outer);
        Optional<Stock> rail = element.findStock("rail");
        Optional<Stock> between = rail.or(() -> element.findStock("divider"));
        return DIVISION.build(
                element,
                site,
                between.map(Stock::thickness).orElseGet(() -> element.length("gap")),
                between.map(of -> place -> rail.isPresent()
                        ? Dividers.rail(element, site, of, place)
                        : Dividers.whole(element, site, of, place, Side.TOP)));
    }
}
