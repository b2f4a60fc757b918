package scantling.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Sums are put together only when somebody asks how they were made; nobody can tell when that is. */
class DimOpeningTest {
    private static final int ROW = 20_000;

    @Test
    void aVeryLongRowOfSumsIsOpened() {
        Dim step = Dim.lookedUp(Length.ofMillimetres(0.5), "steps", "half", "test");
        Dim sum = Dim.ZERO;
        for (int i = 0; i < ROW; i++) {
            sum = sum.plus(step);
        }
        assertEquals(List.of(new Making.Sum.Term(ROW, step)), ((Making.Sum) sum.making()).terms());
    }

    @Test
    void whatIsTakenAwayAgainLeavesTheSameNumber() {
        Dim width = Dim.lookedUp(Length.ofMillimetres(400), "sizes", "width", "test");
        Dim leg = Dim.lookedUp(Length.ofMillimetres(44), "sizes", "leg", "test");
        Dim half = width.half();
        assertTrue(half.plus(leg).minus(leg).sameSourceAs(half));
        assertSame(half.making(), half.plus(leg).minus(leg).making());
        assertEquals(Dim.ZERO.making(), half.minus(half).making());
    }

    /** Beside whole numbers of any size, java.math.BigInteger: values never depend on what was opened, nor when. */
    @Test
    void valuesAndTermsAgreeWhenOpenedAtRandom() {
        Random random = new Random(7);
        for (int round = 0; round < 500; round++) {
            List<Dim> numbers = new ArrayList<>();
            List<BigInteger> values = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                Length size = new Length(1 + random.nextInt(1_000_000));
                numbers.add(Dim.lookedUp(size, "sizes", "n" + i, "test"));
                values.add(BigInteger.valueOf(size.tenthNanometres()));
            }
            for (int i = 0; i < 40; i++) {
                int one = random.nextInt(numbers.size());
                int other = random.nextInt(numbers.size());
                boolean more = random.nextBoolean();
                numbers.add(
                        more
                                ? numbers.get(one).plus(numbers.get(other))
                                : numbers.get(one).minus(numbers.get(other)));
                values.add(
                        more
                                ? values.get(one).add(values.get(other))
                                : values.get(one).subtract(values.get(other)));
                if (random.nextInt(3) == 0) {
                    assertEquals(values.get(values.size() - 1), ofTerms(numbers.get(numbers.size() - 1)));
                }
            }
            for (int i = 0; i < numbers.size(); i++) {
                assertEquals(
                        values.get(i), BigInteger.valueOf(numbers.get(i).value().tenthNanometres()));
                assertEquals(values.get(i), ofTerms(numbers.get(i)));
            }
        }
    }

    private static BigInteger ofTerms(Dim dim) {
        if (!(dim.making() instanceof Making.Sum sum)) {
            return BigInteger.valueOf(dim.value().tenthNanometres());
        }
        return sum.terms().stream()
                .map(term -> BigInteger.valueOf(term.times())
                        .multiply(BigInteger.valueOf(term.dim().value().tenthNanometres())))
                .reduce(BigInteger.ZERO, BigInteger::add);
    }
}
