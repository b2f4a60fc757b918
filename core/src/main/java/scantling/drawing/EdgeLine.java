package scantling.drawing;

import java.util.List;

/** Lines that a template is laid on by, each with its name where nothing else stands. */
final class EdgeLine {
    private static final double SMALL = 10.5;
    /** Where along an edge its name stands, if it can. */
    private static final List<Double> ALONG = List.of(0.5, 0.3, 0.7, 0.15, 0.8);

    private final Sketch sketch;
    private final Taken taken;

    EdgeLine(Sketch sketch, Taken taken) {
        this.sketch = sketch;
        this.taken = taken;
    }

    /** An edge of the part. @param right whether sizes stand to the right of it, so that its name stands to the left */
    void edge(Spot from, Spot to, String name, boolean right) {
        sketch.line(from, to, Sketch.OUTLINE);
        boolean level = from.y() == to.y();
        Mark.Anchor anchor = right ? Mark.Anchor.END : Mark.Anchor.START;
        List<Spot> spots = ALONG.stream()
                .map(part -> new Spot(
                        from.x() + (to.x() - from.x()) * part + (level ? 0 : right ? -4 : 4),
                        from.y() + (to.y() - from.y()) * part - (level ? 4 : 0)))
                .toList();
        Spot spot = spots.stream()
                .filter(each -> taken.isClear(Taken.words(each, name, SMALL, anchor)))
                .findFirst()
                .orElse(spots.get(0));
        words(spot, name, anchor);
    }

    /** The middle of the part. @param from its lower end */
    void middle(Spot from, Spot to) {
        sketch.dashed(from, to, Sketch.HAIR);
        taken.take(new Hatch.Field(from.x() - 1, to.y(), from.x() + 1, from.y()));
        words(to.shifted(4, 14), "middle", Mark.Anchor.START);
    }

    private void words(Spot spot, String words, Mark.Anchor anchor) {
        sketch.words(spot, words, SMALL, anchor);
        taken.take(Taken.words(spot, words, SMALL, anchor));
    }
}
