package scantling.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Measures instance by instance and writes each result down at once, so that a run that was broken off goes on where it
 * stood. Delete the file to measure anew.
 */
final class Runs {
    private final Path file;
    private final int threads;
    private final Map<String, String[]> done = new LinkedHashMap<>();

    private Runs(Path file, int threads) {
        this.file = file;
        this.threads = threads;
    }

    /** @param name of the file of results, below the folder {@code benchmarks/target/results} */
    static Runs open(String name, int threads) throws IOException {
        Path folder = Path.of(System.getProperty("scantling.root", "."), "benchmarks", "target", "results");
        Files.createDirectories(folder);
        Runs runs = new Runs(folder.resolve(name + ".csv"), threads);
        if (Files.exists(runs.file)) {
            for (String line : Files.readAllLines(runs.file)) {
                String[] cells = line.split(",");
                runs.done.put(cells[0], cells);
            }
        }
        return runs;
    }

    /** Measures all that are not yet measured. @return every result, the name of its instance first */
    List<String[]> measure(Map<String, Callable<String>> instances) throws IOException {
        ExecutorService workers = Executors.newFixedThreadPool(threads);
        List<Future<?>> open = new ArrayList<>();
        instances.forEach((name, work) -> {
            if (!done.containsKey(name)) {
                open.add(workers.submit(() -> {
                    note(name, work.call());
                    return name;
                }));
            }
        });
        workers.shutdown();
        for (Future<?> one : open) {
            finish(one);
        }
        return instances.keySet().stream()
                .map(name -> Objects.requireNonNull(done.get(name), name))
                .toList();
    }

    private static void finish(Future<?> one) throws IOException {
        try {
            one.get();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IOException("Broken off; what is measured is written down.", stopped);
        } catch (ExecutionException wrong) {
            throw new IllegalStateException(wrong.getCause());
        }
    }

    private synchronized void note(String name, String cells) throws IOException {
        String line = name + "," + cells;
        Files.write(
                file,
                (line + "\n").getBytes(StandardCharsets.UTF_8),
                StandardOpenOption.CREATE,
                StandardOpenOption.APPEND);
        done.put(name, line.split(","));
    }
}
