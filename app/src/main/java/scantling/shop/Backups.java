package scantling.shop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The back-ups beside a shop's file. */
final class Backups {
    private static final String ENDING = ".scantling";

    private Backups() {}

    static Path folder(Path file) {
        return file.resolveSibling("back-ups");
    }

    static List<Path> all(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ENDING))
                    .sorted(Comparator.comparing(Path::toString))
                    .toList();
        } catch (IOException unreadable) {
            return List.of();
        }
    }

    static Optional<Path> newest(Path folder) {
        List<Path> all = all(folder);
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }
}
