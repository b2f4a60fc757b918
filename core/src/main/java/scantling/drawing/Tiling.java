package scantling.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Cuts a drawing that is larger than a sheet into tiles with an overlap, all of one size. Two tiles are joined by laying
 * their crosses on each other. A tile is a drawing itself: the marks that reach into its window, cut off at its edges.
 */
final class Tiling {
    private static final double CROSS = 10;
    private static final double ROUND = 16;

    private final Drawing whole;
    private final double overlap;

    private Tiling(Drawing whole, double overlapMm) {
        this.whole = whole;
        this.overlap = overlapMm * Scale.UNITS_PER_MM;
    }

    /**
     * A stretch of one direction that a tile shows.
     *
     * @param from where it begins
     * @param to where it ends
     * @param before whether another tile is joined to it where it begins
     * @param after whether another tile is joined to it where it ends
     */
    private record Stretch(double from, double to, boolean before, boolean after) {
        Stretch joined() {
            return new Stretch(from, to, before, true);
        }
    }

    /** Row by row from the left upper corner; the drawing itself when one sheet holds it. */
    static List<Drawing> of(Drawing whole, Sheet sheet) {
        if (whole.paperWidth() <= sheet.wideMm() && whole.paperHeight() <= sheet.highMm()) {
            return List.of(whole);
        }
        Tiling tiling = new Tiling(whole, sheet.overlapMm());
        List<Stretch> across = tiling.even(whole.left(), whole.width(), sheet.wideMm() * Scale.UNITS_PER_MM);
        List<Stretch> down = tiling.even(whole.top(), whole.height(), sheet.highMm() * Scale.UNITS_PER_MM);
        return tiling.tiles(across, down);
    }

    /**
     * Only tiles on which something stands, as few as there can be; where nothing stands for longer than a tile, a gap is
     * left between two.
     *
     * @param spots where something stands along the drawing, from its left
     */
    static List<Drawing> along(Drawing whole, List<Double> spots, Sheet sheet) {
        if (whole.paperWidth() <= sheet.wideMm()) {
            return List.of(whole);
        }
        Tiling tiling = new Tiling(whole, sheet.overlapMm());
        Stretch all = new Stretch(whole.top(), whole.top() + whole.height(), false, false);
        List<Stretch> needed = tiling.needed(spots, sheet.wideMm() * Scale.UNITS_PER_MM);
        return tiling.tiles(tiling.carrying(needed, all), List.of(all));
    }

    /** Without those whose figures all stand on a neighbour; what is then not joined any more is told so. */
    private List<Stretch> carrying(List<Stretch> needed, Stretch high) {
        List<Stretch> kept =
                needed.stream().filter(wide -> carries(own(wide, high))).toList();
        List<Stretch> joined = new ArrayList<>();
        for (int i = 0; i < kept.size(); i++) {
            Stretch each = kept.get(i);
            boolean before = i > 0 && kept.get(i - 1).to() > each.from();
            boolean after = i < kept.size() - 1 && each.to() > kept.get(i + 1).from();
            joined.add(new Stretch(each.from(), each.to(), before, after));
        }
        return joined;
    }

    private boolean carries(Hatch.Field own) {
        return whole.marks().stream()
                .filter(mark -> mark instanceof Mark.Circle || mark instanceof Mark.Figure)
                .anyMatch(mark -> own.holds(middle(Reach.of(mark))));
    }

