package scantling.stock;

import java.math.BigInteger;
import java.util.List;
import scantling.measure.Length;

/** Board feet and surface measure. See docs/method/board-measure.md. */
public final class BoardMeasure {
    private static final Length FOOT = Length.inches(12);
    private static final double CUBIC_INCHES = 144;

    private BoardMeasure() {}

    /** What is needed of a board to measure it. */
    public record Face(Length width, Length length) {}

    /** True volume in board feet of 144 cubic inches, not rounded. */
    public static double boardFeet(Length thickness, Length width, Length length) {
        return thickness.toInches() * width.toInches() * length.toInches() / CUBIC_INCHES;
    }

    /** Board feet of a face in a rough class, not rounded; stock under one inch is paid as one inch. */
    public static double boardFeet(RoughClass thickness, Length width, Length length) {
        return boardFeet(thickness.paid(), width, length);
    }

    /**
     * Surface measure of one board in whole square feet by the hardwood rule: width with its fractions times length in
     * whole feet (the rest dropped), over twelve, to the nearest whole. Exactly a half goes up.
     */
    public static int surfaceMeasure(Length width, Length length) {
        return surfaceMeasure(width, length, true);
    }

    /** The same, saying which way exactly a half goes. */
    public static int surfaceMeasure(Length width, Length length, boolean halfUp) {
        BigInteger twelfths = twelfths(width, length);
        BigInteger[] whole = twelfths.divideAndRemainder(foot());
        int half = whole[1].shiftLeft(1).compareTo(foot());
        return whole[0].intValueExact() + (half > 0 || (half == 0 && halfUp) ? 1 : 0);
    }

    // Width times whole feet, so that dividing by the foot gives square feet.
    private static BigInteger twelfths(Length width, Length length) {
        long feet = length.tenthNanometres() / FOOT.tenthNanometres();
        return BigInteger.valueOf(width.tenthNanometres()).multiply(BigInteger.valueOf(feet));
    }

    private static BigInteger foot() {
        return BigInteger.valueOf(FOOT.tenthNanometres());
    }

    private static boolean isHalf(Face face) {
        return twelfths(face.width(), face.length()).shiftLeft(1).mod(foot()).signum() == 0
                && twelfths(face.width(), face.length()).mod(foot()).signum() != 0;
    }

    /** Surface measure of several boards of one thickness; exact halves go up and down by turns. */
    public static int surfaceMeasure(List<Face> faces) {
        int total = 0;
        boolean halfUp = true;
        for (Face face : faces) {
            total += surfaceMeasure(face.width(), face.length(), halfUp);
            halfUp ^= isHalf(face);
        }
        return total;
    }

    /** Board feet of a tally: the surface measures of boards of one thickness are added, multiplied once, rounded once. */
    public static long tally(RoughClass thickness, List<Face> faces) {
        return Math.round(surfaceMeasure(faces) * thickness.paid().toInches());
    }
}
