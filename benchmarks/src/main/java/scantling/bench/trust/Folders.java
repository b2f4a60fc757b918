package scantling.bench.trust;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Whole folders. */
final class Folders {
    private Folders() {}

    static void delete(Path folder) throws IOException {
        if (Files.exists(folder)) {
            for (Path file : all(folder, Comparator.reverseOrder())) {
                Files.deleteIfExists(file);
            }
        }
    }

    static void copy(Path from, Path to) throws IOException {
        for (Path file : all(from, Comparator.naturalOrder())) {
            Path there = to.resolve(from.relativize(file).toString());
            if (Files.isDirectory(file)) {
                Files.createDirectories(there);
            } else {
                Files.copy(file, there);
            }
        }
    }

    static List<Path> files(Path folder) throws IOException {
        return all(folder, Comparator.naturalOrder()).stream()
                .filter(Files::isRegularFile)
                .toList();
    }

    private static List<Path> all(Path folder, Comparator<Path> order) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.sorted(order).toList();
        }
    }
}
