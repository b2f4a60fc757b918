package scantling.construct;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.measure.Dim;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.piece.Shape;
import scantling.piece.Stock;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Lie;
import scantling.space.Side;

/** Makes the panels of a frame, held in a rabbet from behind or in a groove. */
final class InfillMaker {
    private final Site in;
    private final Side out;
    private final Element said;
    private final Stock stock;
    private final boolean rabbet;

    /** @param out the side the frame shows toward @param said the fields of {@link #field} */
    InfillMaker(Site in, Side out, Element said) {
        this.in = in;
        this.out = out;
        this.said = said;
        stock = said.stock("of");
        rabbet = said.is("held in", "rabbet");
    }

    /** What can be said of infill. */
    static Field field() {
        Shape shape = Shape.shortly(
                "infill",
                "of",
                "The panels that fill a frame.",
                Field.required("of", Field.Kind.STOCK, "What the panels are of.", "veneered"),
                Field.choice(
                        "held in",
                        "Whether panels are laid into a rabbet from behind or held in a groove.",
                        "groove",
                        "rabbet"),
                Field.optional(
                        "width",
                        Field.Kind.LENGTH,
                        "How far a rabbet reaches onto the frame (10 mm when not said), or how wide a groove is (the"
                                + " panel).",
                        "10 mm"),
                Field.optional(
                        "depth",
                        Field.Kind.LENGTH,
                        "How deep a rabbet is from behind (the panel when not said), or how deep a groove is (8 mm).",
                        "13 mm"),
                Field.usual(
                        "clearance",
                        Field.Kind.LENGTH,
                        "1 mm",
                        "common practice for sheets; solid panels need more to move",
                        "How much shorter than its rabbet or groove the panel is at each edge."),
                Field.optional(
                        "corners",
                        Field.Kind.LENGTH,
                        "Radius of the panel's corners: that of the bit that routed the rabbet.",
                        "6 mm"));
        return Field.part("infill", Field.Kind.PART, shape, "What fills the frame.", "{of: veneered, held in: rabbet}");
    }

    /** Makes a panel between each two rails. @param rails from the bottom up */
    List<Part> make(List<Part> stiles, List<Part> rails) {
        if (!holds(rails.get(0))) {
            return List.of();
        }
        List<Part> panels = new ArrayList<>();
        for (int i = 1; i < rails.size(); i++) {
            String name = rails.size() == 2 ? "panel" : "panel " + i;
            List<Part> around = List.of(stiles.get(0), stiles.get(1), rails.get(i - 1), rails.get(i));
            panels.add(panel(name, around));
        }
        return panels;
    }

    private boolean holds(Part rail) {
        Dim need = rabbet ? depth() : stock.thickness();
        if (need.compareTo(rail.thickness()) < 0 && (!rabbet || depth().compareTo(stock.thickness()) >= 0)) {
            return true;
        }
        in.problem(
                said.span(),
                "A panel %s thick in a %s %s across does not go into a rail %s thick."
                        .formatted(
                                in.say(stock.thickness()),
                                said.text("held in"),
                                in.say(need),
                                in.say(rail.thickness())),
                "Make the rail thicker or the panel thinner, and a rabbet at least as deep as the panel is thick.");
        return false;
    }

    private Dim depth() {
        return said.findLength("depth")
                .orElseGet(rabbet ? stock::thickness : () -> Fittings.of("panel", "groove depth"));
    }

    private Dim lap() {
        return rabbet ? said.findLength("width").orElseGet(() -> Fittings.of("panel", "rabbet lap")) : depth();
    }

    /** @param around near stile, far stile, rail below, rail above */
    private Part panel(String name, List<Part> around) {
        Axis across = out.axis() == Axis.ACROSS ? Axis.DEEP : Axis.ACROSS;
        Side near = Side.of(across, false);
        Side far = Side.of(across, true);
        Box rail = around.get(2).box();
        Dim grow = lap().minus(said.length("clearance"));
        Box air = rail.with(near, around.get(0).box().plane(far).minus(grow))
                .with(far, around.get(1).box().plane(near).plus(grow))
                .with(Side.BOTTOM, rail.top().minus(grow))
                .with(Side.TOP, around.get(3).box().bottom().plus(grow))
                .inset(out, behindFace(around.get(2)))
                .slab(out, stock.thickness());
        PartMaker maker = in.part(name, stock.material()).holding(out).showing(out);
        Optional<Dim> radius = said.findLength("corners");
        radius.ifPresent(r -> maker.shaped(Rounded.rectangle(air.extent(Axis.UP), air.extent(across), r)));
        Part panel = maker.place(air, Lie.along(Axis.UP, out));
        around.forEach(frame -> hold(panel, frame));
        return panel;
    }

    /** How far the panel's face lies behind the rail's. */
    private Dim behindFace(Part rail) {
        return rabbet
                ? rail.thickness().minus(depth())
                : rail.thickness().minus(stock.thickness()).half();
    }

    private void hold(Part panel, Part frame) {
        if (!rabbet) {
            Dim wide = said.findLength("width").orElseGet(stock::thickness);
            in.joint(Joint.Kind.GROOVE, panel, frame, Map.of("depth", depth(), "width", wide));
            return;
        }
        Dim face = panel.box().plane(out);
        Dim back = frame.box().plane(out.opposite());
        Dim deep = out.isFar() ? face.minus(back) : back.minus(face);
        Map<String, Dim> sizes = new LinkedHashMap<>(Map.of("width", lap(), "depth", deep));
        said.findLength("corners").ifPresent(radius -> sizes.put("radius", radius));
        in.joint(Joint.Kind.RABBET, panel, frame, sizes);
    }
}
