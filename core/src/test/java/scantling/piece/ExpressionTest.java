package scantling.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Making;
import scantling.measure.Span;
import scantling.measure.Unit;

final class ExpressionTest {
    private static final Span PLACE = new Span(1, 1, 0, 0);
    private static final Dim WIDTH = Dim.given(Length.mm(500), "width", "500", PLACE);
    private static final Dim LEG = Dim.given(Length.mm(40), "leg", "40", PLACE);

    private final Problems problems = new Problems();

    private Optional<Dim> read(String text, Unit unit) {
        Scope scope = new Scope(problems);
        scope.define("width", () -> Optional.of(WIDTH));
        scope.define("leg", () -> Optional.of(LEG));
        scope.define("leg room", () -> Optional.of(WIDTH));
        scope.define("half-lap", () -> Optional.of(LEG));
        return Expression.read(
                Phrase.of(new Node.Scalar(text, true, new Span(1, 1, 0, text.length()), 0)),
                scope,
                new Literals.Written("here", unit),
                problems);
    }

    /** Expected values by ruler arithmetic; one inch is 25.4 mm exactly. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "44.5 mm | MM | 44.5",
                "7/8 in | MM | 22.225",
                "1 3/4 | INCH | 44.45",
                "1-3/4\" | MM | 44.45",
                "3' 6 1/2\" | MM | 1079.5",
                "20 - 3/4 | INCH | 488.95",
                "2 - 3/4 in | INCH | 31.75",
                "width - 2 * leg | MM | 420",
                "width - leg * 2 | MM | 420",
                "width-2*leg | MM | 420",
                "(width - 20) / 3 | MM | 160",
                "width/2-3/4 in | MM | 230.95",
                "width / 2/5 | MM | 50",
                "leg * 0.5 | MM | 20",
                "leg * 3/4 | MM | 30",
                "-leg + 100 | MM | 60",
                "leg - -10 | MM | 50",
                "leg room / 4 | MM | 125",
                "half-lap + 1 | MM | 41",
                "width - 1 3/4 in | MM | 455.55",
                "width - 1-3/4 in | MM | 455.55",
                "17 5/8 -0.1 mm | INCH | 447.575",
                "2 * (3 + 4) | MM | 14",
                "2 * 3 in + 1 cm | MM | 162.4",
                "1.5 * leg | MM | 60",
                "width - 3' + 1 | MM | -413.4",
            })
    void worksOut(String text, Unit unit, String millimetres) {
        assertEquals(Optional.of(Length.mm(millimetres)), read(text, unit).map(Dim::value), problems.list()::toString);
    }

    @Test
    void aSumKeepsWhatItWasMadeFrom() {
        Making.Sum sum =
                (Making.Sum) read("width - 2 * leg", Unit.MM).orElseThrow().making();
        assertEquals(2, sum.terms().size());
        assertEquals(-2, sum.terms().get(1).times());
        assertTrue(LEG == sum.terms().get(1).dim());
    }

    @Test
    void aQuarterIsAShare() {
        assertEquals(
                new Making.Share(LEG, 1, 4),
                read("leg / 4", Unit.MM).orElseThrow().making());
    }

    @Test
    void aNumberInASumKnowsItsOwnCharacters() {
        Making.Sum sum =
                (Making.Sum) read("width - 20 mm", Unit.MM).orElseThrow().making();
        Making.Given given = (Making.Given) sum.terms().get(1).dim().making();
        assertEquals("20 mm", given.text());
        assertEquals(8, given.span().start());
        assertEquals(13, given.span().end());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "leg * width | multiplied",
                "leg / 2 in | divided",
                "leg / 0 | zero",
                "1/0 | zero",
                "leg / (1 - 1) | zero",
                "(leg | not closed",
                "leg ) | does not fit",
                "leg + | missing at the end",
                "2 leg | does not fit",
                "legg | no name",
                "12 furlongs | no name",
                "leg % 2 | cannot be read",
                "999999999 * 999999999 * leg | too large",
                "#! | cannot be read",
            })
    void saysWhatIsWrong(String text, String said) {
        assertTrue(read(text, Unit.MM).isEmpty());
        assertEquals(1, problems.list().size());
        assertTrue(problems.list().get(0).message().contains(said), problems.list()::toString);
    }

    @Test
    void bracketsBeyondReasonAreRefused() {
        assertTrue(read("(".repeat(140) + "1" + ")".repeat(140), Unit.MM).isEmpty());
        assertTrue(read("-".repeat(250) + "1", Unit.MM).isEmpty());
        assertTrue(problems.list().get(0).message().contains("too many brackets"));
    }
}
