package scantling.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a length as makers write one: {@code 1 3/4}, {@code 1-3/4"}, {@code 3' 6 1/2"}, {@code 44.5 mm}, {@code 7/8 in},
 * {@code 3.2cm}; with a remainder as {@link LengthFormat} writes it, {@code 17 5/8 -0.1 mm}. A number without a unit has
 * the unit of the piece.
 */
public final class LengthReader {
    /** Longer texts are not lengths; the limit also bounds the work done on hostile input. */
    private static final int LONGEST = 64;

    private static final String WHOLE_OR_DECIMAL = "\\d{1,12}(?:\\.\\d{1,10})?|\\.\\d{1,10}";
    private static final String NUMBER =
            "(?:(?<whole>\\d{1,9})(?:\\s+|\\s*-\\s*))?(?<num>\\d{1,9})\\s*/\\s*(?<den>\\d{1,9})|(?<decimal>"
                    + WHOLE_OR_DECIMAL + ")";
    private static final String UNIT = "mm|millimetres?|cm|m|inch(?:es)?|in|ft|foot|feet|\"|\u2033|\u201d|''|'|\u2032";
    private static final Pattern FEET =
            Pattern.compile("^(?<feet>" + WHOLE_OR_DECIMAL + ")\\s*(?:'(?!')|\u2032|ft|foot|feet)\\s*-?\\s*(?=\\S)");
    private static final Pattern SIMPLE = Pattern.compile("^(?:" + NUMBER + ")\\s*(?<unit>" + UNIT + ")?");
    private static final Pattern REMAINDER =
            Pattern.compile("^\\s*(?<sign>[+\u2212-])\\s*(?<mm>" + WHOLE_OR_DECIMAL + ")\\s*mm$");

    private LengthReader() {}

    /**
     * Reads a length.
     *
     * @param text what the maker wrote
     * @param unit the unit when the text names none
     * @return the length, or empty when the text is not one
     */
    public static Optional<Length> read(String text, Unit unit) {
        String rest = text.strip().toLowerCase(Locale.ROOT);
        if (rest.isEmpty() || rest.length() > LONGEST) {
            return Optional.empty();
        }
        boolean negative = rest.charAt(0) == '-' || rest.charAt(0) == '\u2212';
        try {
            return readSigned(negative ? rest.substring(1).strip() : rest, negative ? -1 : 1, unit);
        } catch (ArithmeticException tooLong) {
            return Optional.empty();
        }
    }

    private static Optional<Length> readSigned(String text, int sign, Unit unit) {
        Matcher feet = FEET.matcher(text);
        if (feet.find()) {
            Length whole = scaled(new BigDecimal(feet.group("feet")), BigDecimal.ONE, Unit.FOOT);
            return readSimple(text.substring(feet.end()), whole, sign, Unit.INCH);
        }
        return readSimple(text, Length.ZERO, sign, unit);
    }

    /** The sign goes for the feet and the number; a remainder has a sign of its own. */
    private static Optional<Length> readSimple(String text, Length feet, int sign, Unit unit) {
        Matcher number = SIMPLE.matcher(text);
        if (!number.find()) {
            return Optional.empty();
        }
        Optional<Length> size = value(number, number.group("unit") == null ? unit : unitOf(number.group("unit")))
                .map(length -> feet.plus(length).times(sign));
        String tail = text.substring(number.end());
        return tail.isBlank() ? size : size.flatMap(length -> withRemainder(length, tail));
    }

    private static Optional<Length> value(Matcher number, Unit unit) {
        if (number.group("decimal") != null) {
            return Optional.of(scaled(new BigDecimal(number.group("decimal")), BigDecimal.ONE, unit));
        }
        BigDecimal denominator = new BigDecimal(number.group("den"));
        if (denominator.signum() == 0) {
            return Optional.empty();
        }
        BigDecimal whole = number.group("whole") == null ? BigDecimal.ZERO : new BigDecimal(number.group("whole"));
        return Optional.of(
                scaled(whole.multiply(denominator).add(new BigDecimal(number.group("num"))), denominator, unit));
    }

    private static Optional<Length> withRemainder(Length size, String tail) {
        Matcher remainder = REMAINDER.matcher(tail);
        if (!remainder.find()) {
            return Optional.empty();
        }
        Length rest = Length.mm(remainder.group("mm"));
        return Optional.of(remainder.group("sign").equals("+") ? size.plus(rest) : size.minus(rest));
    }

    private static Length scaled(BigDecimal numerator, BigDecimal denominator, Unit unit) {
        BigDecimal tenths = numerator.multiply(BigDecimal.valueOf(unit.length().tenthNanometres()));
        return new Length(tenths.divide(denominator, 0, RoundingMode.HALF_EVEN).longValueExact());
    }

    private static Unit unitOf(String written) {
        return switch (written) {
            case "mm", "millimetre", "millimetres" -> Unit.MM;
            case "cm" -> Unit.CM;
            case "m" -> Unit.M;
            case "'", "\u2032", "ft", "foot", "feet" -> Unit.FOOT;
            default -> Unit.INCH;
        };
    }
}
