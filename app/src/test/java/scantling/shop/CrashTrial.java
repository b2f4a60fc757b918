package scantling.shop;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Kills a writing process at seeded moments and looks at what is left: every answered act is there, none by halves, the
 * file is sound, and the shop is what the same acts make of a shop that was never killed.
 */
public final class CrashTrial {
    private static final long PATIENCE_SECONDS = 60;

    private final Path folder;
    private final Path mirrorFolder;
    private final long seed;
    private final Random random;
    private final List<String> faults = new ArrayList<>();
    private long answered;
    private long lost;

    /** @param place an empty folder to work in */
    public CrashTrial(Path place, long seed) {
        this.folder = place.resolve("shop");
        this.mirrorFolder = place.resolve("mirror");
        this.seed = seed;
        this.random = new Random(seed);
    }

    /**
     * What a run came to.
     *
     * @param kills how often the process was killed
     * @param answered acts it had said yes or no to
     * @param lost of those, how many are not there
     * @param faults everything else that is wrong, in words
     */
    public record Result(int kills, long answered, long lost, List<String> faults) {}

    /** Kills so many times. */
    public Result run(int kills) throws IOException, InterruptedException {
        try (TestShop mirror = new TestShop(mirrorFolder)) {
            for (int kill = 1; kill <= kills; kill++) {
                long said = writeAndKill();
                look(mirror, kill, said);
            }
        }
        return new Result(kills, answered, lost, List.copyOf(faults));
    }

    private long writeAndKill() throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        classPath(),
                        CrashWriter.class.getName(),
                        folder.toString(),
                        String.valueOf(seed))
                .redirectErrorStream(true)
                .start();
        AtomicLong last = new AtomicLong();
        Thread reader = new Thread(() -> listen(process, last));
        reader.start();
        boolean early = random.nextInt(5) == 0;
        long from = System.nanoTime();
        while (!early && last.get() == 0 && process.isAlive() && seconds(from) < PATIENCE_SECONDS) {
            Thread.sleep(1);
        }
        Thread.sleep(early ? random.nextInt(600) : random.nextInt(150));
        process.destroyForcibly();
        process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS);
        reader.join();
        return last.get();
    }

    private static long seconds(long from) {
        return TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - from);
    }

    private void listen(Process process, AtomicLong last) {
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (line.matches("answered \\d+")) {
                    last.set(Long.parseLong(line.substring("answered ".length())));
                } else if (!line.equals("open")
                        && !"answered ".startsWith(line.substring(0, Math.min(1, line.length())))) {
                    faults.add("the process said: " + line);
                }
            }
        } catch (IOException cutOffByTheKill) {
            return;
        }
    }

    /** The tests' own class path, however they were started. */
    private static String classPath() {
        ClassLoader loader = Thread.currentThread().getContextClassLoader();
        Stream<String> more = loader instanceof URLClassLoader urls
                ? Stream.of(urls.getURLs()).map(CrashTrial::path)
                : Stream.empty();
        return Stream.concat(Stream.of(System.getProperty("java.class.path")), more)
                .collect(Collectors.joining(java.io.File.pathSeparator));
    }

    private static String path(URL url) {
        try {
            return Path.of(url.toURI()).toString();
        } catch (java.net.URISyntaxException noFile) {
            throw new UncheckedIOException(new IOException(noFile));
        }
    }

    private void look(TestShop mirror, int kill, long said) {
        try (TestShop left = new TestShop(folder)) {
            long there = left.store().version();
            long before = mirror.store().version();
            answered += Math.max(0, said - before);
            lost += Math.max(0, said - there);
            CrashActs acts = new CrashActs(seed);
            for (long number = before + 1; number <= there; number++) {
                mirror.store().take(acts.at(number));
            }
            boolean same = mirror.state().equals(left.state())
                    && mirror.store()
                            .lastActs(Integer.MAX_VALUE)
                            .equals(left.store().lastActs(Integer.MAX_VALUE));
            if (!same) {
                faults.add("after kill %d the shop is not what its %d acts make of one".formatted(kill, there));
            }
        } catch (ShopTrouble trouble) {
            faults.add("after kill %d: %s".formatted(kill, trouble.getMessage()));
        }
    }
}
