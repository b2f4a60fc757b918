package scantling.finishing;

import java.util.List;
import scantling.construct.Part;
import scantling.feature.Surface;
import scantling.finishing.Cells.Rect;
import scantling.space.Axis;
import scantling.space.Outline;
import scantling.space.Side;

/** Turns rectangles in the piece into rectangles from a part's marks, and tells how much of its box a shaped part fills. */
final class Patches {
    private Patches() {}

    /** A rectangle on a side of a part, from its marks. */
    static Face.Patch on(Part part, Side side, Rect rect) {
        Axis x = side.axis() == Axis.ACROSS ? Axis.DEEP : Axis.ACROSS;
        Axis y = side.axis().third(x);
        Axis along = side.axis() == part.lie().length()
                ? part.lie().width()
                : part.lie().length();
        double[] first = from(part, x, rect.fromX(), rect.toX());
        double[] second = from(part, y, rect.fromY(), rect.toY());
        return x == along
                ? new Face.Patch(first[0], first[1], second[0], second[1])
                : new Face.Patch(second[0], second[1], first[0], first[1]);
    }

    private static double[] from(Part part, Axis axis, double from, double to) {
        Side mark = mark(part, axis);
        double plane = part.box().plane(mark).value().toMillimetres();
        return mark.isFar() ? new double[] {plane - to, plane - from} : new double[] {from - plane, to - plane};
    }

    private static Side mark(Part part, Axis axis) {
        if (axis == part.lie().length()) {
            return part.lie().nearEnd();
        }
        return axis == part.lie().width() ? part.lie().faceEdge() : part.lie().faceSide();
    }

    /** How much of the rectangle a surface of a shaped part has: of its faces by area, of edges and ends by girth. */
    static double share(Part part, Surface surface) {
        if (part.outline().isEmpty()) {
            return 1;
        }
        double length = part.length().value().toMillimetres();
        double width = part.width().value().toMillimetres();
        List<Outline.Corner> corners = part.outline().get().corners();
        boolean flat = surface == Surface.FACE_SIDE || surface == Surface.BACK_SIDE;
        return flat ? area(corners) / (length * width) : girth(corners) / (2 * (length + width));
    }

    private static double area(List<Outline.Corner> corners) {
        double twice = 0;
        for (int i = 0; i < corners.size(); i++) {
            Outline.Corner a = corners.get(i);
            Outline.Corner b = corners.get((i + 1) % corners.size());
            twice += along(a) * across(b) - along(b) * across(a);
        }
        return Math.abs(twice) / 2;
    }

    private static double girth(List<Outline.Corner> corners) {
        double sum = 0;
        for (int i = 0; i < corners.size(); i++) {
            Outline.Corner a = corners.get(i);
            Outline.Corner b = corners.get((i + 1) % corners.size());
            sum += Math.hypot(along(b) - along(a), across(b) - across(a));
        }
        return sum;
    }

    private static double along(Outline.Corner corner) {
        return corner.along().value().toMillimetres();
    }

    private static double across(Outline.Corner corner) {
        return corner.across().value().toMillimetres();
    }
}
