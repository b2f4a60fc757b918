package scantling.piece;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads how far something leans: an angle, {@code 8°} or {@code 7.5 degrees}, or the length its foot stands out. */
final class LeanReader {
    private static final Pattern ANGLE =
            Pattern.compile("(?<degrees>-?\\d{1,3}(?:\\.\\d{1,6})?)\\s*(?:\u00b0|deg(?:rees?)?)");
    /** Past this a leg is a brace. */
    private static final double STEEPEST = 45;

    private final Reading reading;

    LeanReader(Reading reading) {
        this.reading = reading;
    }

    Optional<Lean> read(Node node, Literals literals) {
        String text = node instanceof Node.Scalar scalar ? scalar.text().strip() : "";
        Matcher angle = ANGLE.matcher(text.toLowerCase(Locale.ROOT));
        if (!angle.matches()) {
            return reading.length(node, literals, Reading.Sign.ZERO_TOO).map(Lean.Offset::new);
        }
        double degrees = Double.parseDouble(angle.group("degrees"));
        return degrees >= 0 && degrees <= STEEPEST
                ? Optional.of(new Lean.Angle(degrees, text, node.span()))
                : reading.refuse(node, literals.label(), "an angle from 0\u00b0 to 45\u00b0, or a length");
    }
}
