package scantling.route.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import scantling.cutting.Natives;

/**
 * Published project instances through the same way as jobs of the shop. Best known values: the published solution lists of
 * the sets j30 and j60 (Kolisch and Sprecher 1996).
 */
class PublishedProjectsTest {
    private record Published(Network network, int makespan, int bound) {}

    private static Optional<Published> published(String name) {
        Path root = Path.of(System.getProperty("scantling.root", ".")).toAbsolutePath();
        for (Path at = root; at != null; at = at.getParent()) {
            Path folder = at.resolve("shared/benchmarks/schedule");
            if (Files.isDirectory(folder)) {
                return Optional.of(read(folder, name));
            }
        }
        System.out.println("Left out: no published project instances beside the checkout.");
        return Optional.empty();
    }

    private static Published read(Path folder, String name) {
        try {
            String[] row = Files.readAllLines(folder.resolve("best-known.csv")).stream()
                    .filter(line -> line.startsWith(name + ","))
                    .findFirst()
                    .orElseThrow()
                    .split(",");
            Network network = PublishedNetwork.read(Files.readString(folder.resolve(name)));
            return new Published(network, Integer.parseInt(row[1]), Integer.parseInt(row[2]));
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "j30/j301_1.sm",
                "j30/j305_4.sm",
                "j30/j3013_1.sm",
                "j30/j3029_3.sm",
                "j30/j3045_7.sm",
                "j60/j601_1.sm",
                "j60/j609_3.sm",
                "j60/j6013_2.sm",
                "j60/j6025_6.sm",
                "j60/j6045_10.sm"
            })
    void theFirstTimetableIsSoundNeverBetterThanAProvenBoundAndNearTheBestKnown(String name) {
        published(name).ifPresent(instance -> {
            Timetable first = Scheduler.schedule(instance.network(), Effort.FIRST);
            assertEquals(List.of(), TimetableCheck.problems(instance.network(), first));
            assertTrue(first.score().finish() >= instance.bound(), first::toString);
            assertTrue(first.bound().finish() <= instance.makespan(), first::toString);
            assertTrue(first.score().finish() <= instance.makespan() * 1.2, first::toString);
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"j30/j301_1.sm", "j30/j305_4.sm", "j30/j3045_7.sm", "j60/j601_1.sm"})
    void theSolverFindsTheProvenOptimumAndSaysSo(String name) {
        published(name).ifPresent(instance -> {
            Timetable best = Scheduler.schedule(instance.network(), Effort.THOROUGH);
            assertEquals(List.of(), TimetableCheck.problems(instance.network(), best));
            assertEquals(instance.makespan(), best.score().finish());
            if (Natives.LOADED) {
                assertEquals(Timetable.Status.BEST, best.status());
                assertEquals(instance.makespan(), best.bound().finish());
            }
        });
    }

    @Test
    void theSameInstanceAndEffortGiveTheSameTimetable() {
        published("j60/j6013_2.sm").ifPresent(instance -> {
            Effort effort = new Effort(100, 0.2, 60, 1, 1);
            assertEquals(
                    Scheduler.schedule(instance.network(), effort), Scheduler.schedule(instance.network(), effort));
        });
    }

    @Test
    void twoSolversSideBySideComeToTheProvenOptimum() {
        published("j30/j301_1.sm").ifPresent(instance -> {
            Timetable found = Scheduler.schedule(instance.network(), Effort.until(60, 2));
            assertEquals(instance.makespan(), found.score().finish());
            assertEquals(Timetable.Status.BEST, found.status());
        });
    }
}
