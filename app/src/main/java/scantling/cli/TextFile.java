package scantling.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads and writes files for the commands. What cannot be read or written is a {@link Failure} in plain words. */
final class TextFile {
    /** More than any piece needs; a larger file is not read at all. */
    static final int LARGEST = 2_000_000;

    private static final String NOTHING = " Nothing was left there by halves.";

    private TextFile() {}

    /** A file's name as it can be written behind a command: between quotes when it has spaces. */
    static String said(Object file) {
        String name = file.toString();
        return name.contains(" ") ? '"' + name + '"' : name;
    }

    /** The bytes of a file of at most {@link #LARGEST}. */
    static byte[] read(Path file) {
        return read(file, LARGEST, "that is no description of a piece");
    }

    /** The bytes of a file. @param most how many there may be @param tooMany what one with more is not */
    static byte[] read(Path file, int most, String tooMany) {
        if (Files.isDirectory(file)) {
            throw new Failure("%s is a folder. Name the text file of a piece.".formatted(file));
        }
        if (!Files.exists(file)) {
            throw new Failure("%s is not there. Look at the spelling, or start one with: scantling new %s"
                    .formatted(file, said(file.getFileName())));
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(most + 1);
            if (bytes.length > most) {
                throw new Failure(
                        "%s holds more than %d million bytes; %s.".formatted(file, most / 1_000_000, tooMany));
            }
            return bytes;
        } catch (IOException unreadable) {
            throw new Failure("%s cannot be read (%s).".formatted(file, reason(unreadable)));
        }
    }

    /** Puts new text in place of a file's in one step, so that a half-written file is never seen. */
    static void replace(Path file, String text) {
        try {
            Path target = file.toRealPath();
            Path draft = draftFor(target);
            try {
                Files.write(draft, text.getBytes(StandardCharsets.UTF_8));
                move(draft, target);
            } finally {
                Files.deleteIfExists(draft);
            }
        } catch (IOException unwritable) {
            throw new Failure("%s cannot be written (%s). It is as it was.".formatted(file, reason(unwritable)));
        }
    }

    /** Writes a new file. */
    static void create(Path file, byte[] bytes) {
        if (Files.exists(file)) {
            throw new Failure("%s is already there. Choose another name.".formatted(file));
        }
        writeAll(
                parent(file.toAbsolutePath()),
                Map.of(file.toAbsolutePath().getFileName().toString(), bytes));
    }

    /** Refuses a folder that cannot be written, before any work is done for it. */
    static void expectWritable(Path folder) {
        Path there = folder.toAbsolutePath().normalize();
        while (!Files.exists(there, LinkOption.NOFOLLOW_LINKS)) {
            there = parent(there);
        }
        if (!Files.isDirectory(there)) {
            throw new Failure(
                    "%s cannot be written to (a file stands where a folder is needed).".formatted(folder) + NOTHING);
        }
        if (!Files.isWritable(there)) {
            throw new Failure("%s cannot be written to (permission denied).".formatted(folder) + NOTHING);
        }
    }

    /** Writes several files into a folder: all of them, or none. */
    static void writeAll(Path folder, Map<String, byte[]> files) {
        List<Path> drafts = new ArrayList<>();
        try {
            Files.createDirectories(folder);
            Map<Path, Path> places = new LinkedHashMap<>();
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Path target = folder.resolve(file.getKey());
                Files.createDirectories(parent(target));
                Path draft = draftFor(target);
                drafts.add(draft);
                Files.write(draft, file.getValue());
                places.put(draft, target);
            }
            for (Map.Entry<Path, Path> place : places.entrySet()) {
                move(place.getKey(), place.getValue());
            }
        } catch (IOException unwritable) {
            throw new Failure("%s cannot be written to (%s).".formatted(folder, reason(unwritable)) + NOTHING);
        } finally {
            drafts.forEach(TextFile::forget);
        }
    }

    /** A hidden file beside the target, with the rights that new files have here; a draft left by a crash is written over. */
    private static Path draftFor(Path target) {
        return target.resolveSibling("." + target.getFileName() + ".draft");
    }

    private static void move(Path draft, Path target) throws IOException {
        try {
            Files.move(draft, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException otherVolume) {
            Files.move(draft, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void forget(Path draft) {
        try {
            Files.deleteIfExists(draft);
        } catch (IOException leftBehind) {
            // A draft that cannot be removed hides nothing and harms nothing: its name begins with a dot.
            return;
        }
    }

    private static Path parent(Path file) {
        Path parent = file.getParent();
        return parent == null ? Path.of(".") : parent;
    }

    private static String otherReason(String kind, @Nullable String message) {
        if (message == null) {
            return kind;
        }
        return message.endsWith("Not a directory") ? "a file stands where a folder is needed" : message;
    }

    private static String reason(IOException problem) {
        String kind = problem.getClass().getSimpleName().replaceAll("Exception$", "");
        return switch (kind) {
            case "AccessDenied" -> "permission denied";
            case "NoSuchFile" -> "no such folder";
            case "FileAlreadyExists", "NotDirectory" -> "a file stands where a folder is needed";
            default -> otherReason(kind, problem.getMessage());
        };
    }
}
