package scantling.construct;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import scantling.measure.Dim;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.piece.Shape;
import scantling.piece.Stock;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/** Doors side by side before the space: plain, or frames with infill. */
final class DoorsElement implements ElementKind {
    @Override
    public Shape shape() {
        return Shape.of(
                "doors",
                "Doors side by side before the space: plain boards, or frames with infill.",
                Field.usual("count", Field.Kind.COUNT, "1", "common practice", "How many doors."),
                EndMaker.board(),
                FrameMaker.field(),
                InfillMaker.field(),
                Facing.SET,
                Facing.GAP,
                Facing.LAP,
                Hanging.HUNG_ON,
                Hanging.COUNT,
                Hanging.FROM_ENDS,
                Field.usual(
                        "handles",
                        Field.Kind.COUNT_OR_NONE,
                        "1",
                        "common practice",
                        "How many handles or knobs each door gets; 0 for none."),
                Handles.PULL,
                Handles.CENTRES);
    }

    @Override
    public Box build(Element element, Site site) {
        Optional<Dim> thickness = thickness(element);
        Site in = site.inside(element.name(), site.space());
        Facing facing = Facing.of(element, element);
        Opening opening = in.opening("opening", site.space());
        Box planned = facing.air(site.space(), thickness.orElse(Dim.ZERO));
        Box faces = Site.follow(opening, site.space(), planned);
        int count = Math.max(1, element.count("count"));
        Dim width =
                faces.extent(Axis.ACROSS).minus(facing.gap().times(count - 1L)).share(1, count);
        if (thickness.isEmpty() || !width.value().isPositive()) {
            in.problem(
                    element.span(),
                    "The doors cannot be made: each would be %s wide.".formatted(in.say(width)),
                    "Say what they are made of, plain (of: ...) or framed (frame: ...), and leave them room.");
            return site.space();
        }
        doors(element, in, opening, faces, width, facing);
        return facing.inset() ? site.space().inset(Side.FRONT, thickness.get()) : site.space();
    }

    private static Optional<Dim> thickness(Element element) {
        return element.findStock("of")
                .or(() -> element.findPart("frame").map(frame -> frame.stock("stiles")))
                .map(Stock::thickness);
    }

    private static void doors(Element element, Site in, Opening opening, Box faces, Dim width, Facing facing) {
        int count = Math.max(1, element.count("count"));
        List<Part> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Dim at = faces.left().plus(width.plus(facing.gap()).times(i));
            Box face = faces.with(Side.LEFT, at).slab(Side.LEFT, width);
            Site door = in.inside(name(i, count), face);
            int before = door.parts().size();
            new EndMaker(door, Side.FRONT).make(element);
            List<Part> made = door.parts().subList(before, door.parts().size());
            all.addAll(made);
            hang(element, door, made, in.space(), i >= (count + 1) / 2);
        }
        in.fills(opening, all);
    }

    private static String name(int index, int count) {
        if (count == 1) {
            return "door";
        }
        return count == 2 ? (index == 0 ? "left door" : "right door") : "door " + (index + 1);
    }

    /** Hangs a door on the left or the right of what stands beside the space. */
    private static void hang(Element element, Site door, List<Part> made, Box air, boolean onRight) {
        if (made.isEmpty()) {
            return;
        }
        Side hung = onRight ? Side.RIGHT : Side.LEFT;
        new Hanging(element, door, made).on(edge(made, hung), hung, air);
        if (element.count("handles") > 0) {
            Handles.fix(door, element, edge(made, onRight ? Side.LEFT : Side.RIGHT));
        }
    }

    /** The stile at that edge, or the one board. */
    private static Part edge(List<Part> door, Side side) {
        return door.stream()
                .filter(part -> part.path().endsWith(side.word() + " stile"))
                .findFirst()
                .orElse(door.get(0));
    }
}
