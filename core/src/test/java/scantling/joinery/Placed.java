package scantling.joinery;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import scantling.construct.Assembly;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Span;
import scantling.measure.Unit;
import scantling.piece.Material;
import scantling.piece.Piece;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Lie;
import scantling.space.Side;

/** Two parts that meet somewhere, marked any way, for one joint. */
record Placed(Part entering, Part receiving, Joint joint, Unit unit) {
    static Dim mm(double mm) {
        Length length = Length.ofMillimetres(Math.round(mm * 100) / 100.0);
        return Dim.given(length, "a number", length.toString(), new Span(1, 1, 0, 1));
    }

    /** Any two, the first entering the second by a depth, or only touching it where that is zero. */
    static Placed any(Random random, Joint.Kind kind, boolean entersByLength) {
        Side side = Side.values()[random.nextInt(6)];
        Unit unit = random.nextInt(4) == 0 ? Unit.INCH : Unit.MM;
        Axis normal = side.axis();
        List<Axis> others = new ArrayList<>(List.of(Axis.values()));
        others.remove(normal);
        Collections.shuffle(others, random);
        double thick = 12 + random.nextInt(30);
        double wide = 30 + random.nextInt(170);
        double into = 12 + random.nextInt(60);
        double depth = entersByLength ? 3 + random.nextInt((int) (into / 2 - 2)) : 0;
        double[] low = new double[3];
        double[] high = new double[3];
        double[] from = new double[3];
        double[] to = new double[3];
        double start = 100 + random.nextInt(1000) / 10.0;
        place(low, high, normal, start, start + 120 + random.nextInt(400));
        place(from, to, normal, side.isFar() ? high[normal.ordinal()] - depth : low[normal.ordinal()] + depth - into);
        to[normal.ordinal()] = from[normal.ordinal()] + into;
        place(low, high, others.get(0), start, start + thick);
        place(low, high, others.get(1), start, start + wide);
        place(from, to, others.get(0), start - random.nextInt(3) * 7.5, start + thick + random.nextInt(3) * 7.5);
        place(from, to, others.get(1), start - random.nextInt(3) * 40, start + wide + random.nextInt(3) * 40);
        boolean end = kind != Joint.Kind.BISCUIT || random.nextBoolean();
        Lie lie = lie(random, end ? normal : others.get(1), others.get(0));
        Part entering = part("one", low, high, lie);
        Axis wood = others.get(random.nextInt(2));
        Axis through = random.nextBoolean() ? normal : wood == others.get(0) ? others.get(1) : others.get(0);
        Part receiving = part("two", from, to, lie(random, wood, through));
        return new Placed(
                entering, receiving, new Joint("one to two", kind, "one", "two", Optional.empty(), Map.of()), unit);
    }

    /** How two parts of a flat frame or of a box come together. */
    enum Corner {
        /** Both end there, flat like a frame. */
        FLAT_CORNER,
        /** The first ends on the second somewhere along it, flat. */
        FLAT_TEE,
        /** Both run on, flat. */
        FLAT_CROSS,
        /** Both end there, on edge like the boards of a box. */
        BOX
    }

    /** Any two that share wood where they come together. */
    static Placed corner(Random random, Joint.Kind kind, Corner corner, boolean sameThickness) {
        List<Axis> axes = new ArrayList<>(List.of(Axis.values()));
        Collections.shuffle(axes, random);
        Axis one = axes.get(0);
        Axis two = axes.get(1);
        Axis run = axes.get(2);
        boolean box = corner == Corner.BOX;
        double high = box ? 60 + random.nextInt(300) : 12 + random.nextInt(30);
        double deepOne = box ? 10 + random.nextInt(20) : 40 + random.nextInt(100);
        double deepTwo = box ? (sameThickness ? deepOne : 10 + random.nextInt(20)) : 40 + random.nextInt(100);
        boolean endsOne = corner != Corner.FLAT_CROSS;
        boolean endsTwo = corner == Corner.BOX || corner == Corner.FLAT_CORNER;
        double x = 500 + random.nextInt(1000) / 10.0;
        double y = 500 + random.nextInt(1000) / 10.0;
        double z = random.nextInt(1000) / 10.0;
        double blind = kind == Joint.Kind.HALF_BLIND ? 3 + random.nextInt((int) deepOne - 6) : 0;
        double[][] first = new double[2][3];
        double[][] second = new double[2][3];
        length(first, one, random, x, x + deepTwo, endsOne, 0);
        length(second, two, random, y, y + deepOne, endsTwo, blind);
        span(first, two, y, y + deepOne);
        span(second, one, x, x + deepTwo);
        span(first, run, z, z + high);
        span(second, run, z, z + high);
        Unit unit = random.nextInt(4) == 0 ? Unit.INCH : Unit.MM;
        return new Placed(
                part("one", first[0], first[1], lie(random, one, box ? two : run)),
                part("two", second[0], second[1], lie(random, two, box ? one : run)),
                new Joint("one to two", kind, "one", "two", Optional.empty(), Map.of()),
                unit);
    }

    /** A part that lies over a stretch and comes from one side of it, or from both. */
    private static void length(
            double[][] planes, Axis axis, Random random, double from, double to, boolean ends, double less) {
        double more = 150 + random.nextInt(300);
        if (!ends) {
            span(planes, axis, from - more, to + 150 + random.nextInt(300));
        } else if (random.nextBoolean()) {
            span(planes, axis, from - more, to - less);
        } else {
            span(planes, axis, from + less, to + more);
        }
    }

    private static void span(double[][] planes, Axis axis, double from, double to) {
        planes[0][axis.ordinal()] = from;
        planes[1][axis.ordinal()] = to;
    }

    private static void place(double[] low, double[] high, Axis axis, double from, double... to) {
        low[axis.ordinal()] = from;
        if (to.length > 0) {
            high[axis.ordinal()] = to[0];
        }
    }

    private static Lie lie(Random random, Axis length, Axis thickness) {
        Axis width = length.third(thickness);
        return new Lie(
                length,
                thickness,
                Side.of(thickness, random.nextBoolean()),
                Side.of(width, random.nextBoolean()),
                Side.of(length, random.nextBoolean()));
    }

    static Part part(String path, double[] low, double[] high, Lie lie) {
        return part(path, new Box(mm(low[0]), mm(high[0]), mm(low[1]), mm(high[1]), mm(low[2]), mm(high[2])), lie);
    }

    static Part part(String path, Box box, Lie lie) {
        Material wood = new Material(
                "oak",
                Material.Kind.SOLID,
                "white oak",
                box.extent(lie.thickness()),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                true,
                Optional.empty());
        return new Part(
                path,
                wood,
                box.extent(lie.length()),
                box.extent(lie.width()),
                box.extent(lie.thickness()),
                box,
                lie,
                Optional.empty(),
                Optional.empty(),
                Set.of(),
                false);
    }

    Assembly assembly() {
        Piece piece = new Piece(
                "two parts",
                Optional.empty(),
                unit,
                mm(900),
                mm(900),
                mm(900),
                Map.of(),
                List.of(),
                Map.of(),
                Map.of(),
                "");
        return new Assembly(
                piece, List.of(entering, receiving), List.of(joint), List.of(), List.of(), Map.of(), List.of());
    }
}
