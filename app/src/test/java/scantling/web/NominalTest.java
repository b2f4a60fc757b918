package scantling.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import scantling.measure.Length;
import scantling.measure.LengthReader;
import scantling.measure.Unit;

/** Sizes as they are sold, by 1 in = 25.4 mm (ISO 31-1). */
final class NominalTest {
    @ParameterizedTest
    @CsvSource({
        "2440 mm, true, 2440.0 mm (96 1/16 in)",
        "18 mm, true, 18.0 mm (23/32 in)",
        "96 in, true, 96",
        "3/4 in, true, 3/4",
        "96 in, false, 96 in (2438.4 mm)",
        "1 in, false, 1 in (25.4 mm)",
        "5 in, false, 127.0",
        "2440 mm, false, 2440.0",
        "18.3 mm, false, 18.3"
    })
    void aRoundSizeOfTheOtherUnitStaysOne(String size, boolean inch, String written) {
        Length length = LengthReader.read(size, Unit.MM).orElseThrow();
        assertEquals(written, Nominal.of(length, inch));
    }
}
