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

/** Spaces one behind the other, with upright boards or only air between. */
final class DepthsElement implements ElementKind {
    private static final Division DIVISION = new Division(Side.FRONT, "depth");

    @Override
    public Shape shape() {
        List<Field> fields = new ArrayList<>(DIVISION.fields("front to back"));
        fields.add(1, Field.optional("divider", Field.Kind.STOCK, "The upright boards between them.", "ply"));
        fields.removeIf(field -> field.key().equals("set back"));
        return new Shape("depths", "Divides the space from front to back.", Optional.of("sizes"), fields);
    }

    @Override
    public Box build(Element element, Site outer) {
        Site site = Sides.siteOf(element, outer);
        Optional<Stock> divider = element.findStock("divider");
        return DIVISION.build(
                element,
                site,
                divider.map(Stock::thickness).orElseGet(() -> element.length("gap")),
                divider.map(of -> place -> Dividers.across(element, site, of, place)));
    }
}
