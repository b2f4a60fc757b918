package scantling.construct;

import scantling.measure.Dim;
import scantling.measure.LengthFormat;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.piece.Shape;
import scantling.piece.Stock;
import scantling.space.Axis;
import scantling.space.Box;

/** A case: two sides, a bottom, a top or top rails or neither, and perhaps a back. What is left is its inside. */
final class CaseElement implements ElementKind {
    @Override
    public Shape shape() {
        return Shape.shortly(
                "case",
                "of",
                "Two sides with a bottom and a top or top rails between them, and perhaps a back.",
                Field.required("of", Field.Kind.STOCK, "What the sides, bottom and top are of.", "ply"),
                Field.optional("bottom", Field.Kind.STOCK, "What the bottom is of, if of something else.", "core"),
                Field.usual("bottom up", Field.Kind.LENGTH, "0 mm", "common practice", "How far the bottom stands up."),
                Field.usual(
                        "set back",
                        Field.Kind.LENGTH,
                        "0 mm",
                        "common practice",
                        "How far its front stands back, for doors and drawer fronts laid before it."),
                Field.choice("top", "What closes it above.", "panel", "rails", "open"),
                Field.optional("top panel", Field.Kind.STOCK, "What the top is of, if of something else.", "core"),
                Field.optional(
                        "top rails", Field.Kind.STOCK, "The rails in place of a top, front and back.", "ply 100"),
                Butting.field("How bottom and top meet the sides."),
                Field.optional("housed", Field.Kind.LENGTH, "How deep bottom and top go into the sides.", "6 mm"),
                SystemCase.HOLES,
                KnockDown.COMES_APART,
                Feet.FEET,
                Field.part("back", Field.Kind.PART, CaseBack.SHAPE, "The back.", "{of: thin ply, in: rabbet}"));
    }

    @Override
    public Box build(Element element, Site site) {
        return fits(element, site) ? new CaseBuild(element, site).build() : site.space();
    }

    private static boolean fits(Element element, Site site) {
        Stock sides = element.stock("of");
        Dim bottom = element.findStock("bottom").orElse(sides).thickness();
        Dim top = element.is("top", "open") ? Dim.ZERO : topThickness(element, sides);
        return room(element, site, Axis.ACROSS, "wide", sides.thickness().times(2))
                && room(element, site, Axis.UP, "high", bottom.plus(top).plus(element.length("bottom up")))
                && room(element, site, Axis.DEEP, "deep", backThickness(element).plus(element.length("set back")));
    }

    private static Dim topThickness(Element element, Stock sides) {
        return element.findStock("top rails")
                .or(() -> element.findStock("top panel"))
                .orElse(sides)
                .thickness();
    }

    private static Dim backThickness(Element element) {
        return element.findPart("back")
                .map(back -> back.stock("of").thickness())
                .orElse(Dim.ZERO);
    }

    private static boolean room(Element element, Site site, Axis axis, String word, Dim boards) {
        Dim extent = site.space().extent(axis);
        if (extent.compareTo(boards) > 0) {
            return true;
        }
        LengthFormat format = LengthFormat.of(site.piece().unit());
        site.problem(
                element.span(),
                "A case (%s) %s has no inside: its boards alone take (%s)."
                        .formatted(format.formatWithUnit(extent.value()), word, format.formatWithUnit(boards.value())),
                "Give it more room or thinner boards.");
        return false;
    }
}
