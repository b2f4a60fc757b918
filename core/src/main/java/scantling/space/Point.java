package scantling.space;

/** A point or a direction, in millimetres: only inside numerical methods. */
record Point(double across, double deep, double up) {
    double of(Axis axis) {
        return switch (axis) {
            case ACROSS -> across;
            case DEEP -> deep;
            case UP -> up;
        };
    }

    Point with(Axis axis, double value) {
        return new Point(
                axis == Axis.ACROSS ? value : across, axis == Axis.DEEP ? value : deep, axis == Axis.UP ? value : up);
    }

    Point plus(Point other) {
        return new Point(across + other.across, deep + other.deep, up + other.up);
    }

    Point minus(Point other) {
        return new Point(across - other.across, deep - other.deep, up - other.up);
    }

    Point times(double factor) {
        return new Point(across * factor, deep * factor, up * factor);
    }

    double dot(Point other) {
        return across * other.across + deep * other.deep + up * other.up;
    }

    Point cross(Point other) {
        return new Point(
                deep * other.up - up * other.deep,
                up * other.across - across * other.up,
                across * other.deep - deep * other.across);
    }

    double length() {
        return Math.sqrt(dot(this));
    }
}
