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
        if (!ANGLE.matcher(text.toLowerCase(Locale.ROOT)).matches()) {
            return reading.length(node, literals, Reading.Sign.ZERO_TOO).map(Lean.Offset::new);
        }
        return angle(node, literals).map(degrees -> new Lean.Angle(degrees, text, node.span()));
    }

    /** An angle; its degrees. */
    Optional<Double> angle(Node node, Literals literals) {
        String rule = "an angle from 0\u00b0 to 45\u00b0: 8\u00b0";
        Optional<String> text = reading.scalar(node, literals.label(), rule).map(Node.Scalar::text);
        Optional<Double> degrees = text.map(said -> ANGLE.matcher(said.strip().toLowerCase(Locale.ROOT)))
                .filter(Matcher::matches)
                .map(angle -> Double.parseDouble(angle.group("degrees")))
                .filter(angle -> angle >= 0 && angle <= STEEPEST);
        return degrees.isEmpty() && text.isPresent() ? reading.refuse(node, literals.label(), rule) : degrees;
    }
}
