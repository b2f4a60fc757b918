package scantling.shop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;

/**
 * The key of the stamps on pages. It is kept beside the shop's file, for its owner's eyes only, so that a page left open while the
 * server is started anew may still send what was written on it.
 */
final class PageKey {
    private static final String FILE = "page-key";
    private static final int BYTES = 32;
    private static final Duration GOOD_FOR = Duration.ofDays(30);

    private PageKey() {}

    /** The key in a folder: a new one when there is none, when it is too old, and for this start only where it cannot be kept. */
    static byte[] of(Path folder, Clock clock) {
        Path file = folder.resolve(FILE);
        try {
            if (Files.exists(file) && isFresh(file, clock)) {
                byte[] key = Disk.read(file, BYTES);
                return key.length == BYTES ? key : kept(file);
            }
            return kept(file);
        } catch (IOException unreadable) {
            return random();
        }
    }

    private static boolean isFresh(Path file, Clock clock) throws IOException {
        Duration age = Duration.between(Files.getLastModifiedTime(file).toInstant(), clock.instant());
        return age.compareTo(GOOD_FOR) < 0;
    }

    private static byte[] kept(Path file) {
        byte[] key = random();
        Path draft = Disk.draft(file);
        try {
            Files.deleteIfExists(draft);
            Files.createFile(draft);
            hide(draft);
            Files.write(draft, key);
            Disk.publish(draft, file);
        } catch (IOException unwritable) {
            // the folder's own trouble is told by whoever opens the shop; pages of this start are stamped all the same
            return key;
        }
        return key;
    }

    private static void hide(Path file) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        if (view != null) {
            view.setPermissions(PosixFilePermissions.fromString("rw-------"));
        }
    }

    private static byte[] random() {
        byte[] key = new byte[BYTES];
        new SecureRandom().nextBytes(key);
        return key;
    }
}
