package scantling.checks.frame;

import java.util.List;
import java.util.Optional;

/**
 * How a piece stands up to the loads of furniture tests.
 *
 * @param lines its parts as lines
 * @param cases what each load does
 * @param square how far it is pushed out of square with its back and without
 * @param loose why it is no frame at all
 * @param unknown paths of parts of which no stiffness is known; then nothing else is
 */
public record Framing(
        List<Line> lines, List<Case> cases, Optional<Square> square, Optional<Loose> loose, List<String> unknown) {
    /** Takes its own copies. */
    public Framing {
        lines = List.copyOf(lines);
        cases = List.copyOf(cases);
        unknown = List.copyOf(unknown);
    }

    /** A stretch of a part. @param part its path @param from where it begins @param to where it ends */
    public record Line(String part, Vector from, Vector to) {}

    /**
     * What one load does.
     *
     * @param load which
     * @param most how far the place that moves most moves, mm
     * @param where path of the part it is on
     * @param moved how far both ends of each line move, in the order of the lines
     * @param worst the joint nearest to what it bears
     */
    public record Case(Load load, double most, String where, List<Moved> moved, Optional<Loaded> worst) {
        /** Takes its own copy. */
        public Case {
            moved = List.copyOf(moved);
        }
    }

    /** How far a line's ends move. */
    public record Moved(Vector from, Vector to) {}

    /**
     * A joint under a load.
     *
     * @param joint its path
     * @param moment N m that it passes on
     * @param bears N m that such joints held
     * @param source who tested them
     */
    public record Loaded(String joint, double moment, double bears, String source) {
        /** Share of what it bears. */
        public double ratio() {
            return moment / bears;
        }
    }

    /**
     * How far the top goes sideways.
     *
     * @param load under which
     * @param with mm with the back
     * @param without mm without it; endless when nothing else holds it
     * @param back path of a sheet that holds it square
     * @param height mm of the frame
     */
    public record Square(Load load, double with, double without, String back, double height) {}

    /** A mechanism. @param part path of the part that moves freely @param direction in words */
    public record Loose(String part, String direction) {}
}
