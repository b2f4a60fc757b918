package scantling.construct;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import scantling.measure.Dim;
import scantling.piece.Element;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Ends;
import scantling.space.Lie;
import scantling.space.Side;

/**
 * Four splayed legs with upright rails between them at the top. The feet stand in the corners of the space; the rails
 * stand upright under the top, their ends cut to the leaning faces of the legs.
 */
final class SplayedBase {
    private static final List<Side> RAILS = List.of(Side.FRONT, Side.BACK, Side.LEFT, Side.RIGHT);

    private final Element said;
    private final Site in;
    private final LegMaker maker;
    private final Box air;
    private final Map<Side, Map<Side, LegMaker.Leaning>> legs = new EnumMap<>(Side.class);

    SplayedBase(Element said, Site in, LegMaker maker) {
        this.said = said;
        this.in = in;
        this.maker = maker;
        this.air = in.space();
    }

    /** @return the space that is left between the legs */
    Box build(Dim railWidth) {
        for (Side deep : List.of(Side.FRONT, Side.BACK)) {
            for (Side across : List.of(Side.LEFT, Side.RIGHT)) {
                legs.computeIfAbsent(across, side -> new EnumMap<>(Side.class))
                        .put(deep, maker.makeLeaning(across, deep, air));
            }
        }
        Box high = air.slab(Side.TOP, railWidth);
        List<Part> rails = new ArrayList<>();
        for (Side side : RAILS) {
            if (LegsAndRailsElement.hasRail(said, side)) {
                rail(side, high).ifPresent(rails::add);
            }
        }
        return left(rails);
    }

    /** How far the outer face of the rail of a side stands in from the space: behind the legs as they are at their tops. */
    private Dim standsIn(Side side) {
        Dim setBack = said.length("rail set back");
        Splay one = leg(side, Side.of(along(side), false)).splay();
        if (side.axis() == Axis.DEEP) {
            return one.out(Axis.DEEP).plus(setBack);
        }
        Splay other = leg(side, Side.of(along(side), true)).splay();
        return one.out(Axis.ACROSS)
                .plus(Dim.largerOf(one.twist(), other.twist()))
                .plus(setBack);
    }

    private static Axis along(Side rail) {
        return rail.axis() == Axis.ACROSS ? Axis.DEEP : Axis.ACROSS;
    }

    private LegMaker.Leaning leg(Side rail, Side end) {
        Side across = rail.axis() == Axis.ACROSS ? rail : end;
        Side deep = rail.axis() == Axis.ACROSS ? end : rail;
        return Objects.requireNonNull(Objects.requireNonNull(legs.get(across)).get(deep));
    }

    private Box lane(Side side, Box high) {
        return high.inset(side, standsIn(side)).slab(side, said.stock("rails").thickness());
    }

    private Optional<Part> rail(Side side, Box high) {
        Lie lie = Lie.along(along(side), side);
        Box lane = lane(side, high);
        List<LeaningEnd> ends = LeaningEnd.ends(lie.length()).stream()
                .map(end -> new LeaningEnd(lane, lie, end, leg(side, end)))
                .toList();
        RailJoint joint = joint(side, ends, high);
        Dim near = shoulder(side, ends.get(0));
        Dim far = shoulder(side, ends.get(1));
        Box box = lane.with(ends.get(0).side(), near.minus(joint.adds()))
                .with(ends.get(1).side(), far.plus(joint.adds()));
        if (box.isEmpty() || !isBacked(side, high)) {
            in.problem(
                    said.span(),
                    "The splayed legs leave no place for a %s rail %s high."
                            .formatted(side.word(), in.say(high.extent(Axis.UP))),
                    "Splay them less, or make the rail narrower, thinner or less set back.");
            return Optional.empty();
        }
        Part rail = in.part(side.word() + " rail", said.stock("rails").material())
                .holding(side, Side.TOP)
                .showing(side)
                .ending(new Ends(ends.get(0).cut(), ends.get(1).cut()))
                .place(box, lie);
        in.name(side.word() + " rail / shoulder to shoulder", far.minus(near));
        ends.forEach(end -> join(rail, end, joint));
        Fastening.above(in, rail);
        return Optional.of(rail);
    }

    private Dim shoulder(Side rail, LeaningEnd end) {
        return in.name("%s rail / %s shoulder".formatted(rail.word(), end.side().word()), end.longest());
    }

    /** Lower down the leg stands farther out; there too the whole end of the rail must meet it. */
    private boolean isBacked(Side side, Box high) {
        Splay splay = leg(side, Side.of(along(side), false)).splay();
        double out = splay.out(side.axis()).value().toMillimetres()
                * high.extent(Axis.UP).value().toMillimetres()
                / splay.turned().height().value().toMillimetres();
        Dim needs = said.length("rail set back").plus(said.stock("rails").thickness());
        Dim leg = side.axis() == Axis.ACROSS ? maker.width() : maker.thickness();
        return needs.value().toMillimetres() + out <= leg.value().toMillimetres();
    }

    /** Where rails meet in a leg, their tenons end before they touch. */
    private RailJoint joint(Side rail, List<LeaningEnd> ends, Box high) {
        Dim through = Dim.smallerOf(maker.width(), maker.thickness());
        Dim room = through;
        for (LeaningEnd end : ends) {
            if (LegsAndRailsElement.hasRail(said, end.side())) {
                Dim inner = lane(end.side(), high).plane(end.side().opposite());
                Dim free = end.side().isFar()
                        ? inner.minus(end.longest())
                        : end.longest().minus(inner);
                room = Dim.smallerOf(room, free);
            }
        }
        RailJoint joint = RailJoint.of(in, said, through, room);
        return new RailJoint(joint.kind(), in.name(rail.word() + " rail / tenon", joint.tenon()), joint.through());
    }

    private void join(Part rail, LeaningEnd end, RailJoint joint) {
        Side side = end.side();
        Dim inner = joint.adds().value().isZero() ? rail.box().plane(side) : end.shortest();
        Box wood = rail.box().with(side.opposite(), inner);
        in.joint(joint.kind(), rail, end.leg(), joint.sizes(), wood);
    }

    /** Between the legs' tops and the rails. */
    private Box left(List<Part> rails) {
        Box space = air;
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            space = space.inset(side, standsIn(side).plus(maker.width()));
        }
        for (Part rail : rails) {
            Side side = rail.lie().faceSide();
            space = side.axis() == Axis.DEEP ? space.with(side, rail.box().plane(side.opposite())) : space;
        }
        return space;
    }
}
