package scantling.timber;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpeciesTableTest {
    private static final SpeciesTable WOODS = SpeciesTable.standard();

    @ParameterizedTest
    @ValueSource(
            strings = {"black cherry", "Cherry, black", "BLACK-CHERRY", "cherry", " black  cherry ", "Prunus serotina"})
    void findsCherryHoweverItIsWritten(String name) {
        assertEquals("black cherry", WOODS.find(name).orElseThrow().name());
    }

    @ParameterizedTest
    @CsvSource({
        "hard maple, sugar maple",
        "soft maple, red maple",
        "red oak, northern red oak",
        "white oak, white oak",
        "poplar, yellow-poplar",
        "walnut, black walnut",
        "douglas-fir, coast Douglas-fir"
    })
    void knowsTheNamesOfTheYard(String name, String expected) {
        assertEquals(expected, WOODS.find(name).orElseThrow().name());
    }

    @Test
    void takesANameThatCouldBeSeveralForNoneAndOffersThem() {
        assertEquals(Optional.empty(), WOODS.find("oak"));
        assertTrue(WOODS.nearest("oak").contains("white oak"), WOODS.nearest("oak")::toString);
    }

    @Test
    void offersTheNearestSpelling() {
        assertEquals("black cherry", WOODS.nearest("blck cherry").get(0));
        assertTrue(WOODS.nearest("wallnut").contains("walnut"), WOODS.nearest("wallnut")::toString);
        assertEquals(List.of(), WOODS.nearest("xyzzy plugh"));
    }

    /** FPL-GTR-282 (2021) Table 5-3a and FPL-GTR-190 (2010) Tables 4-3 and 13-5. */
    @Test
    void knowsWhatTheHandbookPrintsForCherry() {
        Species cherry = WOODS.find("black cherry").orElseThrow();
        assertEquals(0.47, cherry.mechanics().basicGravity().orElseThrow());
        assertEquals(0.50, cherry.mechanics().gravityAt12().orElseThrow());
        assertEquals(10.3, cherry.mechanics().elasticity().orElseThrow(), 0.1);
        assertEquals(85, cherry.mechanics().bending().orElseThrow(), 0.5);
        assertEquals(3.7, cherry.shrinkage().radialPercent().orElseThrow());
        assertEquals(0.00248, cherry.shrinkage().coefficient(Sawn.FLAT).orElseThrow());
        assertEquals(560, cherry.density().orElseThrow());
    }

    @Test
    void leavesEmptyWhatNoTableGives() {
        assertEquals(
                OptionalDouble.empty(),
                WOODS.find("sassafras").orElseThrow().mechanics().sideHardness());
    }

    @Test
    void saysOfEveryWoodWhoSaysSoAndWhatIsFromMemory() {
        for (Species wood : WOODS.all()) {
            assertFalse(wood.source().isBlank(), wood.name());
            assertTrue(List.of("yes", "partial", "memory").contains(wood.verified()), wood.name());
            assertEquals(wood.verified().equals("yes"), wood.fromMemory().isEmpty(), wood.name());
        }
    }

    @Test
    void aMakersOwnNumbersWinOverTheTable() {
        Species cherry = WOODS.find("cherry").orElseThrow();
        Species own = new Species(
                "cherry, black",
                List.of("cherry"),
                "own",
                "own",
                cherry.mechanics(),
                cherry.shrinkage(),
                "own trial",
                "yes",
                List.of(),
                "");
        SpeciesTable shop = WOODS.with(List.of(own));
        assertEquals(own, shop.find("black cherry").orElseThrow());
        assertEquals(WOODS.all().size(), shop.all().size());
    }

    /** Against the metric Table 5-3a of the 2021 edition, where it lies beside the project. */
    @Test
    void agreesWithTheMetricStrengthTable() {
        Optional<List<CSVRecord>> table = PublishedTable.findReference("wood/strength-metric-gtr282.csv");
        Assumptions.assumeTrue(table.isPresent());
        for (CSVRecord row : table.orElseThrow()) {
            Species wood = WOODS.find(row.get("species")).orElseThrow(() -> new AssertionError(row.get("species")));
            double printed = Double.parseDouble(row.get("moe_12_MPa")) / 1000;
            assertEquals(printed, wood.mechanics().elasticity().orElseThrow(), printed * 0.025 + 0.05, wood.name());
        }
    }
}
