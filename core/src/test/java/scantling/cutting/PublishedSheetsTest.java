package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import scantling.measure.Length;

/**
 * Berkey and Wang 1987, Martello and Vigo 1998: best known values as collected by Gardeyn and Wauters 2022. A plan below a
 * proven bound, or a bound of ours above a plan that someone has, means that something here is broken.
 */
class PublishedSheetsTest {
    private static Optional<Path> folder() {
        Path root = Path.of(System.getProperty("scantling.root", ".")).toAbsolutePath();
        for (Path at = root; at != null; at = at.getParent()) {
            Path found = at.resolve("shared").resolve("benchmarks");
            if (Files.isDirectory(found)) {
                return Optional.of(found);
            }
        }
        System.out.println("Published instances are not beside the checkout; skipped.");
        return Optional.empty();
    }

    private static List<String[]> rows(Path folder, String file) throws IOException {
        return Files.readAllLines(folder.resolve(file)).stream()
                .skip(1)
                .map(l -> l.split(","))
                .toList();
    }

    @Test
    void noPlanIsBelowAProvenBoundAndNoBoundAboveAKnownPlan() throws IOException {
        Optional<Path> folder = folder();
        if (folder.isEmpty()) {
            return;
        }
        Map<String, String[]> best = new LinkedHashMap<>();
        for (String[] row : rows(folder.get(), "guillotine-best-known.csv")) {
            best.put(row[0] + " " + row[1], row);
        }
        for (boolean turn : new boolean[] {true, false}) {
            for (Map.Entry<String, CutJob> e : jobs(folder.get(), turn).entrySet()) {
                String[] known = Objects.requireNonNull(best.get(e.getKey() + (turn ? " 2BP|R|G" : " 2BP|O|G")));
                CutPlan plan = SawPlans.sheets(e.getValue(), new Effort(50, 1), () -> false);
                assertTrue(plan.cost() >= Long.parseLong(known[3]), e.getKey());
                assertTrue(plan.lowerBound() <= Long.parseLong(known[2]), e.getKey());
                assertTrue(plan.cost() <= 1.2 * Long.parseLong(known[2]) + 1, e.getKey());
            }
        }
    }

    /** Small ones of classes 5 and 8, where a sheet holds few parts: the best known number is reached by the bound. */
    @Test
    void setsOfPartsProveTheBestKnownNumberOfSheets() throws IOException {
        Optional<Path> folder = folder();
        if (folder.isEmpty()) {
            return;
        }
        for (String name : List.of("berkey1987/Class_05.2bp_20_1", "martello1998/Class_08.2bp_20_1")) {
            Bounds bounds = new Bounds(new Problem(job(parts(folder.get(), name), false), 0, FirstCut.ANY));
            SetPlans sets = bounds.sets(() -> false).orElseThrow();

            assertEquals(known(folder.get(), name, "2BP|O|G"), bounds.bySets(sets, List.of()), name);
        }
    }

    /** Three stages, first cut along, a last cut to trim (3NHO): reached where strips and columns grow and shrink with what they hold. */
    @Test
    void threeStagesReachTheBestKnownNumberOfSheets() throws IOException {
        Optional<Path> folder = folder();
        if (folder.isEmpty()) {
            return;
        }
        for (String name : List.of(
                "berkey1987/Class_03.2bp_20_9", "berkey1987/Class_03.2bp_40_1", "martello1998/Class_08.2bp_20_8")) {
            CutJob any = job(parts(folder.get(), name), false);
            Saw saw = new Saw(Length.ZERO, Length.ZERO, 3, FirstCut.ALONG);
            CutJob job = new CutJob(saw, any.keep(), any.stock(), any.parts(), Wishes.MONEY_ONLY);

            assertEquals(
                    known(folder.get(), name, "3NHO"),
                    SawPlans.sheets(job, new Effort(20_000, 1), () -> false).cost(),
                    name);
        }
    }

    private static List<String[]> parts(Path folder, String name) throws IOException {
        return rows(folder, "guillotine-instances.csv").stream()
                .filter(row -> row[0].equals(name))
                .toList();
    }

    private static long known(Path folder, String name, String variant) throws IOException {
        return rows(folder, "guillotine-best-known.csv").stream()
                .filter(row -> row[0].equals(name) && row[1].equals(variant))
                .mapToLong(row -> Long.parseLong(row[2]))
                .sum();
    }

    private static Map<String, CutJob> jobs(Path folder, boolean turn) throws IOException {
        Map<String, List<String[]>> groups = new LinkedHashMap<>();
        for (String[] row : rows(folder, "guillotine-instances.csv")) {
            groups.computeIfAbsent(row[0], k -> new ArrayList<>()).add(row);
        }
        Map<String, CutJob> jobs = new LinkedHashMap<>();
        int at = 0;
        for (Map.Entry<String, List<String[]>> e : groups.entrySet()) {
            if (at++ % 10 == 3) {
                jobs.put(e.getKey(), job(e.getValue(), turn));
            }
        }
        return jobs;
    }

    private static CutJob job(List<String[]> rows, boolean turn) {
        Stock sheet =
                new Stock.SheetStock("sheet", length(rows.get(0)[1]), length(rows.get(0)[2]), OptionalInt.empty(), 1);
        List<CutPart> parts = rows.stream()
                .map(r -> new CutPart(r[3], length(r[4]), length(r[5]), 1, turn))
                .toList();
        return new CutJob(Saw.of(Length.ZERO), CutJob.Keep.USUAL, List.of(sheet), parts);
    }

    private static Length length(String number) {
        return Length.mm(Long.parseLong(number));
    }
}
