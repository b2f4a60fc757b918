package scantling.construct;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
                .place(Site.follow(opening, air, face), Lie.along(Axis.ACROSS, Side.FRONT));
        List<Part> all = new ArrayList<>(List.of(front));
        Dim start = fronts.is("set", "inset") ? front.box().back() : air.front();
        Dim thickness = box.stock("of").thickness();
        Slides slides = Slides.of(in, box, thickness);
        new DrawerRun(in, box, front, opening)
                .find(slides, air.back().minus(start))
                .ifPresent(run -> {
                    Box room = air.with(Side.FRONT, start)
                            .with(Side.BACK, start.plus(run.length()))
                            .inset(Side.BOTTOM, run.slides().below());
                    BoxMaker maker = new BoxMaker(in, box, run.slides());
                    List<Part> made = maker.make(opening.width(), room.slab(Side.BOTTOM, run.height()));
                    made.stream().limit(1).forEach(boxFront -> {
                        in.joint(Joint.Kind.SCREW, boxFront, front, Map.of());
                        FrontFixing.fix(in, front, boxFront);
                    });
                    all.addAll(made);
                    run(run.slides(), run.length(), made, air);
                });
        in.fills(opening, all);
        if (fronts.count("handles") > 0) {
            Handles.fix(in, fronts, front);
        }
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
