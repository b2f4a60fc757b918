package scantling.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lines end between words, never in a number. */
class WholeNumbersTest {
    private static List<String> pieces(String text) {
        WholeNumbers breaker = new WholeNumbers();
        breaker.setText(text);
        List<String> pieces = new ArrayList<>();
        int from = 0;
        for (int to = breaker.next(); to != BreakIterator.DONE; to = breaker.next()) {
            pieces.add(text.substring(from, to));
            from = to;
        }
        return pieces;
    }

    @Test
    void fractionsAndWhatIsLeftOverStayWhole() {
        assertEquals(
                List.of("hole ", "of ", "3/16 ", "in ", "+0.2 ", "mm, ", "15/32 ", "deep"),
                pieces("hole of 3/16 in +0.2 mm, 15/32 deep"));
    }

    @Test
    void wordsAndWhatAHyphenJoinsAreTakenApartAsUsual() {
        assertEquals(List.of("brad-", "point ", "bit"), pieces("brad-point bit"));
    }
}
