package scantling.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import scantling.cutting.Effort;
import scantling.measure.Unit;
import scantling.piece.BenchLog;
import scantling.piece.Piece;

/** A piece told in another unit is the same piece: the two plans are held against each other. */
class ToldUnitTest {
    private static final Piece BOOKCASE = Started.piece("bookcase");

    private static Plan plan(Piece piece) {
        Shop usual = Shop.usual();
        Shop shop = new Shop(usual.tolerances(), usual.allowances(), usual.rack(), new Effort(5, 1));
        return Planner.plan(piece, BenchLog.EMPTY, shop).plan();
    }

    private static List<String> work(Plan plan) {
        return plan.features().features().stream()
                .map(feature -> "%s %s %s %s %s"
                        .formatted(
                                feature.owner(),
                                feature.kind(),
                                feature.along().middle().value(),
                                feature.across().middle().value(),
                                feature.through().middle().value()))
                .toList();
    }

    @Test
    void everyHoleAndSlotStaysWhereItIsAndAsLargeAsItIs() {
        assertEquals(work(plan(BOOKCASE)), work(plan(BOOKCASE.told(Unit.INCH))));
    }

    @Test
    void itsSentencesAreInTheOtherUnit() {
        assertNotEquals(
                plan(BOOKCASE).findings().get(0).sentence(),
                plan(BOOKCASE.told(Unit.INCH)).findings().get(0).sentence());
    }
}
