package scantling.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rates and actual figures that cannot be: each is told, with its place. */
class RatesWrongTest {
    @ParameterizedTest
    @CsvSource({
        "'hour: 0', cannot be 0",
        "'hour: -45', cannot be -45",
        "'hours: {milling: 0}', cannot be 0",
        "'margin: 100 %', cannot be 100",
        "'tax: 19 EUR', 'is in %, not in EUR'",
        "'currency: EUR\nhour: 48 USD', 'is in USD, all else in EUR'",
        "'currency: EUR\nprices: {white oak: 9.50 USD}', 'is in USD, all else in EUR'",
        "'currency: euros', is no currency",
        "'deposit: 60 %\nstages: {start: 50 %}', more than the whole price",
        "'hourly: 45', is no rate",
        "'rounding: 0', cannot be 0",
        "'rounding rule: sideways', cannot be",
        "'work: {milling: soon}', is no time",
        "'work: {milling: 8 to 5 h}', is no time",
        "'extras: {paint: 4}', is no heading",
        "'hour: {a: {b: 1}}', has keys with values"
    })
    void ratesThatCannotBeAreToldWithTheirPlace(String text, String told) {
        RatesReader.Result result = RatesReader.read(text);
        assertEquals(Optional.empty(), result.rates());
        assertEquals(1, result.problems().size(), () -> result.problems().toString());
        assertTrue(
                result.problems().get(0).message().contains(told),
                () -> result.problems().toString());
    }

    @Test
    void everythingWrongWithRatesIsToldAtOnce() {
        assertEquals(
                3,
                RatesReader.read("hour: 0\nmargin: 120 %\nprices: {oak: -1}")
                        .problems()
                        .size());
    }

    @Test
    void anActualThatCannotBeIsTold() {
        assertEquals(
                2,
                Actual.read("hours: {milling: long}\nspent: {materials: 12 USD}", "EUR")
                        .problems()
                        .size());
        assertEquals(1, Actual.read("milling: 4", "EUR").problems().size());
    }
}
