package scantling.bench.trust;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The shop's server as a process of its own, as {@code ./scantling serve} starts it. */
final class Served implements AutoCloseable {
    private static final Pattern PORT = Pattern.compile("localhost:(\\d+)/");
    private static final long PATIENCE_SECONDS = 60;

    private static final Pattern NETWORK = Pattern.compile("paired devices: (http://[0-9.]+:\\d+)/");
    private static final String READY = "Ctrl-C";
    /** As the launcher starts a server. */
    private static final List<String> USUAL = List.of(
            "-XX:+UseG1GC",
            "-XX:G1HeapRegionSize=4m",
            "-Xmx256m",
            "-XX:MetaspaceSize=96m",
            "-XX:ReservedCodeCacheSize=96m",
            "-Djava.awt.headless=true");

    private final Process process;
    private final int port;
    private final Optional<String> network;

    private Served(Process process, int port, Optional<String> network) {
        this.process = process;
        this.port = port;
        this.network = network;
    }

    /** Starts it and waits until it says where. @param said what it writes after that goes there */
    static Served start(Path data, List<String> options, Path said) throws IOException {
        return start(data, options, List.of(), said);
    }

    /** The same for paired devices on the network, too. */
    static Served onNetwork(Path data, Path said) throws IOException {
        return start(data, List.of(), List.of("--lan"), said);
    }

    private static Served start(Path data, List<String> options, List<String> asked, Path said) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(property("java.home"), "bin", "java").toString());
        command.addAll(USUAL);
        command.addAll(options);
        command.addAll(List.of("-cp", absolute(property("java.class.path")), "scantling.cli.Main", "serve", "--data"));
        command.addAll(List.of(data.toString(), "--port", "0"));
        command.addAll(asked);
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.appendTo(said.toFile()))
                .start();
        BufferedReader lines =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        int port = 0;
        Optional<String> network = Optional.empty();
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            Matcher here = PORT.matcher(line);
            port = here.find() ? Integer.parseInt(here.group(1)) : port;
            Matcher there = NETWORK.matcher(line);
            network = network.isEmpty() && there.find() ? Optional.of(there.group(1)) : network;
            if (line.contains(READY)) {
                return new Served(process, port, network);
            }
        }
        throw new IOException("the server did not start; see " + said);
    }

    private static String property(String name) {
        return Optional.ofNullable(System.getProperty(name)).orElse("");
    }

    private static String absolute(String classPath) {
        List<String> each = new ArrayList<>();
        for (String part : classPath.split(File.pathSeparator, -1)) {
            each.add(Path.of(part).toAbsolutePath().toString());
        }
        return String.join(File.pathSeparator, each);
    }

    int port() {
        return port;
    }

    /** Where a phone finds it; empty on a machine without a network. */
    Optional<String> network() {
        return network;
    }

    boolean isAlive() {
        return process.isAlive();
    }

    /** Resident memory in MB, as Linux tells it; 0 where nobody tells. */
    long resident() throws IOException {
        Path status = Path.of("/proc", String.valueOf(process.pid()), "status");
        return Files.exists(status)
                ? Files.readAllLines(status).stream()
                                .filter(line -> line.startsWith("VmRSS:"))
                                .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
                                .findFirst()
                                .orElse(0)
                        / 1024
                : 0;
    }

    /** SIGKILL. */
    void kill() throws InterruptedException {
        process.destroyForcibly();
        process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS);
    }

    /** SIGTERM, as a system that is shut down sends it. @return seconds until it was gone */
    double stop() throws InterruptedException {
        long start = System.nanoTime();
        process.destroy();
        process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS);
        return (System.nanoTime() - start) / 1e9;
    }

    @Override
    public void close() {
        process.destroy();
        try {
            if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                process.destroyForcibly();
            }
        } catch (InterruptedException stopped) {
            process.destroyForcibly();
            Thread.currentThread().interrupt();
        }
    }
}
