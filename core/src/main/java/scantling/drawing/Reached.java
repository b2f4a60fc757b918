package scantling.drawing;

import java.util.List;
import java.util.function.Function;
import scantling.feature.Feature;
import scantling.feature.Range;

/**
 * From where to where a template reaches in one direction, in millimetres of the part.
 *
 * @param fromReal whether it begins with an end or edge of the part
 * @param toReal whether it ends with one
 */
record Reached(double from, double to, boolean fromReal, boolean toReal) {
    /** An end or edge further off than this is told by a size, not drawn. */
    static final double NEAR_MM = 110;

    private static final double ROUND_MM = 9;
    /** Both sides of a part this close are shown. */
    private static final double CLOSE_MM = 40;

    /** To the nearer side of the part where one is near enough, to the other only if it is close as well. */
    static Reached of(double from, double to, double whole) {
        double beyond = whole - to;
        boolean fromReal = from <= NEAR_MM && (from <= beyond || from <= CLOSE_MM);
        boolean toReal = beyond <= NEAR_MM && (beyond < from || beyond <= CLOSE_MM);
        return new Reached(fromReal ? 0 : from - ROUND_MM, toReal ? whole : to + ROUND_MM, fromReal, toReal);
    }

    /** Whether it has an end or edge to be laid against. */
    boolean isHeld() {
        return fromReal || toReal;
    }

    /** Where the first of them begins, in mm. @param range which way */
    static double least(List<Feature> features, Function<Feature, Range> range) {
        return features.stream()
                .mapToDouble(f -> range.apply(f).from().value().toMillimetres())
                .min()
                .orElse(0);
    }

    /** Where the last of them ends, in mm. @param range which way */
    static double most(List<Feature> features, Function<Feature, Range> range) {
        return features.stream()
                .mapToDouble(f -> range.apply(f).to().value().toMillimetres())
                .max()
                .orElse(0);
    }
}
