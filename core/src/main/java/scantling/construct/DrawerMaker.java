package scantling.construct;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.measure.Dim;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.piece.Shape;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Lie;
import scantling.space.Side;

/** Makes one drawer: its front, its box, what it runs on. */
final class DrawerMaker {
    private final Site in;
    private final Element fronts;
    private final Element box;

    /** @param in what it is named after @param said an element with {@link #fronts} and {@link BoxMaker#field} */
    DrawerMaker(Site in, Element said) {
        this.in = in;
        fronts = said.part("fronts");
        box = said.part("box");
    }

    /** What can be said of drawer fronts. */
    static Field fronts() {
        Shape shape = Shape.shortly(
                "fronts",
                "of",
                "The faces of drawers.",
                Field.required("of", Field.Kind.STOCK, "What they are of.", "cherry"),
                Facing.SET,
                Facing.LAP,
                Field.usual(
                        "handles",
                        Field.Kind.COUNT_OR_NONE,
                        "1",
                        "common practice",
                        "How many handles or knobs each one gets; 0 for none."),
                Handles.PULL,
                Handles.CENTRES);
        return Field.part("fronts", Field.Kind.PART, shape, "The faces of the drawers.", "{of: cherry, set: inset}")
                .butRequired();
    }

    /** Makes it. @param air its opening @param face where its front lies */
    void make(Box air, Box face) {
        Opening opening = in.opening("opening", air);
        Part front = in.part("front", fronts.stock("of").material())
                .showing(Side.FRONT)
                .fitted()
                .place(
                        fronts.is("set", "inset") ? Site.follow(opening, air, face) : face,
                        Lie.along(Axis.ACROSS, Side.FRONT));
        List<Part> all = new ArrayList<>(List.of(front));
        Dim start = fronts.is("set", "inset") ? front.box().back() : air.front();
        Dim thickness = box.stock("of").thickness();
        Slides slides = Slides.of(in, box, thickness);
        Optional<Dim> length = slides.length(in, box, air.back().minus(start));
        Optional<Dim> height = height(opening, slides);
        if (length.isPresent() && height.isPresent()) {
            Box room = air.with(Side.FRONT, start)
                    .with(Side.BACK, start.plus(length.get()))
                    .inset(Side.BOTTOM, slides.below());
            BoxMaker maker = new BoxMaker(in, box, slides);
            List<Part> made = maker.make(opening.width(), room.slab(Side.BOTTOM, height.get()));
            made.stream().limit(1).forEach(boxFront -> {
                in.joint(Joint.Kind.SCREW, boxFront, front, Map.of());
                FrontFixing.fix(in, front, boxFront);
            });
            all.addAll(made);
            run(slides, length.get(), made, air);
        }
        in.fills(opening, all);
        if (fronts.count("handles") > 0) {
            Handles.fix(in, fronts, front);
        }
    }

    private Optional<Dim> height(Opening opening, Slides slides) {
        Dim free = opening.height().minus(slides.below()).minus(slides.above());
        Dim height = box.findLength("height").orElse(free);
        Dim least = slides.floorUp().plus(box.stock("floor").thickness()).times(2);
        if (height.compareTo(free) <= 0 && height.compareTo(least) >= 0) {
            return Optional.of(height);
        }
        in.problem(
                box.span(),
                "A drawer box %s high does not go into an opening %s high: %s stay free below and above, and it needs %s at least."
                        .formatted(
                                in.say(height),
                                in.say(opening.height()),
                                in.say(slides.below().plus(slides.above())),
                                in.say(least)),
                "Make the row higher, or the box lower.");
        return Optional.empty();
    }

    private void run(Slides slides, Dim length, List<Part> made, Box air) {
        if (!slides.isBought() || made.isEmpty()) {
            return;
        }
        List<Part> on = new ArrayList<>(
                made.stream().filter(part -> part.lie().length() == Axis.DEEP).toList());
        for (Side side : new Side[] {Side.LEFT, Side.RIGHT}) {
            on.addAll(Holders.at(in, air, side));
        }
        String what = "%s slide %s".formatted(slides.runs(), in.say(length));
        Map<String, String> words = new HashMap<>(in.holes(air));
        words.put("profile", slides.profile());
        words.put("runs on", slides.runs());
        words.put("set", fronts.text("set"));
        in.fitting("slides", what, 1, "pair", on, Map.of("length", length), words);
    }
}
