package scantling.shop;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A disk of three megabytes mounted on a folder, where the system lets a test make one; else the test is skipped and says so. */
public final class SmallDisk implements AutoCloseable {
    private static final long PATIENCE_SECONDS = 60;

    private final Path folder;

    private SmallDisk(Path folder) {
        this.folder = folder;
    }

    /** Mounts it. */
    public static SmallDisk on(Path folder) {
        SmallDisk disk = new SmallDisk(folder);
        disk.mount("-t", "tmpfs", "-o", "size=3m", "none");
        return disk;
    }

    /** A file on it. */
    public Path at(String name) {
        return folder.resolve(name);
    }

    /** From now on nothing can be written to it. */
    public void makeReadOnly() {
        mount("-o", "remount,ro");
    }

    private void mount(String... how) {
        boolean mounted =
                run(Stream.concat(Stream.concat(Stream.of("mount"), Stream.of(how)), Stream.of(folder.toString()))
                        .toList());
        if (!mounted) {
            System.out.println("skipped: this system does not let a test make a small disk of its own");
        }
        assumeTrue(mounted, "no small disk of its own here");
    }

    private static boolean run(List<String> command) {
        try {
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (IOException noSuchCommand) {
            return false;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    @Override
    public void close() {
        run(List.of("umount", folder.toString()));
    }
}
