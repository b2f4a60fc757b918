package scantling.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A length as a whole number of tenths of a nanometre, so that 0.01 mm and 1/128 in are both whole. May be negative: an
 * offset is a length too. Arithmetic is exact, or says in its name how it rounds.
 *
 * @param tenthNanometres the length in units of 1e-10 m
 */
public record Length(long tenthNanometres) implements Comparable<Length> {
    private static final long PER_MM = 10_000_000L;
    private static final int PLACES = 7;
    private static final long PER_INCH = 254_000_000L;
    private static final BigDecimal PER_MM_EXACT = BigDecimal.valueOf(PER_MM);

    /** No length at all. */
    public static final Length ZERO = new Length(0);

    /** A whole number of millimetres. */
    public static Length mm(long millimetres) {
        return new Length(Math.multiplyExact(millimetres, PER_MM));
    }

    /** A decimal number of millimetres, rounded half even to a tenth of a nanometre. */
    public static Length mm(String decimal) {
        return ofMillimetres(new BigDecimal(decimal));
    }

    /** A decimal number of millimetres, rounded half even to a tenth of a nanometre. */
    public static Length ofMillimetres(BigDecimal millimetres) {
        return rounded(millimetres.multiply(PER_MM_EXACT));
    }

    /**
     * A length out of a numerical method (a solver, a hypotenuse), rounded to a tenth of a nanometre.
     *
     * @throws ArithmeticException if the number is not finite
     */
    public static Length ofMillimetres(double millimetres) {
        if (!Double.isFinite(millimetres)) {
            throw new ArithmeticException("A length must be a finite number, not (%s).".formatted(millimetres));
        }
        return rounded(BigDecimal.valueOf(millimetres).multiply(PER_MM_EXACT));
    }

    /** A whole number of inches. */
    public static Length inches(long inches) {
        return new Length(Math.multiplyExact(inches, PER_INCH));
    }

    /** A fraction of an inch, exact for every denominator that divides 254,000,000 (halves to 128ths, tenths). */
    public static Length inches(long numerator, long denominator) {
        return inches(numerator).over(denominator);
    }

    private static Length rounded(BigDecimal tenths) {
        return new Length(tenths.setScale(0, RoundingMode.HALF_EVEN).longValueExact());
    }

    /** Adds exactly. @throws ArithmeticException if the sum leaves the range of long */
    public Length plus(Length other) {
        return new Length(Math.addExact(tenthNanometres, other.tenthNanometres));
    }

    /** Subtracts exactly. @throws ArithmeticException if the difference leaves the range of long */
    public Length minus(Length other) {
        return new Length(Math.subtractExact(tenthNanometres, other.tenthNanometres));
    }

    /** Multiplies exactly. @throws ArithmeticException if the product leaves the range of long */
    public Length times(long factor) {
        return new Length(Math.multiplyExact(tenthNanometres, factor));
    }

    /** Multiplies by a fraction, rounding half even to a tenth of a nanometre. */
    public Length times(long numerator, long denominator) {
        BigDecimal product = BigDecimal.valueOf(tenthNanometres).multiply(BigDecimal.valueOf(numerator));
        return new Length(product.divide(BigDecimal.valueOf(denominator), 0, RoundingMode.HALF_EVEN)
                .longValueExact());
    }

    /** Divides, rounding half even to a tenth of a nanometre. */
    public Length over(long divisor) {
        return times(1, divisor);
    }

    /** The same length with its sign turned. */
    public Length negated() {
        return new Length(Math.negateExact(tenthNanometres));
    }

    /** The length without its sign. */
    public Length abs() {
        return tenthNanometres < 0 ? negated() : this;
    }

    /** The larger of the two. */
    public Length max(Length other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /** The smaller of the two. */
    public Length min(Length other) {
        return compareTo(other) <= 0 ? this : other;
    }

    /** Rounded to the nearest whole multiple of a step, halves away from zero. @throws ArithmeticException for a step that is not positive */
    public Length roundedTo(Length step) {
        return stepped(step, RoundingMode.HALF_UP);
    }

    /** Rounded down (toward minus infinity) to a whole multiple of a step. */
    public Length roundedDownTo(Length step) {
        return stepped(step, RoundingMode.FLOOR);
    }

    /** Rounded up (toward plus infinity) to a whole multiple of a step. */
    public Length roundedUpTo(Length step) {
        return stepped(step, RoundingMode.CEILING);
    }

    private Length stepped(Length step, RoundingMode mode) {
        if (!step.isPositive()) {
            throw new ArithmeticException("A rounding step must be greater than zero, not (%s).".formatted(step));
        }
        BigDecimal steps =
                BigDecimal.valueOf(tenthNanometres).divide(BigDecimal.valueOf(step.tenthNanometres), 0, mode);
        return step.times(steps.longValueExact());
    }

    /** Greater than zero. */
    public boolean isPositive() {
        return tenthNanometres > 0;
    }

    /** Exactly zero. */
    public boolean isZero() {
        return tenthNanometres == 0;
    }

    /** Less than zero. */
    public boolean isNegative() {
        return tenthNanometres < 0;
    }

    /** For numerical methods and drawing only: the nearest double. */
    public double toMillimetres() {
        return tenthNanometres / (double) PER_MM;
    }

    /** For numerical methods only: the nearest double. */
    public double toInches() {
        return tenthNanometres / (double) PER_INCH;
    }

    /** For numerical methods only: the nearest double. */
    public double toMetres() {
        return tenthNanometres / 1e10;
    }

    /** The exact number of millimetres, without trailing zeros or an exponent. */
    public BigDecimal millimetres() {
        BigDecimal exact = BigDecimal.valueOf(tenthNanometres, PLACES).stripTrailingZeros();
        return exact.scale() < 0 ? exact.setScale(0) : exact;
    }

    @Override
    public int compareTo(Length other) {
        return Long.compare(tenthNanometres, other.tenthNanometres);
    }

    /** Canonical and exact: millimetres with as many decimals as needed, and the unit. Read back by {@link LengthReader}. */
    @Override
    public String toString() {
        long whole = tenthNanometres / PER_MM;
        return tenthNanometres % PER_MM == 0 ? whole + " mm" : millimetres().toPlainString() + " mm";
    }
}
