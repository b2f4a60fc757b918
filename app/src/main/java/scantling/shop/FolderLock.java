package scantling.shop;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Keeps a second Scantling out of a shop's folder. The system lets go of it when the process ends, however it ends. */
final class FolderLock implements AutoCloseable {
    private static final String NAME = "in-use.lock";

    private final FileChannel channel;

    private FolderLock(FileChannel channel) {
        this.channel = channel;
    }

    /** Takes the folder, making it when it is not there. */
    static FolderLock take(Path folder) {
        try {
            Files.createDirectories(folder);
            Path file = folder.resolve(NAME);
            FileChannel channel = FileChannel.open(
                    file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
            if (lock(channel).isEmpty()) {
                String who = Files.readString(file, StandardCharsets.UTF_8).strip();
                channel.close();
                throw inUse(folder, who);
            }
            channel.truncate(0);
            channel.write(
                    ByteBuffer.wrap(Long.toString(ProcessHandle.current().pid()).getBytes(StandardCharsets.UTF_8)));
            return new FolderLock(channel);
        } catch (IOException unwritable) {
            throw Troubles.of(folder, unwritable);
        }
    }

    private static Optional<FileLock> lock(FileChannel channel) throws IOException {
        try {
            @Nullable FileLock lock = channel.tryLock();
            return Optional.ofNullable(lock);
        } catch (OverlappingFileLockException thisVeryProcess) {
            return Optional.empty();
        }
    }

    private static ShopTrouble inUse(Path folder, String process) {
        return new ShopTrouble(
                ShopTrouble.Kind.IN_USE,
                "The shop in %s is already open%s. Use the one that is open, or close it first."
                        .formatted(folder, process.isEmpty() ? "" : " (process %s)".formatted(process)));
    }

    /** @throws IllegalStateException when it has been let go */
    void held() {
        if (!channel.isOpen()) {
            throw new IllegalStateException("The folder is no longer held.");
        }
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException closedAnyway) {
            // The system lets go of the lock with the channel or with the process; there is nothing left to do.
            return;
        }
    }
}
