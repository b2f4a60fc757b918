package scantling.timber;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import scantling.measure.Length;

class PanelTableTest {
    private static final PanelTable PANELS = PanelTable.standard();

    @ParameterizedTest
    @CsvSource({
        "MDF, MDF",
        "mdf, MDF",
        "birch plywood, birch plywood",
        "Birch ply, birch plywood",
        "plywood, hardwood plywood",
        "thin back panel, hardboard",
        "chipboard, particleboard"
    })
    void findsAPlainSheetByTheMakersWords(String words, String core) {
        Panel panel = find(words);
        assertEquals(core, panel.name());
        assertFalse(panel.isVeneered());
    }

    @ParameterizedTest
    @CsvSource({
        "cherry-veneered MDF, MDF, cherry, black cherry",
        "MDF veneered in cherry, MDF, cherry, black cherry",
        "walnut veneered particleboard, particleboard, walnut, black walnut",
        "walnut plywood, hardwood plywood, walnut, black walnut",
        "white oak ply, hardwood plywood, white oak, white oak",
        "oak-veneered plywood, hardwood plywood, oak, ",
        "oak plywood, hardwood plywood, oak, "
    })
    void findsCoreAndFaceOfAVeneeredSheet(String words, String core, String face, String species) {
        Panel panel = find(words);
        assertEquals(core, panel.core());
        Panel.Veneer veneer = panel.veneer().orElseThrow();
        assertEquals(face, veneer.words());
        assertEquals(Optional.ofNullable(species), veneer.species().map(Species::name));
        assertEquals(face + "-veneered " + core, panel.name());
    }

    @Test
    void takesAVeneeredSheetWithoutAFaceAndKnowsItAgainByItsOwnName() {
        assertEquals("veneered MDF", find("veneered MDF").name());
        assertEquals(find("cherry MDF"), find(find("cherry MDF").name()));
    }

    @Test
    void doesNotGuessAtWordsItDoesNotKnow() {
        assertEquals(Optional.empty(), PANELS.find("granite"));
        assertEquals(Optional.empty(), PANELS.find("striped plywood"));
        assertEquals(Optional.empty(), PANELS.find(""));
        assertTrue(PANELS.nearest("brich plywood").contains("birch plywood"));
    }

    /** EN 315, sanded plywood, as a plywood maker prints it (mm): every row. */
    @ParameterizedTest
    @CsvSource({
        "4, 0.3, 0.5",
        "6.5, 0.4, 0.5",
        "9, 0.4, 0.5",
        "12, 0.5, 0.7",
        "15, 0.6, 0.8",
        "18, 0.7, 0.9",
        "21, 0.8, 1.0",
        "24, 0.9, 1.1",
        "27, 1.0, 1.2",
        "30, 1.1, 1.3"
    })
    void plywoodMayBeOffByTheRowsOfTheStandard(String nominal, String plus, String minus) {
        ThicknessRange range =
                find("birch plywood").thicknessRange(Length.mm(nominal)).orElseThrow();
        assertEquals(Length.mm(nominal).plus(Length.mm(plus)), range.most());
        assertEquals(Length.mm(nominal).minus(Length.mm(minus)), range.least());
        assertEquals(Length.mm(minus), range.tolerance().halfRange());
        assertTrue(range.source().contains("EN 315"));
    }

    @Test
    void aSheetMeasuredOutsideItsRangeIsSeen() {
        ThicknessRange range =
                find("birch plywood").thicknessRange(Length.mm(18)).orElseThrow();
        assertTrue(range.holds(Length.mm("17.1")));
        assertFalse(range.holds(Length.mm("17.0")));
        assertEquals(Optional.empty(), find("MDF").thicknessRange(Length.mm(400)));
    }

    /** Handbook of Finnish Plywood: in every row stiffness along and across adds up to 17.5 GPa. */
    @ParameterizedTest
    @CsvSource({"4, 16.471", "6.5, 12.737", "12, 10.719", "18, 10.048", "30, 9.519"})
    void birchPlywoodIsStifferAlongTheThinnerItIs(String thickness, double along) {
        Panel.Stiffness row =
                find("birch plywood").stiffnessAt(Length.mm(thickness)).orElseThrow();
        assertEquals(along, row.along());
        assertEquals(17.5, row.along() + row.across(), 1e-9);
    }

    @Test
    void everySheetHasADensityAStiffnessAtEighteenAndASource() {
        for (Panel panel : PANELS.all()) {
            assertTrue(panel.density().isPresent(), panel.name());
            assertTrue(panel.stiffnessAt(Length.mm(18)).isPresent(), panel.name());
            assertFalse(panel.source().isBlank(), panel.name());
        }
    }

    private static Panel find(String words) {
        return PANELS.find(words).orElseThrow(() -> new AssertionError(words));
    }
}
