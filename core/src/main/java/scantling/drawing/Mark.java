package scantling.drawing;

import java.util.List;
import java.util.Optional;

/**
 * One mark on a drawing. A drawing is the list of its marks, painted in order; what comes later hides what lies under it.
 * Every output is written from the same marks.
 */
public sealed interface Mark {
    /**
     * How a line is drawn.
     *
     * @param weight in drawing units
     * @param dash lengths of dash and gap in drawing units; empty for a line without gaps
     */
    record Pen(double weight, List<Double> dash) {
        /** Takes its own copy. */
        public Pen {
            dash = List.copyOf(dash);
        }

        static Pen solid(double weight) {
            return new Pen(weight, List.of());
        }

        Pen dashed(double dash, double gap) {
            return new Pen(weight, List.of(dash, gap));
        }
    }

    /** Where words stand about their spot. */
    enum Anchor {
        /** They start there. */
        START("start"),
        /** Their middle is there. */
        MIDDLE("middle"),
        /** They end there. */
        END("end");

        private final String word;

        Anchor(String word) {
            this.word = word;
        }

        /** As SVG has it. */
        public String word() {
            return word;
        }
    }

    /**
     * A line from spot to spot.
     *
     * @param closed whether it returns to where it began
     * @param hides whether what it closes in is painted as paper, so that it hides what lies under it
     */
    record Line(List<Spot> spots, boolean closed, boolean hides, Pen pen) implements Mark {
        /** Takes its own copy. */
        public Line {
            spots = List.copyOf(spots);
        }
    }

    /** A circle that hides what lies under it. */
    record Circle(Spot centre, double radius, Pen pen) implements Mark {}

    /** Words on one line. @param spot on their foot line @param strong whether they are a figure */
    record Words(Spot spot, String words, double size, Anchor anchor, boolean strong) implements Mark {}

    /**
     * A number with the line under it that says where it comes from.
     *
     * @param spot about which it stands, turned a quarter to the left when it is turned
     * @param path the name of the number, when it has one
     * @param words the figure
     * @param rest what is left over beyond its fraction, small behind it
     * @param under the line under it or around it
     */
    record Figure(
            Spot spot,
            boolean turned,
            Origin origin,
            Optional<String> path,
            Words words,
            Optional<Words> rest,
            Line under)
            implements Mark {}
}
