package scantling.construct;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import scantling.measure.Dim;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.piece.Shape;
import scantling.piece.Stock;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Lie;
import scantling.space.Side;

/** A rail to hang clothes from, from left to right in the middle of the depth. */
final class HangingRailElement implements ElementKind {
    @Override
    public Shape shape() {
        return Shape.shortly(
                "hanging rail",
                "of",
                "A rail to hang clothes from, from left to right.",
                Field.required("of", Field.Kind.STOCK, "What it is of; as wide as it is thick when not said.", "rod"),
                Field.usual(
                        "down",
                        Field.Kind.LENGTH,
                        "40 mm",
                        "common practice",
                        "How far its upper side is below the top of the space: room for the hooks."));
    }

    @Override
    public Box build(Element element, Site site) {
        Box space = site.space();
        Site in = site.inside(element.name(), space);
        Stock stock = element.stock("of");
        Dim width = Widths.orSquare(stock);
        Dim side = space.extent(Axis.DEEP).minus(stock.thickness()).half();
        Box box = space.inset(Side.FRONT, side)
                .slab(Side.FRONT, stock.thickness())
                .inset(Side.TOP, element.length("down"))
                .slab(Side.TOP, width);
        if (element.length("down").plus(width).compareTo(space.extent(Axis.UP)) > 0) {
            in.problem(
                    element.span(),
                    "A rail %s down does not go into a space %s high."
                            .formatted(in.say(element.length("down")), in.say(space.extent(Axis.UP))),
                    "Set it higher.");
            return space;
        }
        Part rail = in.part("rail", stock.material())
                .holding(Side.TOP)
                .showing(Side.FRONT)
                .place(box, Lie.along(Axis.ACROSS, Side.FRONT));
        List<Part> on = new ArrayList<>(List.of(rail));
        on.addAll(Holders.join(in, rail, Side.LEFT, Joint.Kind.CARRIED, Map.of()));
        on.addAll(Holders.join(in, rail, Side.RIGHT, Joint.Kind.CARRIED, Map.of()));
        in.fitting("sockets", "socket for a hanging rail", 1, "pair", on, Map.of("diameter", width));
        return space;
    }
}
