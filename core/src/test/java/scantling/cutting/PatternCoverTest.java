package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import scantling.measure.Length;

class PatternCoverTest {
    /**
     * Sticks of 132, parts of 44, 33 and 12, wanted 2, 3 and 6 times (Nitsche, Scheithauer and Terno 1999, from memory): 1.96
     * sticks by their length, but by hand no stick holds more than 126 of them, so two do not suffice.
     */
    private static final long[] SIZE = {44, 33, 12};

    private static final int[] WANTED = {2, 3, 6};

    /** What each is worth by its length. */
    private static final double[] PRICE = {44 / 132.0, 33 / 132.0, 12 / 132.0};

    private static List<Pattern> pool(double room) {
        CutPart[] parts = IntStream.range(0, 3)
                .mapToObj(i -> CutPart.stick("part " + i, Length.mm(SIZE[i]), WANTED[i]))
                .toArray(CutPart[]::new);
        CutJob job = Jobs.job(Saw.of(Length.ZERO), List.of(Jobs.stick(132)), parts);
        Problem problem = new Problem(job, 0, FirstCut.ANY);
        return PatternPool.of(problem, SIZE, WANTED, PRICE, room, 1000).orElseThrow();
    }

    private static Set<List<Integer>> counts(List<Pattern> patterns) {
        return patterns.stream()
                .map(pattern -> IntStream.of(pattern.counts()).boxed().toList())
                .collect(Collectors.toSet());
    }

    /** By hand: two long parts leave 44, one leaves 88, none leaves 132; nothing more fits on any of these. */
    @Test
    void allFullPatternsAreListedWhenAnyWasteIsAllowed() {
        assertEquals(
                Set.of(
                        List.of(2, 1, 0),
                        List.of(2, 0, 3),
                        List.of(1, 2, 1),
                        List.of(1, 1, 4),
                        List.of(1, 0, 6),
                        List.of(0, 3, 2),
                        List.of(0, 2, 5),
                        List.of(0, 1, 6)),
                counts(pool(1)));
    }

    /** The whole plan of two sticks has 264 - 259 = 5 to spare; the fullest pattern leaves 6. */
    @Test
    void noPatternWastesLittleEnoughForTwoSticks() {
        assertEquals(List.of(), pool(5 / 132.0));
        assertEquals(Set.of(List.of(0, 2, 5)), counts(pool(6.5 / 132)));
    }

    @Test
    void twoSticksAreProvenTooFewAndThreeAreFound() {
        PatternCover.Answer two =
                PatternCover.within(pool(1), WANTED, 2, new PatternCover.Patience(10, 1_000, 0), () -> false);
        PatternCover.Answer three =
                PatternCover.within(pool(1), WANTED, 3, new PatternCover.Patience(10, 1_000, 0), () -> false);

        assertTrue(two.isImpossible());
        assertEquals(List.of(), two.chosen());
        assertFalse(three.isImpossible());
        assertEquals(3, three.chosen().size());
    }
}
