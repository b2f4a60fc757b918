package scantling.shop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.sqlite.SQLiteConfig;

/**
 * The back-ups beside a shop's file: whole copies of one moment, checked before they count. Named by their moment, the
 * number of acts they hold and why they were made, as in {@code 2026-03-02T08-00-00Z 154 daily.scantling}.
 */
final class Backups {
    static final String DAILY = "daily";
    static final String ASKED = "asked for";

    private static final String ENDING = ".scantling";
    private static final Duration DAY = Duration.ofDays(1);
    private static final int KEPT_LATEST = 14;
    private static final int KEPT_MONTHS = 12;
    private static final int MONTH_LETTERS = "2026-03".length();

    private final Path file;
    private final Clock clock;

    Backups(Path file, Clock clock) {
        this.file = file;
        this.clock = clock;
    }

    static Path folder(Path file) {
        return file.resolveSibling("back-ups");
    }

    static List<Path> all(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ENDING))
                    .sorted(Comparator.comparing(Backups::name))
                    .toList();
        } catch (IOException unreadable) {
            return List.of();
        }
    }

    static Optional<Path> newest(Path folder) {
        List<Path> all = all(folder);
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }

    /** Copies the shop as it is at this moment; acts go on meanwhile. @throws ShopTrouble when it cannot be */
    Path make(long acts, String why) {
        Path folder = folder(file);
        Path target = free(folder, acts, why);
        Path draft = Disk.draft(target);
        try {
            Files.createDirectories(folder);
            Files.deleteIfExists(draft);
            copy(draft);
            Soundness.check(draft);
            Disk.publish(draft, target);
            thin(folder);
            return target;
        } catch (IOException unwritable) {
            throw Troubles.of(folder, unwritable);
        } finally {
            forget(draft);
        }
    }

    private Path free(Path folder, long acts, String why) {
        String moment =
                clock.instant().truncatedTo(ChronoUnit.SECONDS).toString().replace(':', '-');
        Path target = folder.resolve("%s %d %s%s".formatted(moment, acts, why, ENDING));
        for (int n = 2; Files.exists(target); n++) {
            target = folder.resolve("%s %d %s %d%s".formatted(moment, acts, why, n, ENDING));
        }
        return target;
    }

    private void copy(Path draft) {
        Database.guarded(file, () -> {
            try (Connection connection = Database.source(file, SQLiteConfig.TransactionMode.DEFERRED)
                            .getConnection();
                    PreparedStatement copy = connection.prepareStatement("VACUUM INTO ?")) {
                copy.setString(1, draft.toString());
                copy.execute();
                return true;
            }
        });
    }

    private static void forget(Path draft) {
        try {
            Files.deleteIfExists(draft);
        } catch (IOException leftBehind) {
            // A draft is no back-up and is written over by the next one.
            return;
        }
    }

    /** Copies the shop when it has changed and the last copy is a day old. @return the copy, if one was due */
    Optional<Path> makeIfDue(long acts) {
        Optional<Path> newest = newest(folder(file));
        boolean due = acts > 0
                && newest.map(last -> actsIn(last) != acts && isOld(last)).orElse(true);
        return due ? Optional.of(make(acts, DAILY)) : Optional.empty();
    }

    private static long actsIn(Path backup) {
        String[] words = name(backup).split(" ");
        return words.length > 2 && words[1].matches("\\d{1,18}") ? Long.parseLong(words[1]) : -1;
    }

    private boolean isOld(Path backup) {
        String moment = name(backup).split(" ")[0];
        try {
            Instant made = Instant.parse(moment.replaceAll("T(\\d\\d)-(\\d\\d)-(\\d\\d)", "T$1:$2:$3"));
            return Duration.between(made, clock.instant()).compareTo(DAY) >= 0;
        } catch (DateTimeParseException notNamedByUs) {
            return true;
        }
    }

    /** Keeps the latest, the last of each month for a year, and every one made before a change of the schema. */
    private static void thin(Path folder) throws IOException {
        List<Path> all = all(folder);
        Set<String> months = new TreeSet<>();
        for (int i = all.size() - 1; i >= 0; i--) {
            String name = name(all.get(i));
            boolean lastOfMonth = months.add(name.substring(0, Math.min(MONTH_LETTERS, name.length())))
                    && months.size() <= KEPT_MONTHS;
            boolean latest = i >= all.size() - KEPT_LATEST;
            if (!latest && !lastOfMonth && name.contains(DAILY)) {
                Files.delete(all.get(i));
            }
        }
    }
}
