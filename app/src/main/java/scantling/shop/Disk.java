package scantling.shop;

import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Files that are there whole or not at all, also after the power fails. */
final class Disk {
    private Disk() {}

    static Path draft(Path target) {
        return target.resolveSibling(target.getFileName() + ".draft");
    }

    /** Flushes a finished draft and puts it where it belongs in one step. */
    static void publish(Path draft, Path target) throws IOException {
        flush(draft);
        Files.move(draft, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        Path folder = target.toAbsolutePath().getParent();
        if (folder != null) {
            flushFolder(folder);
        }
    }

    static void flush(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** Where a system does not let a folder be opened, it has no need of it either. */
    private static void flushFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException notOnThisSystem) {
            return;
        }
    }

    /** The bytes of a file of at most some size. @throws IOException when it is larger, too */
    static byte[] read(Path file, int most) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(most + 1);
            if (bytes.length > most) {
                throw new IOException("larger than %d bytes".formatted(most));
            }
            return bytes;
        }
    }
}
