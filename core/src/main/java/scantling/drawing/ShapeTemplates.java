package scantling.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import scantling.construct.Part;
import scantling.measure.LengthFormat;
import scantling.space.Outline.Corner;

/**
 * Templates at their true size for what is curved, tapered or notched in the outline of a part. What is alike, as the four
 * round corners of a panel, is drawn once.
 */
public final class ShapeTemplates {
    private static final Scale TRUE = new Scale(10);
    private static final double ROUND_MM = 15;
    private static final double LEAST_MM = 50;
    private static final double STRAIGHT = 0.01;

    private final Part part;
    private final List<Spot> corners;
    private final double longMm;
    private final double wideMm;
    private final double around;

    private ShapeTemplates(Part part) {
        Marked marked = new Marked(part);
        this.part = part;
        this.longMm = marked.length().value().toMillimetres();
        this.wideMm = marked.width().value().toMillimetres();
        this.corners = marked.corners().stream().map(this::spot).toList();
        this.around = Math.signum(area(corners));
    }

    /** A stretch of an outline that does not run along or across, with what lies around it. */
    private record Stretch(Hatch.Field window, String shape) {}

    /** Draws them; none for a part that is a plain rectangle. @param title what it is of */
    public static List<Drawing> of(Part part, String title, LengthFormat format) {
        return part.outline().isEmpty() ? List.of() : new ShapeTemplates(part).drawings(title, format);
    }

    private List<Drawing> drawings(String title, LengthFormat format) {
        Map<String, List<Stretch>> alike = new LinkedHashMap<>();
        stretches()
                .forEach(stretch -> alike.computeIfAbsent(stretch.shape(), key -> new ArrayList<>())
                        .add(stretch));
        return alike.values().stream()
                .map(same ->
                        drawing(same.get(0), same.size() == 1 ? title : title + ", " + same.size() + " alike", format))
                .toList();
    }

    private Drawing drawing(Stretch stretch, String title, LengthFormat format) {
        Sketch sketch = new Sketch(format);
        sketch.shape(corners, Sketch.OUTLINE);
        Hatch.Field window = stretch.window();
        sketch.words(
                new Spot((window.left() + window.right()) / 2, (window.top() + window.bottom()) / 2),
                "face side",
                10.5,
                Mark.Anchor.MIDDLE);
        Drawing whole = sketch.finish(title, TRUE);
        return new Drawing(
                title,
                TRUE,
                window.left(),
                window.top(),
                window.right() - window.left(),
                window.bottom() - window.top(),
                whole.marks());
    }

    /** Runs of edges that are neither level nor upright, or belong to a notch, in order around the part. */
    private List<Stretch> stretches() {
        int count = corners.size();
        int start = 0;
        while (start < count && isShaped(start)) {
            start++;
        }
        List<Stretch> all = new ArrayList<>();
        List<Spot> run = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int edge = (start + i) % count;
            if (isShaped(edge)) {
                run.add(corners.get(edge));
                run.add(corners.get((edge + 1) % count));
            } else {
                end(run, all);
            }
        }
        end(run, all);
        return all;
    }

    private boolean isShaped(int edge) {
        return isOblique(edge) || isReentrant(edge) || isReentrant((edge + 1) % corners.size());
    }

    /** Whether the outline turns inward at a corner, as in a notch. */
    private boolean isReentrant(int corner) {
        int count = corners.size();
        Spot before = corners.get((corner + count - 1) % count);
        Spot at = corners.get(corner);
        Spot after = corners.get((corner + 1) % count);
        double turn = (at.x() - before.x()) * (after.y() - at.y()) - (at.y() - before.y()) * (after.x() - at.x());
        return turn * around < -STRAIGHT;
    }

    /** Twice the area, its sign the way round that the corners are listed. */
    private static double area(List<Spot> corners) {
        double area = 0;
        for (int i = 0; i < corners.size(); i++) {
            Spot at = corners.get(i);
            Spot next = corners.get((i + 1) % corners.size());
            area += at.x() * next.y() - next.x() * at.y();
        }
        return area;
    }

    private boolean isOblique(int edge) {
        Spot from = corners.get(edge);
        Spot to = corners.get((edge + 1) % corners.size());
        return Math.abs(from.x() - to.x()) > STRAIGHT && Math.abs(from.y() - to.y()) > STRAIGHT;
    }

    private void end(List<Spot> run, List<Stretch> all) {
        if (run.isEmpty()) {
            return;
        }
        double left = run.stream().mapToDouble(Spot::x).min().orElse(0);
        double right = run.stream().mapToDouble(Spot::x).max().orElse(0);
        double top = run.stream().mapToDouble(Spot::y).min().orElse(0);
        double bottom = run.stream().mapToDouble(Spot::y).max().orElse(0);
        String shape = "%.1f %.1f %d".formatted(right - left, bottom - top, run.size());
        all.add(new Stretch(around(new Hatch.Field(left, top, right, bottom)), shape));
        run.clear();
    }

    /** With some of the part around it, but not beyond its edges by more than a little. */
    private Hatch.Field around(Hatch.Field field) {
        double more = ROUND_MM * TRUE.unitsPerMm();
        double wide = Math.max(more, (LEAST_MM * TRUE.unitsPerMm() - (field.right() - field.left())) / 2);
        double high = Math.max(more, (LEAST_MM * TRUE.unitsPerMm() - (field.bottom() - field.top())) / 2);
        double edge = 4;
        return new Hatch.Field(
                Math.max(field.left() - wide, -edge),
                Math.max(field.top() - high, -wideMm * TRUE.unitsPerMm() - edge),
                Math.min(field.right() + wide, longMm * TRUE.unitsPerMm() + edge),
                Math.min(field.bottom() + high, edge));
    }

    private Spot spot(Corner corner) {
        double along = corner.along().value().toMillimetres();
        double x = part.lie().hasNearEndRight() ? longMm - along : along;
        return new Spot(x * TRUE.unitsPerMm(), -corner.across().value().toMillimetres() * TRUE.unitsPerMm());
    }
}
