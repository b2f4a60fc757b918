package scantling.construct;

import scantling.measure.Dim;
import scantling.piece.Element;
import scantling.piece.Stock;

/** Widths of stock where an element needs one. */
final class Widths {
    private Widths() {}

    /** The width behind the material; without one the site is told and the part is made square. */
    static Dim of(Site site, Element said, String field) {
        Stock stock = said.stock(field);
        return stock.width().orElseGet(() -> {
            String name = stock.material().name();
            site.problem(
                    said.span(),
                    "(%s: %s) says no width.".formatted(field, name),
                    "Write the width behind the material: %s: %s 60.".formatted(field, name));
            return stock.thickness();
        });
    }

    /** The width behind the material, or its thickness: a square section. */
    static Dim orSquare(Stock stock) {
        return stock.width().orElseGet(stock::thickness);
    }
}
