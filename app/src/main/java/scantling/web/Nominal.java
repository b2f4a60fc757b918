package scantling.web;

import scantling.measure.Length;
import scantling.measure.LengthFormat;

/**
 * Sizes of stock as they are bought: what is a round size in the other unit is written in that, with the shop's own in
 * brackets; so a sheet of 2440 mm stays one in a shop that works in inches.
 */
final class Nominal {
    private static final Length HALF_MM = Length.mm("0.5");
    private static final Length MM = Length.mm(1);
    private static final Length FINEST = Length.inches(1, LengthFormat.INCH.denominator());
    private static final Length SIXTEENTH = Length.inches(1, 16);

    private Nominal() {}

    /** A size for a shop that works in inches or in millimetres. */
    static String of(Length size, boolean inch) {
        boolean other = inch
                ? !isWhole(size, FINEST) && isWhole(size, HALF_MM)
                : !isWhole(size, MM) && isWhole(size, SIXTEENTH);
        LengthFormat own = Sheets.format(inch);
        if (!other) {
            return own.format(size);
        }
        Length near = inch ? size.roundedTo(FINEST) : size;
        return "%s (%s)".formatted(Sheets.format(!inch).formatWithUnit(size), own.formatWithUnit(near));
    }

    private static boolean isWhole(Length size, Length of) {
        return size.roundedTo(of).equals(size);
    }
}
