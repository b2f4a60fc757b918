package scantling.hardware;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import scantling.construct.Opening;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/**
 * Whether the gaps about inset doors and drawer fronts come out even, and wide enough: those to the sides of the opening
 * and those between one face and the next.
 */
record Reveals(Workings workings) {
    /** A door or a drawer front. @param name of it @param box of it @param air the opening it lies in @param inset in it, not before it */
    private record Face(String name, Box box, Opening air, boolean inset) {
        Dim edge(Side side) {
            return box.plane(side);
        }

        Dim toTheOpening(Side side) {
            return outward(air.box().plane(side), edge(side), side);
        }

        /**
         * What the bench found an opening to be over its planned size. Planned planes stay where they are, so it is wider, or
         * narrower, at the far side; the face follows the measured size from the near one.
         */
        Optional<Dim> more(Side side) {
            Dim size = side.axis() == Axis.ACROSS ? air.width() : air.height();
            Dim planned =
                    air.box().plane(Side.of(side.axis(), true)).minus(air.box().plane(Side.of(side.axis(), false)));
            return side.isFar() && size.isMeasured() ? Optional.of(size.minus(planned)) : Optional.empty();
        }
    }

    /** A gap beside a face. @param where in words @param wide how wide */
    private record Gap(String where, Dim wide) {}

    void check() {
        faces().stream().filter(Face::inset).forEach(this::check);
    }

    private List<Face> faces() {
        List<Face> faces = new ArrayList<>();
        workings.assembly().fittings().forEach(fitting -> {
            boolean inset = fitting.is("set", "inset");
            if (fitting.words().containsKey("hung")) {
                Door.of(workings, fitting)
                        .ifPresent(door -> faces.add(
                                new Face(Workings.parent(fitting.path()), door.face(), door.opening(), inset)));
            } else if (fitting.words().containsKey("runs on")) {
                workings.find(Workings.parent(fitting.path()) + " / front")
                        .ifPresent(front -> workings.openingOf(front)
                                .ifPresent(air -> faces.add(new Face(front.path(), front.box(), air, inset))));
            }
        });
        return faces;
    }

    private void check(Face face) {
        List<Gap> gaps = gaps(face);
        Dim first = gaps.get(0).wide();
        Dim[] others = gaps.stream().skip(1).map(Gap::wide).toArray(Dim[]::new);
        Dim least = Dim.smallerOf(first, others);
        Dim most = Dim.largerOf(first, others);
        if (least.compareTo(workings.size("face", "least gap")) < 0) {
            tell(face, gaps, least, "is too narrow", "Plane it until there are %s all round.");
        } else if (most.minus(least).compareTo(workings.size("face", "uneven")) > 0) {
            tell(
                    face,
                    gaps,
                    most,
                    "is not as wide as the others",
                    "Make all of them %s, or shift the face on its fixings.");
        }
    }

    private void tell(Face face, List<Gap> gaps, Dim off, String what, String remedy) {
        String all = gaps.stream()
                .map(gap -> "%s %s".formatted(workings.say(gap.wide()), gap.where()))
                .reduce((a, b) -> a + ", " + b)
                .orElse("");
        workings.caution(
                face.name(),
                "One of the gaps about %s %s: %s.".formatted(face.name(), what, all),
                List.of(off),
                "common practice: gaps within 0.3 mm look even, less than 1 mm rubs",
                remedy.formatted(workings.say(Dim.largerOf(off, workings.size("face", "least gap")))));
    }

    /** The gaps to what bounds the opening; where another face of it comes first, to that. */
    private List<Gap> gaps(Face face) {
        List<Gap> gaps = new ArrayList<>();
        for (Side side : List.of(Side.LEFT, Side.RIGHT, Side.BOTTOM, Side.TOP)) {
            gaps.add(new Gap(side.word(), gap(face, side)));
        }
        return gaps;
    }

    private Dim gap(Face face, Side side) {
        Dim open = face.toTheOpening(side);
        Dim gap = open;
        for (Part part : workings.assembly().parts()) {
            Dim to = outward(part.box().plane(side.opposite()), face.edge(side), side);
            if (!to.value().isNegative() && to.compareTo(gap) < 0 && level(part.box(), face, side.axis())) {
                gap = to;
            }
        }
        return gap.value().equals(open.value())
                ? face.more(side).map(open::plus).orElse(open)
                : gap;
    }

    private static Dim outward(Dim plane, Dim edge, Side side) {
        return side.isFar() ? plane.minus(edge) : edge.minus(plane);
    }

    /** Whether wood stands in the plane of a face and beside it. */
    private static boolean level(Box wood, Face face, Axis axis) {
        for (Axis other : Axis.values()) {
            if (other != axis
                    && (wood.plane(Side.of(other, true)).compareTo(face.box().plane(Side.of(other, false))) <= 0
                            || face.box().plane(Side.of(other, true)).compareTo(wood.plane(Side.of(other, false)))
                                    <= 0)) {
                return false;
            }
        }
        return true;
    }
}
