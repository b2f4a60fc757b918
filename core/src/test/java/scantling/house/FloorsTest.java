package scantling.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The plan of the house: which room may see which. */
class FloorsTest {
    /** Rooms by floor, ground floor first. A room sees the floors below its own and nothing else of the house. */
    private static final List<List<String>> FLOORS = List.of(
            List.of("measure", "space"),
            List.of("timber", "stock"),
            List.of("piece"),
            List.of("construct"),
            List.of("feature"),
            List.of("joinery", "hardware"),
            List.of("milling", "cutting", "finishing", "checks"),
            List.of("route", "pricing"),
            List.of("plan"),
            List.of("drawing", "packet"));

    private static final List<String> SHELLS = List.of("cli", "shop", "web");

    /** Neighbours on one floor that one of them may see. */
    private static final List<String> NEIGHBOURS = List.of("space>measure", "stock>timber", "packet>drawing");

    /** The shells above the library, which have files, a clock and a database; seen when all is tested at once. */
    private static final ImportOption LIBRARY_ONLY =
            location -> SHELLS.stream().noneMatch(shell -> location.contains("/scantling/" + shell + "/"));

    private final JavaClasses house = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .withImportOption(LIBRARY_ONLY)
            .importPackages("scantling");

    @Test
    void aRoomSeesOnlyTheFloorsBelowItsOwn() {
        for (int floor = 0; floor < FLOORS.size(); floor++) {
            for (String room : FLOORS.get(floor)) {
                noClasses()
                        .that()
                        .resideInAPackage("scantling." + room + "..")
                        .should()
                        .dependOnClassesThat()
                        .resideInAnyPackage(notBelow(floor, room))
                        .because("what is derived flows one way, from the piece to the paper, so that a change above"
                                + " never reaches down (docs/decisions/0002)")
                        .allowEmptyShould(true)
                        .check(house);
            }
        }
    }

    private static String[] notBelow(int floor, String room) {
        return FLOORS.subList(floor, FLOORS.size()).stream()
                .flatMap(List::stream)
                .filter(other -> !other.equals(room) && !NEIGHBOURS.contains(room + ">" + other))
                .map(other -> "scantling." + other + "..")
                .toArray(String[]::new);
    }

    @Test
    void everyRoomHasItsFloor() {
        Set<String> rooms = new TreeSet<>();
        house.forEach(each -> rooms.add(each.getPackageName().split("\\.")[1]));
        FLOORS.forEach(rooms::removeAll);
        assertEquals(Set.of(), rooms, "rooms without a floor");
    }

    @Test
    void theLibraryHasNoFilesClockDatabaseOrWeb() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.sql..", "javax.sql..", "java.net.http..", "io.javalin..", "java.nio.file..")
                .because("the same input must give the same plan, bit for bit, wherever it runs")
                .check(house);
        noClasses()
                .should()
                .dependOnClassesThat()
                .haveNameMatching("java\\.io\\.File(|Reader|Writer|InputStream|OutputStream)|java\\.time\\.Clock")
                .because("reading and writing files and telling the time are the shells' work")
                .check(house);
        noClasses()
                .should()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .callMethod(Math.class, "random")
                .because("time and chance are passed in")
                .check(house);
    }

    @Test
    void roomsDoNotGoRoundInCircles() {
        slices().matching("scantling.(*)..").should().beFreeOfCycles().check(house);
    }
}
