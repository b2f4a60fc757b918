package scantling.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Packs counted by hand. */
class PacksTest {
    private static final Packs BAGS = Packs.of(List.of(100.0, 50.0));

    @Test
    void theSmallestPackThatHoldsItIsBought() {
        assertEquals(List.of(50.0), BAGS.filled(50));
        assertEquals(List.of(100.0), BAGS.filled(51));
    }

    @Test
    void whatIsMoreThanTheLargestTakesSeveral() {
        assertEquals(List.of(100.0, 100.0, 50.0), BAGS.filled(230));
    }

    @Test
    void nothingIsBoughtForNothing() {
        assertEquals(List.of(), BAGS.filled(0));
    }

    @Test
    void packsThatHoldNothingAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> Packs.of(List.of(0.0, 50.0)));
    }
}
