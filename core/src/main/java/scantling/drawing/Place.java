package scantling.drawing;

import scantling.space.Axis;

/** A place in the piece, in millimetres from its left front corner on the floor. */
record Place(double across, double deep, double up) {
    double on(Axis axis) {
        return switch (axis) {
            case ACROSS -> across;
            case DEEP -> deep;
            case UP -> up;
        };
    }

    Place with(Axis axis, double value) {
        return new Place(
                axis == Axis.ACROSS ? value : across, axis == Axis.DEEP ? value : deep, axis == Axis.UP ? value : up);
    }

    Place plus(Place other, double times) {
        return new Place(across + times * other.across, deep + times * other.deep, up + times * other.up);
    }

    /** Whether it is the same place for all a drawing can show. */
    boolean isAt(Place other) {
        return Math.abs(across - other.across) < 0.01
                && Math.abs(deep - other.deep) < 0.01
                && Math.abs(up - other.up) < 0.01;
    }

    Place cross(Place other) {
        return new Place(
                deep * other.up - up * other.deep,
                up * other.across - across * other.up,
                across * other.deep - deep * other.across);
    }

    double dot(Place other) {
        return across * other.across + deep * other.deep + up * other.up;
    }
}
