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

    private final Process process;
    private final int port;

    private Served(Process process, int port) {
        this.process = process;
        this.port = port;
    }

    /** Starts it and waits until it says where. @param said what it writes after that goes there */
    static Served start(Path data, List<String> options, Path said) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(property("java.home"), "bin", "java").toString());
        command.addAll(List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Djava.awt.headless=true"));
        command.addAll(options);
        command.addAll(List.of("-cp", absolute(property("java.class.path")), "scantling.cli.Main", "serve", "--data"));
        command.addAll(List.of(data.toString(), "--port", "0"));
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.appendTo(said.toFile()))
                .start();
        BufferedReader lines =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            Matcher port = PORT.matcher(line);
            if (port.find()) {
                return new Served(process, Integer.parseInt(port.group(1)));
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
