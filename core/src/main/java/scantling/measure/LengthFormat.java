package scantling.measure;

/**
 * Writes lengths for people: millimetres to a tenth, or inches and a binary fraction with what is left over shown beside
 * it, {@code 17 5/8 -0.1 mm}. What it writes with all its decimals, {@link LengthReader} reads back to the same length.
 *
 * @param inches inch fractions rather than millimetres
 * @param denominator the finest fraction of an inch, a power of two from 1 to 128
 * @param decimals decimals of a millimetre, for sizes or for the remainder
 */
public record LengthFormat(boolean inches, int denominator, int decimals) {
    /** Millimetres to a tenth: the workshop's usual figure. */
    public static final LengthFormat MM = new LengthFormat(false, 1, 1);
    /** Inches to the nearest 32nd with the remainder in tenths of a millimetre. */
    public static final LengthFormat INCH = new LengthFormat(true, 32, 1);

    private static final int MOST_DECIMALS = 7;
    private static final long TEN = 10;
    private static final int ESTIMATE = 64;

    /** Checks the fraction and the decimals. */
    public LengthFormat {
        if (denominator < 1 || denominator > 128 || Integer.bitCount(denominator) != 1) {
            throw new IllegalArgumentException(
                    "The finest fraction (1/%d) must be a half, quarter ... 128th.".formatted(denominator));
        }
        if (decimals < 0 || decimals > MOST_DECIMALS) {
            throw new IllegalArgumentException(
                    "The decimals (%d) must be from 0 to %d.".formatted(decimals, MOST_DECIMALS));
        }
    }

    /** Inches to a chosen fraction, the remainder in tenths of a millimetre. */
    public static LengthFormat inches(int denominator) {
        return new LengthFormat(true, denominator, 1);
    }

    /** The format that goes with a unit that a piece is written in. */
    public static LengthFormat of(Unit unit) {
        return unit == Unit.INCH || unit == Unit.FOOT ? INCH : MM;
    }

    /**
     * For what is only an estimate, as a sag or the way wood moves: in 64ths of an inch at least, so that one rounded to
     * them has nothing left over.
     */
    public LengthFormat ofEstimates() {
        return inches && denominator < ESTIMATE ? inches(ESTIMATE) : this;
    }

    /** The length without a unit behind it, but for a remainder, which always says its own. */
    public String format(Length length) {
        return inches ? fraction(length) : millimetres(length);
    }

    /** The length with its unit: {@code 44.5 mm}, {@code 17 5/8 in}, {@code 17 5/8 in -0.1 mm}. */
    public String formatWithUnit(Length length) {
        if (!inches) {
            return millimetres(length) + " mm";
        }
        Length near = nearest(length);
        return whole(near) + " in" + remainder(length.minus(near));
    }

    /**
     * A length as it is set in type.
     *
     * @param figure what stands large
     * @param rest what is left over, small behind it, in millimetres with its sign; empty when there is nothing
     */
    public record Typeset(String figure, String rest) {}

    /** The length in the two sizes of type it is set in. */
    public Typeset typeset(Length length) {
        if (!inches) {
            return new Typeset(millimetres(length), "");
        }
        Length near = nearest(length);
        return new Typeset(
                whole(near), remainder(length.minus(near)).replace(" mm", "").strip());
    }

    private String millimetres(Length length) {
        long parts = decimalParts(length);
        return (parts < 0 ? "-" : "") + plain(Math.abs(parts));
    }

    /** How many of the last decimal it shows, half away from zero. */
    private long decimalParts(Length length) {
        long unit = power(MOST_DECIMALS - decimals);
        long whole = length.tenthNanometres() / unit;
        long rest = Math.abs(length.tenthNanometres() % unit);
        return 2 * rest < unit || unit == 1 ? whole : whole + (length.isNegative() ? -1 : 1);
    }

    private static long power(int exponent) {
        long power = 1;
        for (int i = 0; i < exponent; i++) {
            power *= TEN;
        }
        return power;
    }

    private String plain(long parts) {
        long unit = power(decimals);
        if (decimals == 0) {
            return Long.toString(parts);
        }
        // The unit in front keeps the zeros that lead.
        return parts / unit + "." + Long.toString(unit + parts % unit).substring(1);
    }

    private String fraction(Length length) {
        Length near = nearest(length);
        return whole(near) + remainder(length.minus(near));
    }

    private Length nearest(Length length) {
        return length.roundedTo(Length.inches(1, denominator));
    }

    private String remainder(Length rest) {
        long left = decimalParts(rest);
        return left == 0 ? "" : " " + (left > 0 ? "+" : "-") + plain(Math.abs(left)) + " mm";
    }

    private String whole(Length near) {
        long parts =
                near.abs().tenthNanometres() / Length.inches(1, denominator).tenthNanometres();
        long whole = parts / denominator;
        long part = parts % denominator;
        String sign = near.isNegative() ? "-" : "";
        if (part == 0) {
            return sign + whole;
        }
        long common = Long.lowestOneBit(part | denominator);
        String fraction = part / common + "/" + denominator / common;
        return sign + (whole == 0 ? fraction : whole + " " + fraction);
    }
}
