package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Contact;
import scantling.space.Side;

/** What carries a part that lies flat: parts joined to it, standing against it or under it. */
final class Supports {
    private final Part part;
    private final List<Part> carriers;

    Supports(Assembly assembly, Part part) {
        this.part = part;
        Set<String> joined = Parts.joinedTo(assembly, part);
        this.carriers = assembly.parts().stream()
                .filter(other -> carries(joined, other))
                .toList();
    }

    List<Part> carriers() {
        return carriers;
    }

    private boolean carries(Set<String> joined, Part other) {
        boolean moves = Parts.isFace(other) || Parts.findDrawer(other).isPresent();
        if (other == part || moves || Parts.isLipping(other) || Parts.isBreadboard(other)) {
            return false;
        }
        Optional<Contact> contact = Contact.between(part.box(), other.box());
        boolean under = contact.filter(at -> at.side() == Side.BOTTOM).isPresent();
        boolean stands = other.lie().thickness() != Axis.UP;
        boolean beside = contact.filter(at -> at.side() != Side.TOP).isPresent()
                || !part.box().meet(other.box()).isEmpty();
        return under || stands && (beside || joined.contains(other.path()));
    }

    /** Whether it lies on something that carries it over most of its length and its width: then it does not span. */
    boolean isBedded() {
        return beds().stream().anyMatch(box -> covers(box, Axis.ACROSS) && covers(box, Axis.DEEP));
    }

    private boolean covers(Box box, Axis axis) {
        return Parts.mm(shared(box, axis)) * 2 > Parts.mm(part.box().extent(axis));
    }

    /** The widest clear span along a direction; empty with fewer than two supports there. */
    Optional<Dim> findSpan(Axis along) {
        Optional<Dim> walls = widest(along, across(along, 2));
        return walls.isPresent() ? walls : widest(along, across(along, Integer.MAX_VALUE));
    }

    /** Where it runs on past what holds it. @param reach past the support @param back clear span behind it; zero where it is bedded */
    record Overhang(Dim reach, Dim back) {}

    /** The further of its two overhangs along a direction. */
    Optional<Overhang> findOverhang(Axis along) {
        List<Box> boxes = isBedded() ? beds() : across(along, Integer.MAX_VALUE);
        if (boxes.isEmpty() || boxes.size() < 2 && !isBedded()) {
            return Optional.empty();
        }
        Side low = Side.of(along, false);
        Side high = Side.of(along, true);
        Dim near = boxes.stream()
                .map(box -> box.plane(low))
                .reduce(Dim::smallerOf)
                .orElseThrow()
                .minus(part.box().plane(low));
        Dim far = part.box()
                .plane(high)
                .minus(boxes.stream()
                        .map(box -> box.plane(high))
                        .reduce(Dim::largerOf)
                        .orElseThrow());
        Dim back = isBedded() ? Dim.ZERO : findSpan(along).orElse(Dim.ZERO);
        return Optional.of(new Overhang(Dim.largerOf(near, far), back))
                .filter(hang -> hang.reach().value().isPositive());
    }

    private List<Box> beds() {
        return carriers.stream()
                .map(Part::box)
                .filter(box -> Contact.between(part.box(), box)
                        .filter(at -> at.side() == Side.BOTTOM)
                        .isPresent())
                .toList();
    }

    /** How far it runs on past the outermost supports, mm: the shorter of both ends. */
    double past(Axis along) {
        List<Box> boxes = across(along, Integer.MAX_VALUE);
        if (boxes.size() < 2) {
            return 0;
        }
        double first = Parts.mm(boxes.get(0).plane(Side.of(along, true)));
        double last = boxes.stream()
                .mapToDouble(box -> Parts.mm(box.plane(Side.of(along, false))))
                .max()
                .orElse(first);
        double near = first - Parts.mm(part.box().plane(Side.of(along, false)));
        double far = Parts.mm(part.box().plane(Side.of(along, true))) - last;
        double thick = Parts.mm(boxes.get(0).extent(along));
        return boxes.size() > 2 ? 0 : Math.max(0, Math.min(near, far) - thick);
    }

    // A carrier that runs along the span does not end it; a post carries only when nothing wider does.
    private List<Box> across(Axis along, int leastShare) {
        Axis other = along.third(Axis.UP);
        double length = Parts.mm(part.box().extent(along));
        double width = Parts.mm(part.box().extent(other));
        return carriers.stream()
                .map(Part::box)
                .filter(box -> Parts.mm(box.extent(along)) * 2 < length)
                .filter(box -> Parts.mm(shared(box, other)) * leastShare >= width)
                .sorted(Comparator.comparing((Box box) -> box.plane(Side.of(along, false))))
                .toList();
    }

    private Dim shared(Box box, Axis axis) {
        return part.box().meet(box).extent(axis);
    }

    private static Optional<Dim> widest(Axis along, List<Box> boxes) {
        List<Dim> gaps = new ArrayList<>();
        for (int i = 1; i < boxes.size(); i++) {
            Dim reached = boxes.get(0).plane(Side.of(along, true));
            for (Box before : boxes.subList(1, i)) {
                reached = Dim.largerOf(reached, before.plane(Side.of(along, true)));
            }
            gaps.add(boxes.get(i).plane(Side.of(along, false)).minus(reached));
        }
        return gaps.stream().filter(gap -> gap.value().isPositive()).max(Comparator.naturalOrder());
    }
}
