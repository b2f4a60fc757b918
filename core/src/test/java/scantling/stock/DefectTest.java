package scantling.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.measure.Unit;

final class DefectTest {
    private static Length mm(long length) {
        return Length.mm(length);
    }

    @Test
    void isReadAsItIsWritten() {
        for (String words :
                List.of("300.0 to 420.0 mm", "2300.0 to end", "900.0 to 1100.0 mm, 40.0 mm off the far edge")) {
            assertEquals(words, Defect.read(words, Unit.MM).orElseThrow().words(LengthFormat.MM));
        }
        String all = "300 mm to 420 mm; 900 mm to end, 40 mm off the near edge";
        assertEquals(all, Defect.written(Defect.readAll(all, Unit.INCH).orElseThrow()));
        assertEquals(Optional.of(List.of()), Defect.readAll(" ", Unit.MM));
    }

    @Test
    void lengthsWithoutAUnitAreOfTheUnitGiven() {
        assertEquals(
                Optional.of(Defect.across(Length.inches(1), Length.inches(5, 2))),
                Defect.read("1 to 2 1/2", Unit.INCH));
    }

    @Test
    void otherWordsAreRefused() {
        for (String words :
                List.of("", "knot", "400 to 300", "-3 to 4", "3 to 4, off the edge", "3 to 4, 0 off the near edge")) {
            assertEquals(Optional.empty(), Defect.read(words, Unit.MM), words);
        }
    }

    @Test
    void aPieceOfTheBoardHasWhatLiesInIt() {
        Defect edge = new Defect(mm(900), mm(1100), Defect.Edge.FAR, mm(40));
        assertEquals(
                Optional.of(new Defect(mm(0), mm(100), Defect.Edge.FAR, mm(40))),
                edge.within(mm(1000), Length.ZERO, mm(500), mm(150), mm(150)));
        assertEquals(
                Optional.of(Defect.across(mm(0), mm(100))), edge.within(mm(1000), mm(120), mm(500), mm(30), mm(150)));
        assertEquals(Optional.empty(), edge.within(mm(1000), Length.ZERO, mm(500), mm(110), mm(150)));
        assertEquals(Optional.empty(), edge.within(mm(1100), Length.ZERO, mm(500), mm(150), mm(150)));
    }

    @Test
    void checksAtTheEndsShortenTheBoard() {
        Board board = Board.rough("A", "black cherry", RoughClass.get("4/4"), mm(150), mm(2500))
                .marked(List.of(
                        Defect.across(mm(0), mm(60)),
                        Defect.across(mm(1000), mm(1080)),
                        Defect.across(mm(2300), Defect.END)));
        Board.Usable usable = board.usable(mm(25));
        assertEquals(mm(60), usable.from());
        assertEquals(mm(2240), usable.length());
        assertEquals(List.of(Defect.across(mm(940), mm(1020))), usable.defects());
    }
}
