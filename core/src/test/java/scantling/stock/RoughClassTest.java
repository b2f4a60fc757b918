package scantling.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import scantling.measure.Length;
import scantling.measure.LengthReader;
import scantling.measure.Making;
import scantling.measure.Unit;

class RoughClassTest {
    /** Rough and surfaced thickness as two published tables of the hardwood trade print them. */
    @ParameterizedTest
    @CsvSource({
        "3/8, 3/8, 3/16",
        "1/2, 1/2, 5/16",
        "5/8, 5/8, 7/16",
        "3/4, 3/4, 9/16",
        "4/4, 1, 13/16",
        "5/4, 1 1/4, 1 1/16",
        "6/4, 1 1/2, 1 5/16",
        "7/4, 1 3/4, 1 1/2",
        "8/4, 2, 1 3/4",
        "12/4, 3, 2 3/4",
        "16/4, 4, 3 3/4"
    })
    void isAsThickAsTheTablesSay(String name, String rough, String surfaced) {
        RoughClass one = RoughClass.get(name);
        assertEquals(inches(rough), one.rough().value());
        assertEquals(inches(surfaced), one.surfaced().value());
    }

    /** Common practice: 4/4 gives 19 to 20 mm, 5/4 gives 25, 6/4 gives 32, 8/4 gives 44. */
    @ParameterizedTest
    @CsvSource({
        "19, 4/4",
        "20, 4/4",
        "21, 5/4",
        "25, 5/4",
        "25.4, 5/4",
        "32, 6/4",
        "38, 7/4",
        "40, 8/4",
        "44, 8/4",
        "45, 12/4",
        "10, 5/8",
        "70, 16/4"
    })
    void picksTheThinnestClassThatPlanesToASize(String finished, String name) {
        assertEquals(
                name, RoughClass.forFinished(Length.mm(finished)).orElseThrow().name());
    }

    @Test
    void findsNoneForWhatMustBeLaminated() {
        assertEquals(Optional.empty(), RoughClass.forFinished(Length.mm(100)));
    }

    @Test
    void picksAmongWhatTheYardSells() {
        List<RoughClass> sold = List.of(RoughClass.get("8/4"), RoughClass.get("4/4"));
        assertEquals(
                "8/4", RoughClass.forFinished(Length.mm(25), sold).orElseThrow().name());
    }

    @Test
    void noClassPlanesToMoreThanItsSurfacedThicknessAndThickerClassesGiveMore() {
        Length before = Length.ZERO;
        for (RoughClass one : RoughClass.all()) {
            assertTrue(one.planesTo().compareTo(one.surfaced()) <= 0, one.name());
            assertTrue(one.planesTo().value().compareTo(before) > 0, one.name());
            before = one.planesTo().value();
        }
    }

    @Test
    void isKnownByItsQuartersAndSaysWhereItsNumberComesFrom() {
        assertEquals(RoughClass.find("8/4"), RoughClass.ofQuarters(8));
        assertEquals(Optional.of(8), RoughClass.get("8/4").quarters());
        assertEquals(Optional.empty(), RoughClass.get("5/8").quarters());
        assertEquals(Optional.empty(), RoughClass.ofQuarters(9));
        assertThrows(IllegalArgumentException.class, () -> RoughClass.get("9/4"));
        var from = assertInstanceOf(
                Making.LookedUp.class, RoughClass.get("4/4").planesTo().making());
        assertEquals("common practice: 19 to 20 mm (3/4 to 13/16 in)", from.source());
    }

    private static Length inches(String text) {
        return LengthReader.read(text, Unit.INCH).orElseThrow();
    }
}
