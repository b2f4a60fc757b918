package scantling.drawing;

/** A place on a drawing, in quarter millimetres of paper. @param x to the right @param y down */
public record Spot(double x, double y) {
    /** As far from it. */
    Spot shifted(double right, double down) {
        return new Spot(x + right, y + down);
    }
}
