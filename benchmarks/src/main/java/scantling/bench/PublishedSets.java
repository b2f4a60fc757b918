package scantling.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import scantling.cutting.CutJob;
import scantling.cutting.CutPart;
import scantling.cutting.FirstCut;
import scantling.cutting.Saw;
import scantling.cutting.Stock;
import scantling.cutting.Wishes;
import scantling.measure.Length;

/** Reads the published instances, which lie in the folder shared/benchmarks beside the checkout. */
final class PublishedSets {
    private PublishedSets() {}

    static Path folder() {
        Path root = Path.of(System.getProperty("scantling.root", ".")).toAbsolutePath();
        for (Path at = root; at != null; at = at.getParent()) {
            Path found = at.resolve("shared").resolve("benchmarks");
            if (Files.isDirectory(found)) {
                return found;
            }
        }
        throw new IllegalStateException("No folder shared/benchmarks beside (%s).".formatted(root));
    }

    static List<String[]> rows(String file) throws IOException {
        return Files.readAllLines(folder().resolve(file)).stream()
                .skip(1)
                .map(line -> line.split(","))
                .toList();
    }

    /** The two-dimensional instances, no kerf, cost 1 a sheet. */
    static Map<String, CutJob> sheets(boolean turn, int stages, FirstCut first) throws IOException {
        Map<String, List<CutPart>> parts = new LinkedHashMap<>();
        Map<String, Stock> stock = new LinkedHashMap<>();
        for (String[] row : rows("guillotine-instances.csv")) {
            stock.putIfAbsent(
                    row[0], new Stock.SheetStock("sheet", length(row[1]), length(row[2]), OptionalInt.empty(), 1));
            parts.computeIfAbsent(row[0], k -> new ArrayList<>())
                    .add(new CutPart(row[3], length(row[4]), length(row[5]), 1, turn));
        }
        Saw saw = new Saw(Length.ZERO, Length.ZERO, stages, first);
        return jobs(saw, stock, parts);
    }

    /** The one-dimensional instances. */
    static Map<String, CutJob> sticks() throws IOException {
        Map<String, List<CutPart>> parts = new LinkedHashMap<>();
        Map<String, Stock> stock = new LinkedHashMap<>();
        for (String[] row : rows("sticks-instances.csv")) {
            stock.putIfAbsent(row[0], new Stock.StickStock("stick", length(row[1]), OptionalInt.empty(), 1));
            parts.computeIfAbsent(row[0], k -> new ArrayList<>())
                    .add(CutPart.stick(row[2], length(row[2]), Integer.parseInt(row[3])));
        }
        return jobs(Saw.of(Length.ZERO), stock, parts);
    }

    private static Map<String, CutJob> jobs(Saw saw, Map<String, Stock> stock, Map<String, List<CutPart>> parts) {
        Map<String, CutJob> jobs = new LinkedHashMap<>();
        parts.forEach((name, list) ->
                jobs.put(name, new CutJob(saw, CutJob.Keep.USUAL, List.of(stock.get(name)), list, Wishes.MONEY_ONLY)));
        return jobs;
    }

    /**
     * Says stop when this thread, and others while it waits for them, have had their seconds of processor time: on a machine
     * that does other things too, the clock on the wall would measure those.
     */
    static BooleanSupplier after(double seconds) {
        ProcessorTime time = new ProcessorTime();
        return () -> time.seconds() > seconds;
    }

    private static Length length(String number) {
        return Length.mm(Long.parseLong(number));
    }
}
