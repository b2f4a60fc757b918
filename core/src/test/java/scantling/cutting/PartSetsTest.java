package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static scantling.cutting.Jobs.job;
import static scantling.cutting.Jobs.part;
import static scantling.cutting.Jobs.sheet;

import java.util.List;
import org.junit.jupiter.api.Test;
import scantling.measure.Length;

/** Sets of parts as numbers, and the smallest rectangles they come out of; worked by hand. */
class PartSetsTest {
    private final Problem problem = new Problem(
            job(
                    Saw.of(Length.ZERO),
                    List.of(sheet(10, 7, 1)),
                    part("a", 6, 4, 1),
                    part("b", 4, 3, 1),
                    part("c", 5, 5, 1)),
            0,
            FirstCut.ANY);
    private final PartSets sets = new PartSets(problem, new int[] {0, 1, 2}, 10, 7);

    @Test
    void aSetIsTheSameInWhateverOrderItsPartsCame() {
        long one = PartSets.with(PartSets.with(PartSets.with(0, 2), 0), 1);
        long other = PartSets.with(PartSets.with(PartSets.with(0, 1), 2), 0);

        assertEquals(one, other);
        assertEquals(3, PartSets.size(one));
        assertEquals(2, PartSets.kind(one, 2));
    }

    /** Six by four and four by three: side by side ten by four, one above the other six by seven. */
    @Test
    void twoPartsLieSideBySideOrOneAboveTheOther() {
        assertArrayEquals(new long[] {6, 7, 10, 4}, sets.shapes(PartSets.with(PartSets.with(0, 0), 1)));
    }

    /** Six and five are longer than ten, four and five wider than seven. */
    @Test
    void aSetThatComesOutOfNoSheetHasNoRectangles() {
        assertEquals(0, sets.shapes(PartSets.with(PartSets.with(0, 0), 2)).length);
    }
}
