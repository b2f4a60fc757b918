package scantling.drawing;

/** A place on a drawing, in quarter millimetres of paper: to the right, and down. */
record Spot(double x, double y) {
    Spot shifted(double right, double down) {
        return new Spot(x + right, y + down);
    }
}
