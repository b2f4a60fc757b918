package scantling.checks.lasting;

import java.util.Locale;
import scantling.construct.Assembly;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.measure.Unit;

/** Writes numbers for the maker in the unit of the piece, rounded to what a bench can use. */
public record Say(LengthFormat format) {
    private static final Length FINE_MM = Length.mm("0.1");
    private static final Length FINE_INCH = Length.inches(1, 64);
    private static final Length COARSE_MM = Length.mm("0.5");
    private static final Length COARSE_INCH = Length.inches(1, 32);

    public static Say of(Assembly assembly) {
        Unit unit = assembly.piece().unit();
        return new Say(unit == Unit.INCH || unit == Unit.FOOT ? LengthFormat.inches(64) : LengthFormat.of(unit));
    }

    private Length step(boolean fine) {
        if (format.inches()) {
            return fine ? FINE_INCH : COARSE_INCH;
        }
        return fine ? FINE_MM : COARSE_MM;
    }

    public String near(Length length) {
        return format.formatWithUnit(length.roundedTo(step(true)));
    }

    public String near(double mm) {
        return near(Length.ofMillimetres(mm));
    }

    public String atLeast(double mm) {
        return format.formatWithUnit(Length.ofMillimetres(mm).roundedUpTo(step(false)));
    }

    /** Up to a thickness that stock is bought or planed to. */
    Length stock(double mm) {
        return Length.ofMillimetres(mm).roundedUpTo(format.inches() ? Length.inches(1, 16) : Length.mm("1"));
    }

    /** Down to a size that is set out with a rule. */
    Length size(double mm) {
        return Length.ofMillimetres(mm).roundedDownTo(format.inches() ? Length.inches(1, 16) : Length.mm("1"));
    }

    public String atMost(double mm) {
        return format.formatWithUnit(Length.ofMillimetres(mm).roundedDownTo(step(false)));
    }

    public static String mass(double kg) {
        return String.format(Locale.ROOT, "%.1f kg (%.0f lb)", kg, kg * 2.2046226);
    }

    public static String one(double number) {
        return String.format(Locale.ROOT, "%.1f", number);
    }

    public static String alike(int count) {
        return count == 1 ? "" : " (%d alike)".formatted(count);
    }
}
