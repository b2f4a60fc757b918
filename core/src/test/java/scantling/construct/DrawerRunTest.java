package scantling.construct;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import scantling.measure.Ledger;
import scantling.piece.Piece;
import scantling.piece.PieceReader;
import scantling.piece.ReadResult;
import scantling.plan.StandardWoods;

/** A drawer that cannot be as it is said is planned as near to it as will go, and says so. */
class DrawerRunTest {
    private static Assembly of(String size, String box) {
        String text = """
            piece: test
            unit: mm
            size: %s
            materials:
              oak:  {solid: white oak, thickness: 20}
              ply:  {sheet: birch plywood, thickness: 18}
              box:  {sheet: birch plywood, thickness: 12}
              thin: {sheet: birch plywood, thickness: 6}
            build:
              - case: {of: ply, back: thin}
              - drawer: {fronts: oak, box: {of: box, floor: thin%s}}
            """.formatted(size, box);
        ReadResult read = PieceReader.read(text, Construction.language(), StandardWoods.standard());
        assertEquals(List.of(), read.problems());
        Piece piece = read.piece().orElseThrow();
        Tolerances tolerances = Tolerances.standard();
        Assembly assembly = Construction.assemble(
                piece, new Ledger(Map.of(), piece.sizes(), tolerances.of("measured at the bench")), tolerances);
        assertEquals(List.of(), assembly.problems());
        return assembly;
    }

    private static String size(Assembly assembly, String name) {
        return Objects.requireNonNull(assembly.names().get(name), name)
                .value()
                .millimetres()
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String told(Assembly assembly) {
        assertEquals(1, assembly.findings().size(), assembly.findings()::toString);
        Finding finding = assembly.findings().get(0);
        assertEquals(Finding.Severity.STOP, finding.severity());
        return finding.sentence() + " " + finding.remedy();
    }

    /** 400 less 6 of back and 20 of front: 374, less 13 behind: 361, so 350 of the lengths in steps of 50. */
    @Test
    void aSlideLongerThanTheCaseIsPlannedWithTheLongestThatFits() {
        Assembly assembly = of("500 wide, 400 deep, 300 high", ", slide length: 450");
        assertEquals(
                "A slide 450.0 mm long does not fit between drawer / front and back: there are 374.0 mm, of which"
                        + " 13.0 mm must stay free behind it. The longest that fits is 350.0 mm, and the drawer is"
                        + " planned with it: write slide length: 350.0 mm, or make the piece 89.0 mm deeper.",
                told(assembly));
        assertEquals("350", size(assembly, "drawer / box / left side / length"));
        assertEquals(
                List.of("concealed undermount slide 350.0 mm"),
                assembly.fittings().stream()
                        .map(Fitting::what)
                        .filter(what -> what.contains("slide"))
                        .toList());
    }

    @Test
    void theLongestSlideIsOfferedAsAChangeToTheText() {
        Assembly assembly = of("500 wide, 400 deep, 300 high", ", slide length: 450");
        Change change = assembly.findings().get(0).changes().get(0);
        Assembly changed = Construction.assemble(
                PieceReader.read(
                                change.applyTo(assembly.piece().text()),
                                Construction.language(),
                                StandardWoods.standard())
                        .piece()
                        .orElseThrow(),
                new Ledger(Map.of(), Map.of(), Tolerances.standard().of("measured at the bench")),
                Tolerances.standard());
        assertEquals(List.of(), changed.findings());
    }

    /** 200 - 6 - 20 = 174; the shortest slide is 250 and 13 behind it. On wood 6 stay free: 168. */
    @Test
    void aCaseTooShallowForAnySlideGetsABoxOnWood() {
        Assembly assembly = of("500 wide, 200 deep, 300 high", "");
        assertEquals(
                "No concealed undermount slide fits between drawer / front and back: there are 174.0 mm, and the"
                        + " shortest, 250.0 mm, needs 263.0 mm. It is planned to run on wood, with a box 168.0 mm long:"
                        + " write runs on: wood, or make the piece 89.0 mm deeper.",
                told(assembly));
        assertEquals("168", size(assembly, "drawer / box / left side / length"));
    }

    /** Opening 80 - 36 = 44; concealed: 14 below, 7 above, twice 13 + 6 of floor: 59. On wood 3 stay free: 41. */
    @Test
    void aDrawerTooLowForItsSlideGetsABoxOnWood() {
        Assembly assembly = of("500 wide, 400 deep, 80 high", "");
        assertEquals(
                "drawer / opening is 44.0 mm high; a box on a concealed undermount slide needs 59.0 mm behind"
                        + " drawer / front: 14.0 mm below, 7.0 mm above and 38.0 mm for the box. It is planned to run"
                        + " on wood, with a box 41.0 mm high: write runs on: wood, or make the row 15.0 mm higher.",
                told(assembly));
        assertEquals("41", size(assembly, "drawer / box / left side / width"));
    }

    /** Opening 300 - 36 = 264, less 14 and 7: 243. */
    @Test
    void aBoxHigherThanItsOpeningIsPlannedAsHighAsGoes() {
        Assembly assembly = of("500 wide, 400 deep, 300 high", ", height: 260");
        assertEquals(
                "A box 260.0 mm high behind drawer / front does not go with an opening 264.0 mm high: 21.0 mm of it"
                        + " stay free below and above. The nearest that fits is 243.0 mm, and the drawer is planned with"
                        + " it: write height: 243.0 mm, or make the row higher.",
                told(assembly));
        assertEquals("243", size(assembly, "drawer / box / left side / width"));
    }
}
