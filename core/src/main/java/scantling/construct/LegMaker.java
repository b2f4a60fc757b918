package scantling.construct;

import java.util.ArrayList;
import java.util.List;
import scantling.measure.Dim;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.piece.Stock;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Lie;
import scantling.space.Outline;
import scantling.space.Side;

/** Makes legs at the upright edges of a space: square, tapered on the inside, splayed. */
final class LegMaker {
    static final Field LEGS = Field.required(
            "legs", Field.Kind.STOCK, "What the legs are of, with their width when they are not square.", "leg 60");
    static final Field TAPERED_TO = Field.optional(
            "tapered to",
            Field.Kind.LENGTH,
            "How wide the foot is, when the legs taper on their inner faces.",
            "35 mm");
    static final Field TAPERED_OVER = Field.optional(
            "tapered over",
            Field.Kind.LENGTH,
            "How far up from the foot the taper goes; up to the rails when not said.",
            "600 mm");

    static final Field SPLAY = Field.optional(
            "splay",
            Field.Kind.LEANS,
            "How far the feet stand out beyond the tops of the legs, as a length or an angle; the feet keep to the"
                    + " edges of the space and the tops stand in.",
            "{ends: 60 mm, front: 5°, back: 5°}");

    private final Site in;
    private final Element said;
    private final Stock stock;
    private final Dim straight;

    /** @param straight how much at the top stays straight when the maker does not say how far the taper goes */
    LegMaker(Site in, Element said, Dim straight) {
        this.in = in;
        this.said = said;
        this.straight = straight;
        stock = said.stock("legs");
    }

    /** Across and deep. */
    Dim width() {
        return Widths.orSquare(stock);
    }

    /** From front to back. */
    Dim thickness() {
        return stock.thickness();
    }

    /** A leg that leans. @param part the leg @param splay how it leans */
    record Leaning(Part part, Splay splay) {}

    private Dim lean(Side side, Dim height) {
        return said.findLean("splay", side).map(lean -> lean.over(height)).orElse(Dim.ZERO);
    }

    /** Makes one splayed leg, its foot in the corner of the air. */
    Leaning makeLeaning(Side across, Side deep, Box air) {
        Dim height = air.extent(Axis.UP);
        String name = "%s %s leg".formatted(across.word(), deep.word());
        Splay splay = Splay.of(
                new Splay.Turned(height, width(), thickness(), lean(across, height), lean(deep, height)), in, name);
        Box box = splay.box(air, across, deep);
        PartMaker maker = in.part(name, stock.material())
                .ending(splay.cuts())
                .turned(splay.turn(air, across, deep))
                .holding(Side.TOP)
                .showing(across, deep);
        said.findLength("tapered to").ifPresent(foot -> taper(maker, box, foot, straight(splay)));
        return new Leaning(maker.place(box, new Lie(Axis.UP, Axis.DEEP, deep, across, Side.BOTTOM)), splay);
    }

    /** At least so much of the leg is beside the rails; it leans and its top is slanted. */
    private Dim straight(Splay splay) {
        return straight.value().isZero()
                ? straight
                : straight.plus(splay.edge()).minus(splay.turned().height()).plus(splay.slant());
    }

    /** Makes one leg. @param across left or right @param deep front or back @param planeAcross its outer plane @param planeDeep its outer plane */
    Part make(Side across, Side deep, Box air, Dim planeAcross, Dim planeDeep) {
        Box box = air.with(across, planeAcross)
                .slab(across, width())
                .with(deep, planeDeep)
                .slab(deep, thickness());
        PartMaker maker = in.part("%s %s leg".formatted(across.word(), deep.word()), stock.material())
                .holding(across, deep, Side.TOP)
                .showing(across, deep);
        said.findLength("tapered to").ifPresent(foot -> taper(maker, box, foot, straight));
        return maker.place(box, new Lie(Axis.UP, Axis.DEEP, deep, across, Side.BOTTOM));
    }

    private void taper(PartMaker maker, Box box, Dim foot, Dim stays) {
        Dim length = box.extent(Axis.UP);
        Dim over = said.findLength("tapered over").orElse(length.minus(stays));
        if (foot.compareTo(width()) >= 0
                || over.compareTo(length) > 0
                || !over.value().isPositive()
                || !foot.value().isPositive()) {
            in.problem(
                    said.span(),
                    "A leg %s wide and %s long cannot taper to %s over %s."
                            .formatted(in.say(width()), in.say(length), in.say(foot), in.say(over)),
                    "Make the foot narrower than the leg, and the taper no longer than it.");
            return;
        }
        maker.shaped(tapered(length, over, width(), foot));
        if (foot.compareTo(thickness()) < 0) {
            maker.shapedOnEdge(tapered(length, over, thickness(), foot));
        }
    }

    private static Outline tapered(Dim length, Dim over, Dim wide, Dim foot) {
        List<Outline.Corner> corners = new ArrayList<>(List.of(
                new Outline.Corner(Dim.ZERO, Dim.ZERO),
                new Outline.Corner(length, Dim.ZERO),
                new Outline.Corner(length, wide)));
        if (over.compareTo(length) < 0) {
            corners.add(new Outline.Corner(over, wide));
        }
        corners.add(new Outline.Corner(Dim.ZERO, foot));
        return new Outline(corners);
    }
}
