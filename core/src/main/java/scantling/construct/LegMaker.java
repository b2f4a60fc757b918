package scantling.construct;

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

/** Makes legs at the upright edges of a space, square or tapered on the inside. */
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

    /** Makes one leg. @param across left or right @param deep front or back @param planeAcross its outer plane @param planeDeep its outer plane */
    Part make(Side across, Side deep, Box air, Dim planeAcross, Dim planeDeep) {
        Box box = air.with(across, planeAcross)
                .slab(across, width())
                .with(deep, planeDeep)
                .slab(deep, thickness());
        PartMaker maker = in.part("%s %s leg".formatted(across.word(), deep.word()), stock.material())
                .holding(across, deep, Side.TOP)
                .showing(across, deep);
        said.findLength("tapered to").ifPresent(foot -> taper(maker, box, foot));
        return maker.place(box, new Lie(Axis.UP, Axis.DEEP, deep, across, Side.BOTTOM));
    }

    private void taper(PartMaker maker, Box box, Dim foot) {
        Dim length = box.extent(Axis.UP);
        Dim over = said.findLength("tapered over").orElse(length.minus(straight));
        if (foot.compareTo(width()) >= 0
                || over.compareTo(length) > 0
                || !over.value().isPositive()) {
            in.problem(
                    said.span(),
                    "A leg %s wide and %s long cannot taper to %s over %s."
                            .formatted(in.say(width()), in.say(length), in.say(foot), in.say(over)),
                    "Make the foot narrower than the leg, and the taper no longer than it.");
            return;
        }
        maker.shaped(new Outline(List.of(
                new Outline.Corner(Dim.ZERO, Dim.ZERO),
                new Outline.Corner(length, Dim.ZERO),
                new Outline.Corner(length, width()),
                new Outline.Corner(over, width()),
                new Outline.Corner(Dim.ZERO, foot))));
    }
}
