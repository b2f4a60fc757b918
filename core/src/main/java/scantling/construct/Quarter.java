package scantling.construct;

import java.util.Optional;
import java.util.stream.Collectors;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Lie;
import scantling.space.Side;
import scantling.space.Turn;

/**
 * A space seen from another of its sides, so that what is built in it looks that way: a quarter or half turn, exact.
 * Inside, front is the side that is looked from and everything counts from its own left front corner.
 *
 * @param facing the side of the piece that is the front inside
 * @param space the space, as the piece sees it
 */
record Quarter(Side facing, Box space) {
    /** The space as it is seen inside. */
    Box inside() {
        return new Box(
                Dim.ZERO,
                space.extent(of(Side.LEFT).axis()),
                Dim.ZERO,
                space.extent(of(Side.FRONT).axis()),
                space.bottom(),
                space.top());
    }

    /** The side of the piece that a side inside is. */
    Side of(Side inside) {
        return switch (inside) {
            case FRONT -> facing;
            case BACK -> facing.opposite();
            case LEFT -> left();
            case RIGHT -> left().opposite();
            case TOP, BOTTOM -> inside;
        };
    }

    /** What lies to the left of one who looks at that side. */
    private Side left() {
        return switch (facing) {
            case RIGHT -> Side.FRONT;
            case LEFT -> Side.BACK;
            case BACK -> Side.RIGHT;
            default -> Side.LEFT;
        };
    }

    private Axis of(Axis inside) {
        return of(Side.of(inside, false)).axis();
    }

    private Dim plane(Axis inside, Dim from) {
        if (inside == Axis.UP) {
            return from;
        }
        Side near = of(Side.of(inside, false));
        return near.isFar() ? space.plane(near).minus(from) : space.plane(near).plus(from);
    }

    /** Where a box inside is in the piece. */
    Box of(Box inside) {
        Box box = inside;
        for (Side side : Side.values()) {
            box = box.with(of(side), plane(side.axis(), inside.plane(side)));
        }
        return box;
    }

    /** How a part inside lies in the piece. */
    Lie of(Lie inside) {
        return new Lie(
                of(inside.length()),
                of(inside.thickness()),
                of(inside.faceSide()),
                of(inside.faceEdge()),
                of(inside.nearEnd()));
    }

    /** How a part that is turned inside is turned in the piece. */
    Turn of(Turn inside) {
        Axis about = of(inside.about());
        double sense = of(Side.of(inside.about(), true)).isFar() ? 1 : -1;
        Axis first = inside.about().next();
        Dim one = plane(first, inside.first());
        Dim other = plane(first.next(), inside.second());
        boolean straight = of(first) == about.next();
        Optional<Turn> then = inside.then().map(this::of);
        return new Turn(about, sense * inside.degrees(), straight ? one : other, straight ? other : one, then);
    }

    /** A part inside as it is in the piece. */
    Part of(Part part) {
        return new Part(
                part.path(),
                part.material(),
                part.length(),
                part.width(),
                part.thickness(),
                of(part.box()),
                of(part.lie()),
                part.outline(),
                part.edgeOutline(),
                part.ends(),
                part.turn().map(this::of),
                part.shows().stream().map(this::of).collect(Collectors.toSet()),
                part.fitted());
    }

    /** A joint inside as it is in the piece. */
    Joint of(Joint joint) {
        return new Joint(
                joint.path(),
                joint.kind(),
                joint.entering(),
                joint.receiving(),
                joint.overlap().map(this::of),
                joint.sizes());
    }

    /** An opening inside as it is in the piece; its width stays what one sees who stands before it. */
    Opening of(Opening opening) {
        return new Opening(
                opening.path(), opening.width(), opening.depth(), opening.height(), of(opening.box()), opening.fills());
    }
}
