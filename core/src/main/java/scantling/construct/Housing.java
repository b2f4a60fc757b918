package scantling.construct;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import scantling.measure.Dim;
import scantling.measure.LengthFormat;
import scantling.piece.Element;
import scantling.space.Box;
import scantling.space.Side;

/**
 * Lets a part into the parts that bound its place: grows its box by the depth of the joint on each side where there is
 * wood, and tells of the joints once it is placed. A side with only air beyond it stays where it is.
 */
final class Housing {
    private final Site site;
    private final Element element;
    private final List<Part> standing;
    private final List<Entry> entries = new ArrayList<>();
    private Box box;

    private record Entry(Side side, Part into, Dim depth) {}

    /** @param box the part's place between what bounds it */
    Housing(Site site, Element element, Box box) {
        this.site = site;
        this.element = element;
        this.box = box;
        standing = site.parts();
    }

    /** Lets it in on a side. @param depth as said @param usual the depth for a thickness when it was not said */
    Housing into(Side side, Optional<Dim> depth, UnaryOperator<Dim> usual) {
        List<Part> beyond = Neighbours.at(standing, box, side);
        if (beyond.isEmpty()) {
            return this;
        }
        Dim thinnest = beyond.stream().map(Part::thickness).min(Dim::compareTo).orElseThrow();
        Dim enters = depth.orElseGet(() -> usual.apply(thinnest));
        if (enters.compareTo(thinnest) >= 0) {
            tooDeep(enters, beyond.get(0), thinnest);
            enters = usual.apply(thinnest);
        }
        for (Part part : beyond) {
            entries.add(new Entry(side, part, enters));
        }
        box = box.inset(side, Dim.ZERO.minus(enters));
        return this;
    }

    /** Butts against what is on a side. */
    Housing against(Side side) {
        return into(side, Optional.of(Dim.ZERO), thickness -> Dim.ZERO);
    }

    /** The place with what the joints eat. */
    Box box() {
        return box;
    }

    /** Tells of the joints of the part that was placed. @param housed where it is let in @param butted where it is not */
    void join(Part part, Joint.Kind housed, Joint.Kind butted) {
        for (Entry entry : entries) {
            if (entry.depth().value().isZero()) {
                site.joint(butted, part, entry.into(), Map.of());
            } else {
                site.joint(flush(part, entry, housed), part, entry.into(), sizes(part, entry.depth()));
            }
        }
    }

    /** Whether it has no joint with a part yet. */
    boolean isApart(Part part) {
        return entries.stream().noneMatch(entry -> entry.into().path().equals(part.path()));
    }

    /** What a slot for a part needs. */
    static Map<String, Dim> sizes(Part entering, Dim depth) {
        Map<String, Dim> sizes = new LinkedHashMap<>();
        sizes.put("depth", depth);
        sizes.put("width", entering.thickness());
        return sizes;
    }

    private static Joint.Kind flush(Part part, Entry entry, Joint.Kind housed) {
        return housed != Joint.Kind.GROOVE && isFlush(part, entry.into()) ? Joint.Kind.RABBET : housed;
    }

    /** Whether a part lies at the very end or edge of the one it enters, so that no slot but a step receives it. */
    static boolean isFlush(Part entering, Part receiving) {
        Side near = Side.of(entering.lie().thickness(), false);
        return List.of(near, near.opposite()).stream()
                .anyMatch(side ->
                        entering.box().plane(side).equals(receiving.box().plane(side)));
    }

    private void tooDeep(Dim depth, Part part, Dim thickness) {
        LengthFormat format = LengthFormat.of(site.piece().unit());
        site.problem(
                element.span(),
                "A depth of (%s) goes right through (%s), which is %s thick."
                        .formatted(
                                format.formatWithUnit(depth.value()),
                                part.path(),
                                format.formatWithUnit(thickness.value())),
                "Let it in by less: a third of the thickness is usual.");
    }
}
