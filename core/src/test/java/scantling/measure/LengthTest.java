package scantling.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {
    private static final int ROUND_TRIPS = 20_000;

    // The inch of 25.4 mm exactly: international yard and pound agreement of 1959.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "1 3/4       | 44.45",
                "1-3/4\"     | 44.45",
                "3' 6 1/2\"  | 1079.5",
                "7/8 in      | 22.225",
                "1/128       | 0.1984375",
                "2 ft        | 609.6",
                "5 ft 6      | 1676.4",
                "12          | 304.8",
                ".5          | 12.7",
                "-1/2        | -12.7",
                "44.5 mm     | 44.5",
                "3.2cm       | 32",
                "1.2 m       | 1200",
                "17 5/8 -0.1 mm | 447.575",
                "17 5/8 in +0.2 mm | 447.875"
            })
    void readsWhatMakersWriteInAPieceKeptInInches(String text, String millimetres) {
        assertEquals(Optional.of(Length.mm(millimetres)), LengthReader.read(text, Unit.INCH));
    }

    @Test
    void aNumberWithoutAUnitHasTheUnitOfThePiece() {
        assertEquals(Optional.of(Length.mm(12)), LengthReader.read("12", Unit.MM));
        assertEquals(Optional.of(Length.mm("1.5")), LengthReader.read("1 1/2", Unit.MM));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "abc",
                "1/0",
                "12 parsecs",
                "1 2",
                "--4",
                "1//2",
                "12 mm mm",
                "1e9",
                "99999999999999999999",
                "3' 6' 2'",
                "NaN"
            })
    void whatIsNoLengthIsNotReadAsOne(String text) {
        assertEquals(Optional.empty(), LengthReader.read(text, Unit.MM));
    }

    @Test
    void anyTextIsAnsweredWithoutAnException() {
        SplittableRandom random = new SplittableRandom(7);
        String letters = "0123456789 /-.'\"mcinft+\u2212xX\u00e9";
        for (int i = 0; i < ROUND_TRIPS; i++) {
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(12); n >= 0; n--) {
                text.append(letters.charAt(random.nextInt(letters.length())));
            }
            Optional<Length> read = LengthReader.read(text.toString(), Unit.INCH);
            assertEquals(read, read.flatMap(length -> LengthReader.read(length.toString(), Unit.MM)), text::toString);
        }
    }

    @Test
    void inchFractionsAreWrittenWithTheirRemainder() {
        LengthFormat eighths = LengthFormat.inches(8);
        assertEquals("17 5/8 -0.1 mm", eighths.format(Length.mm("447.575")));
        assertEquals("17 5/8", eighths.format(Length.inches(141, 8)));
        assertEquals("1/2", eighths.format(Length.inches(1, 2)));
        assertEquals("0", eighths.format(Length.ZERO));
        assertEquals("-1 1/4", eighths.format(Length.inches(-5, 4)));
        assertEquals("17 5/8 in -0.1 mm", eighths.formatWithUnit(Length.mm("447.575")));
        assertEquals("44.5", LengthFormat.MM.format(Length.mm("44.45")));
    }

    @Test
    void whatIsWrittenToTheLastDecimalIsReadBackExactly() {
        SplittableRandom random = new SplittableRandom(2026);
        for (int i = 0; i < ROUND_TRIPS; i++) {
            Length length = new Length(random.nextLong(-50_000_000_000L, 50_000_000_000L));
            LengthFormat format = new LengthFormat(random.nextBoolean(), 1 << random.nextInt(8), 7);
            String text = format.formatWithUnit(length);
            assertEquals(Optional.of(length), LengthReader.read(text, Unit.MM), text);
            assertEquals(Optional.of(length), LengthReader.read(length.toString(), Unit.INCH));
        }
    }

    @Test
    void hundredthsOfAMillimetreAnd128thsOfAnInchAreWhole() {
        assertEquals(100_000, Length.mm("0.01").tenthNanometres());
        assertEquals(Length.inches(1), Length.inches(1, 128).times(128));
    }

    @Test
    void roundingToAStepGoesTheWayItSays() {
        Length half = Length.mm("0.5");
        assertEquals(Length.mm("3.5"), Length.mm("3.3").roundedTo(half));
        assertEquals(Length.mm(3), Length.mm("3.3").roundedDownTo(half));
        assertEquals(Length.mm("3.5"), Length.mm("3.1").roundedUpTo(half));
        assertEquals(Length.mm("-3.5"), Length.mm("-3.1").roundedDownTo(half));
    }

    @Test
    void sumsThatLeaveTheRangeAreRefused() {
        assertThrows(ArithmeticException.class, () -> new Length(Long.MAX_VALUE).plus(new Length(1)));
        assertThrows(ArithmeticException.class, () -> Length.ofMillimetres(Double.NaN));
    }
}
