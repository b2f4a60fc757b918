package scantling.construct;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import scantling.measure.Dim;
import scantling.measure.Ledger;
import scantling.measure.Tolerance;
import scantling.piece.Material;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Ends;
import scantling.space.Lie;
import scantling.space.Outline;
import scantling.space.Side;
import scantling.space.Turn;

/**
 * Puts one part together. Its sizes get names; where the bench has measured one, the part keeps the planes it is held
 * to and its other planes follow, so that whatever is built on them follows too.
 */
final class PartMaker {
    private final Works works;
    private final String path;
    private final Material material;
    private final Set<Side> held = EnumSet.noneOf(Side.class);
    private final Set<Side> shows = EnumSet.noneOf(Side.class);
    private Optional<Outline> outline = Optional.empty();
    private Optional<Outline> edgeOutline = Optional.empty();
    private Ends ends = Ends.SQUARE;
    private Optional<Turn> turn = Optional.empty();
    private boolean fitted;

    PartMaker(Works works, String path, Material material) {
        this.works = works;
        this.path = path;
        this.material = material;
    }

    /** The full name it will have. */
    String path() {
        return path;
    }

    /** The far sides whose planes stay where they are when its size turns out otherwise; near sides stay by themselves. */
    PartMaker holding(Side... sides) {
        Set.of(sides).forEach(held::add);
        return this;
    }

    /** Sides that are seen when the piece is finished. */
    PartMaker showing(Side... sides) {
        Set.of(sides).forEach(shows::add);
        return this;
    }

    /** A shape other than a rectangle. */
    PartMaker shaped(Outline shape) {
        outline = Optional.of(shape);
        return this;
    }

    /** A shape other than a rectangle seen on the face edge. */
    PartMaker shapedOnEdge(Outline shape) {
        edgeOutline = Optional.of(shape);
        return this;
    }

    /** Ends that are not square. */
    PartMaker ending(Ends cuts) {
        ends = cuts;
        return this;
    }

    /** Turned out of its box. */
    PartMaker turned(Turn out) {
        turn = Optional.of(out);
        return this;
    }

    /** Left long and cut to fit its place. */
    PartMaker fitted() {
        fitted = true;
        return this;
    }

    /** Puts it in its box. */
    Part place(Box planned, Lie lie) {
        Dim length = size("length", planned.extent(lie.length()), works.tolerance("cut to a stop"));
        Dim width = size("width", planned.extent(lie.width()), works.tolerance("ripped to a fence"));
        Dim thickness = size("thickness", planned.extent(lie.thickness()), thicknessTolerance());
        Box box = resized(planned, lie.length(), length);
        box = resized(box, lie.width(), width);
        box = resized(box, lie.thickness(), thickness);
        Part part = new Part(
                path, material, length, width, thickness, box, lie, outline, edgeOutline, ends, turn, shows, fitted);
        works.parts().add(part);
        return part;
    }

    private Dim size(String name, Dim planned, Tolerance tolerance) {
        return works.ledger().name(Ledger.path(path, name), planned, tolerance);
    }

    private Tolerance thicknessTolerance() {
        return works.tolerance(material.kind() == Material.Kind.SHEET ? "sheet as bought" : "planed");
    }

    private Box resized(Box box, Axis axis, Dim size) {
        Side far = Side.of(axis, true);
        return held.contains(far)
                ? box.with(far.opposite(), box.plane(far).minus(size))
                : box.with(far, box.plane(far.opposite()).plus(size));
    }
}
