package scantling.piece;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import scantling.measure.Length;
import scantling.measure.Unit;

/** A plain number, exact, in lowest terms with a denominator above zero. */
record Rational(BigInteger numerator, BigInteger denominator) {
    Rational {
        BigInteger common = numerator.gcd(denominator).max(BigInteger.ONE);
        BigInteger sign = BigInteger.valueOf(denominator.signum());
        numerator = numerator.divide(common).multiply(sign);
        denominator = denominator.divide(common).multiply(sign);
    }

    static Rational of(BigDecimal decimal) {
        BigInteger scale = BigInteger.TEN.pow(Math.max(0, decimal.scale()));
        return new Rational(decimal.multiply(new BigDecimal(scale)).toBigIntegerExact(), scale);
    }

    boolean isZero() {
        return numerator.signum() == 0;
    }

    Rational plus(Rational other) {
        return new Rational(
                numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
                denominator.multiply(other.denominator));
    }

    Rational negated() {
        return new Rational(numerator.negate(), denominator);
    }

    Rational times(Rational other) {
        return new Rational(numerator.multiply(other.numerator), denominator.multiply(other.denominator));
    }

    /** One over it. @throws ArithmeticException for zero */
    Rational inverse() {
        if (isZero()) {
            throw new ArithmeticException("Zero has no inverse.");
        }
        return new Rational(denominator, numerator);
    }

    /** So many of a unit, rounded half even to a tenth of a nanometre. @throws ArithmeticException beyond the range of a length */
    Length of(Unit unit) {
        BigDecimal tenths = new BigDecimal(
                numerator.multiply(BigInteger.valueOf(unit.length().tenthNanometres())));
        return new Length(tenths.divide(new BigDecimal(denominator), 0, RoundingMode.HALF_EVEN)
                .longValueExact());
    }
}
