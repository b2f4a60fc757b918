package scantling.construct;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import scantling.measure.Dim;
import scantling.piece.Element;
import scantling.piece.Stock;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Lie;
import scantling.space.Side;

/** A core with solid edging round it. Mitred pieces both reach the corner; butted ones lie between front and back. */
final class Lipping {
    private final Element said;
    private final Site site;
    private final Stock with;
    private final List<Side> edges;

    Lipping(Element said, Site site) {
        this.said = said;
        this.site = site;
        with = said.stock("with");
        edges = edges(said.text("round"));
    }

    private static List<Side> edges(String round) {
        return switch (round) {
            case "all" -> List.of(Side.FRONT, Side.BACK, Side.LEFT, Side.RIGHT);
            case "front" -> List.of(Side.FRONT);
            default -> List.of(Side.FRONT, Side.LEFT, Side.RIGHT);
        };
    }

    /** @return the core */
    Part build(Stock of) {
        Box inner = site.space();
        for (Side edge : edges) {
            inner = inner.inset(edge, with.thickness());
        }
        Part core = site.part("core", of.material())
                .holding(Side.TOP)
                .showing(Side.TOP, Side.BOTTOM)
                .place(inner, Grain.alongLonger(inner, Side.TOP));
        List<Part> pieces = new ArrayList<>();
        for (Side edge : edges) {
            Part piece = piece(edge, core.box());
            site.joint(
                    Butting.kind(said),
                    piece,
                    core,
                    said.findLength("proud")
                            .map(proud -> Map.of("proud", proud))
                            .orElse(Map.of()));
            pieces.stream()
                    .filter(other -> other.lie().length() != piece.lie().length())
                    .forEach(other -> site.joint(corner(), piece, other, Map.of()));
            pieces.add(piece);
        }
        return core;
    }

    private Part piece(Side edge, Box core) {
        Axis along = edge.axis() == Axis.DEEP ? Axis.ACROSS : Axis.DEEP;
        Dim plane = core.plane(edge);
        Dim out = edge.isFar() ? plane.plus(with.thickness()) : plane.minus(with.thickness());
        Box place = core.with(edge.opposite(), plane).with(edge, out);
        for (boolean far : new boolean[] {false, true}) {
            Side end = Side.of(along, far);
            boolean reaches = edges.contains(end) && (isMitred() || along == Axis.ACROSS);
            place = reaches ? place.inset(end, Dim.ZERO.minus(with.thickness())) : place;
        }
        PartMaker maker = site.part(edge.word() + " lipping", with.material())
                .showing(edge, Side.TOP)
                .fitted();
        return (edge.isFar() ? maker : maker.holding(edge.opposite())).place(place, Lie.along(along, edge));
    }

    private boolean isMitred() {
        return said.is("corners", "mitred");
    }

    private Joint.Kind corner() {
        return isMitred() ? Joint.Kind.MITRE : Joint.Kind.GLUED;
    }
}
