package scantling.web;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import scantling.measure.Length;
import scantling.measure.LengthReader;
import scantling.measure.Unit;

/** A size that somebody typed into a field. */
final class SizeField {
    /** A comma may part decimals or thousands, so neither is guessed. */
    private static final Pattern COMMA = Pattern.compile("(\\d+),(\\d+)(\\s*[a-zA-Z\"]*)");

    private SizeField() {}

    /**
     * Reads it.
     *
     * @param inch whether a bare number is in inches
     * @param sentence what is told when it cannot be read
     * @param remedy what to write instead
     * @throws Refused when it is not a length greater than zero
     */
    static Length read(String said, boolean inch, String sentence, String remedy) {
        return LengthReader.read(said, inch ? Unit.INCH : Unit.MM)
                .filter(Length::isPositive)
                .orElseThrow(() -> new Refused(Refused.BAD, sentence, point(said, remedy)));
    }

    private static String point(String said, String remedy) {
        Matcher comma = COMMA.matcher(said.strip());
        return comma.matches()
                ? "Write its decimals after a point: %s.%s%s.".formatted(comma.group(1), comma.group(2), comma.group(3))
                : remedy;
    }
}
