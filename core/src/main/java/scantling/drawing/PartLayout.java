package scantling.drawing;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import scantling.construct.Part;
import scantling.feature.Surface;
import scantling.feature.WorkGroup;
import scantling.measure.Dim;

/**
 * How a part is laid flat on paper: a broad one with its back side beside its face side, so that two or three stand on a
 * sheet; a narrow one, or one with many sizes, with its back side below.
 *
 * @param scale of the drawing
 * @param fold where its surfaces lie
 */
record PartLayout(Scale scale, Fold fold) {
    private static final double PAPER_LONG = 108;
    private static final double PAPER_HALF = 60;
    private static final double PAPER_WIDE = 30;
    private static final double PAPER_UPRIGHT = 60;
    /** What a drawing may take of the height of a sheet, so that half of it is left for the table. */
    private static final double PAPER_HIGH = 115;
    /** A drawing too high is made smaller step by step, but not without end. */
    private static final double STEP = 0.8;

    private static final double LEAST = 0.1;
    /** What a drawing may take of the narrower of the usual sheets, in millimetres. */
    private static final double PAPER_MM = 178;
    /** A part this broad for its length takes less paper with its sides beside each other. */
    private static final double BROAD = 0.25;

    private static final double BELOW = 40;
    private static final double BESIDE = 36;
    /** Room for the size of the width and for a figure beyond the back side. */
    private static final double MARGINS = 90;

    static PartLayout of(Part part, List<WorkGroup> work, Running running) {
        PartLayout below = laid(part, work, 1, PAPER_LONG);
        PartLayout flat = laid(part, work, 1, PAPER_HALF);
        if (below.fold.shows(Surface.BACK_SIDE) && below.fold.width() >= BROAD * below.fold.length()) {
            PartLayout beside = flat.beside(work, running);
            if (beside.isNarrow() && (beside.scale.equals(below.scale) || beside.tellsAll(work))) {
                return beside;
            }
        }
        return lowEnough(part, work, running);
    }

    /** A drawing leaves its table room on its sheet. */
    private static PartLayout lowEnough(Part part, List<WorkGroup> work, Running running) {
        PartLayout laid = laid(part, work, 1, PAPER_LONG).below(work, running);
        for (double share = STEP;
                share > LEAST && laid.high(work, running) > PAPER_HIGH * Scale.UNITS_PER_MM;
                share *= STEP) {
            laid = laid(part, work, share, PAPER_LONG).below(work, running);
        }
        return laid;
    }

    /** What it takes of the height of a sheet, in drawing units. */
    private double high(List<WorkGroup> work, Running running) {
        List<WorkGroup> lowest = fold.shows(Surface.BACK_SIDE) ? on(Surface.BACK_SIDE, work) : front(work);
        double foot = fold.shows(Surface.BACK_SIDE) ? fold.back().y() + fold.width() : fold.bottom();
        return BELOW - fold.top() + foot + running.room(places().alongs(lowest, fold.length()));
    }

    /** The work one sees from before it, that on its edges and ends included. */
    static List<WorkGroup> front(List<WorkGroup> work) {
        return work.stream()
                .filter(group -> group.sample().surface() != Surface.BACK_SIDE)
                .toList();
    }

    /** The work on one surface. */
    static List<WorkGroup> on(Surface surface, List<WorkGroup> work) {
        return work.stream()
                .filter(group -> group.sample().surface() == surface)
                .toList();
    }

    WorkPlaces places() {
        return new WorkPlaces(scale);
    }

    private static PartLayout laid(Part part, List<WorkGroup> work, double share, double paperLong) {
        Marked marked = new Marked(part);
        Scale scale = Scale.fitting(Math.max(mm(marked.length()), 1), share * paperLong)
                .and(Scale.fitting(
                        Math.max(mm(marked.width()), 1),
                        share
                                * (marked.width().compareTo(marked.length()) > 0
                                                || work.stream().anyMatch(WorkPlaces::isFine)
                                        ? PAPER_UPRIGHT
                                        : PAPER_WIDE)));
        Set<Surface> shown = EnumSet.of(Surface.FACE_SIDE);
        work.forEach(group -> shown.add(group.sample().surface()));
        if (Profile.isMoreThanOutline(part)) {
            shown.add(Surface.FACE_EDGE);
        }
        WorkPlaces places = new WorkPlaces(scale);
        Fold fold = new Fold(
                Math.max(places.units(marked.length()), 1),
                Math.max(places.units(marked.width()), 1),
                places.units(marked.thickness()),
                part.lie().hasNearEndRight(),
                shown,
                new Spot(0, 0));
        return new PartLayout(scale, fold);
    }

    private PartLayout below(List<WorkGroup> work, Running running) {
        double room = running.room(places().alongs(front(work), fold.length()));
        return new PartLayout(scale, fold.withBack(new Spot(0, fold.bottom() + room + BELOW)));
    }

    private PartLayout beside(List<WorkGroup> work, Running running) {
        double figures = Math.max(
                running.side(places().acrosses(front(work), fold.width())),
                Math.max(
                        running.side(places().throughs(on(Surface.FACE_EDGE, work), fold.thick())),
                        running.side(places().throughs(on(Surface.BACK_EDGE, work), fold.thick()))));
        return new PartLayout(scale, fold.withBack(new Spot(fold.right() + figures + BESIDE, -fold.width())));
    }

    /** Whether the sheet is wide enough. */
    private boolean isNarrow() {
        return MARGINS - fold.left() + fold.back().x() + fold.length() <= PAPER_MM * Scale.UNITS_PER_MM;
    }

    /** Whether every place can be told. */
    private boolean tellsAll(List<WorkGroup> work) {
        return places().tellsAll(front(work), fold.length())
                && places().tellsAll(on(Surface.BACK_SIDE, work), fold.length());
    }

    private static double mm(Dim dim) {
        return dim.value().toMillimetres();
    }
}
