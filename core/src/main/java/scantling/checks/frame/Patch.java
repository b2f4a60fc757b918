package scantling.checks.frame;

import java.util.List;
import java.util.Optional;
import scantling.checks.lasting.Parts;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Contact;
import scantling.space.Side;

/**
 * The face on which two joined parts meet.
 *
 * @param into the direction in which the one enters or lies against the other
 * @param place the middle of the face
 * @param first a direction in the face
 * @param firstSize mm along it
 * @param second the other direction
 * @param secondSize mm along that
 */
record Patch(Axis into, Vector place, Axis first, double firstSize, Axis second, double secondSize) {
    /** Where a joint's parts meet; empty when they do not. */
    static Optional<Patch> of(Joint joint, Part entering, Part receiving) {
        Optional<Contact> contact = Contact.between(entering.box(), receiving.box());
        if (contact.isPresent()) {
            return Optional.of(of(contact.get().side().axis(), contact.get().patch()));
        }
        Box shared = entering.box().meet(receiving.box());
        return shared.isEmpty() ? Optional.empty() : Optional.of(of(into(joint, entering, receiving, shared), shared));
    }

    private static Patch of(Axis into, Box box) {
        Axis first = Axis.values()[(into.ordinal() + 1) % 3];
        Axis second = Axis.values()[(into.ordinal() + 2) % 3];
        Vector middle = Vector.ZERO;
        for (Axis axis : Axis.values()) {
            double from = Parts.mm(box.plane(Side.of(axis, false)));
            double to = Parts.mm(box.plane(Side.of(axis, true)));
            middle = middle.with(axis, (from + to) / 2);
        }
        return new Patch(into, middle, first, Parts.mm(box.extent(first)), second, Parts.mm(box.extent(second)));
    }

    /** The direction in which the entering part ends inside the other, its length before its width. */
    private static Axis into(Joint joint, Part entering, Part receiving, Box shared) {
        return List.of(
                        entering.lie().length(),
                        entering.lie().width(),
                        entering.lie().thickness())
                .stream()
                .filter(axis -> endsInside(axis, entering.box(), shared))
                .findFirst()
                .orElse(receiving.lie().thickness());
    }

    private static boolean endsInside(Axis axis, Box entering, Box shared) {
        Side near = Side.of(axis, false);
        Side far = Side.of(axis, true);
        return shared.plane(near).equals(entering.plane(near))
                != shared.plane(far).equals(entering.plane(far));
    }

    double area() {
        return firstSize * secondSize;
    }

    /** The size of the face that resists turning about a direction in it. */
    double across(Axis about) {
        return about == first ? secondSize : firstSize;
    }
}