    /** As few as hold it, all of one length. */
    private List<Stretch> even(double from, double whole, double most) {
        int count = whole <= most ? 1 : (int) Math.ceil((whole - overlap) / (most - overlap));
        double each = (whole + (count - 1) * overlap) / count;
        List<Stretch> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double start = from + i * (each - overlap);
            all.add(new Stretch(start, start + each, i > 0, i < count - 1));
        }
        return all;
    }

    /** The next tile is joined to the last where it then holds the next spot, else it begins a little before that. */
    private List<Stretch> needed(List<Double> spots, double most) {
        double end = whole.left() + whole.width();
        List<Stretch> all = new ArrayList<>();
        for (double spot : spots.stream().sorted(Comparator.naturalOrder()).toList()) {
            if (all.isEmpty()) {
                all.add(stretch(spot, end, most));
                continue;
            }
            Stretch last = all.get(all.size() - 1);
            if (last.to() >= end || spot + ROUND <= last.to()) {
                continue;
            }
            double next = last.to() - overlap;
            boolean joins = spot + ROUND <= next + most;
            if (joins) {
                all.set(all.size() - 1, last.joined());
            }
            all.add(joins ? new Stretch(next, Math.min(next + most, end), true, false) : stretch(spot, end, most));
        }
        return all;
    }

    /** One that begins a little before a spot, joined to nothing. */
    private Stretch stretch(double spot, double end, double most) {
        double from = Math.max(whole.left(), Math.min(spot - 2 * ROUND, end - most));
        return new Stretch(from, Math.min(from + most, end), false, false);
    }

    /** What is in the middle of a large drawing may be nothing: for that no paper is used. */
    private List<Drawing> tiles(List<Stretch> across, List<Stretch> down) {
        List<Drawing> tiles = new ArrayList<>();
        for (Stretch high : down) {
            for (Stretch wide : across) {
                List<Mark> shown = shown(wide, high);
                if (!shown.isEmpty()) {
                    tiles.add(tile(wide, high, shown));
                }
            }
        }
        return tiles.size() == 1
                ? List.of(tiles.get(0).called(whole.title()))
                : IntStream.range(0, tiles.size())
                        .mapToObj(i ->
                                tiles.get(i).called("%s, tile %d of %d".formatted(whole.title(), i + 1, tiles.size())))
                        .toList();
    }

    private List<Mark> shown(Stretch wide, Stretch high) {
        Hatch.Field window = new Hatch.Field(wide.from(), high.from(), wide.to(), high.to());
        Hatch.Field own = own(wide, high);
        return whole.marks().stream().filter(mark -> belongs(mark, window, own)).toList();
    }

    private Drawing tile(Stretch wide, Stretch high, List<Mark> shown) {
        List<Mark> marks = new ArrayList<>(shown);
        marks.addAll(joins(wide, high));
        return new Drawing(
                whole.title(),
                whole.scale(),
                wide.from(),
                high.from(),
                wide.to() - wide.from(),
                high.to() - high.from(),
                marks);
    }

    /** What a tile shows that no other does: half of each overlap is its neighbour's. */
    private Hatch.Field own(Stretch wide, Stretch high) {
        double half = overlap / 2;
        return new Hatch.Field(
                wide.from() + (wide.before() ? half : 0),
                high.from() + (high.before() ? half : 0),
                wide.to() - (wide.after() ? half : 0),
                high.to() - (high.after() ? half : 0));
    }

    private static Spot middle(Hatch.Field reach) {
        return new Spot((reach.left() + reach.right()) / 2, (reach.top() + reach.bottom()) / 2);
    }

    /** A line wherever it reaches in; words and figures on the one tile that holds their middle, and so all of them. */
    private static boolean belongs(Mark mark, Hatch.Field window, Hatch.Field own) {
        Hatch.Field reach = Reach.of(mark);
        if (mark instanceof Mark.Line || mark instanceof Mark.Circle) {
            return reach.meets(window);
        }
        return own.holds(middle(reach));
    }

    /** A cross in the middle of each overlap's two ends. */
    private List<Mark> joins(Stretch wide, Stretch high) {
        List<Mark> marks = new ArrayList<>();
        double inset = CROSS + 2;
        for (double y : List.of(high.from() + inset, high.to() - inset)) {
            middles(wide).forEach(x -> cross(marks, x, y));
        }
        for (double x : List.of(wide.from() + inset, wide.to() - inset)) {
            middles(high).forEach(y -> cross(marks, x, y));
        }
        return marks;
    }

    private List<Double> middles(Stretch stretch) {
        List<Double> middles = new ArrayList<>();
        if (stretch.before()) {
            middles.add(stretch.from() + overlap / 2);
        }
        if (stretch.after()) {
            middles.add(stretch.to() - overlap / 2);
        }
        return middles;
    }

    private static void cross(List<Mark> marks, double x, double y) {
        Mark.Pen pen = Mark.Pen.solid(Sketch.HAIR);
        marks.add(new Mark.Line(List.of(new Spot(x - CROSS, y), new Spot(x + CROSS, y)), false, false, pen));
        marks.add(new Mark.Line(List.of(new Spot(x, y - CROSS), new Spot(x, y + CROSS)), false, false, pen));
    }
}
