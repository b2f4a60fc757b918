package scantling.shop;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Turns what the file system and the database say into what the maker can use. */
final class Troubles {
    private Troubles() {}

    static ShopTrouble of(Path place, IOException problem) {
        String said = String.valueOf(problem.getMessage());
        if (problem instanceof AccessDeniedException
                || said.toLowerCase(Locale.ROOT).contains("read-only")) {
            return readOnly(place);
        }
        if (said.toLowerCase(Locale.ROOT).contains("no space left")) {
            return full(place);
        }
        String why = problem instanceof FileAlreadyExistsException
                ? "a file stands where a folder is needed"
                : problem.getClass().getSimpleName().replaceAll("Exception$", "") + ": " + said;
        return new ShopTrouble(
                ShopTrouble.Kind.OTHER, "%s cannot be used (%s). Nothing was changed.".formatted(place, why));
    }

    static ShopTrouble readOnly(Path place) {
        return new ShopTrouble(
                ShopTrouble.Kind.READ_ONLY,
                "%s cannot be written to. Give yourself the right to write there, or name another folder."
                        .formatted(place));
    }

    static ShopTrouble full(Path place) {
        return new ShopTrouble(
                ShopTrouble.Kind.DISK_FULL,
                "The disk that holds %s is full. The last act was not taken and nothing was changed; make room, then do it again."
                        .formatted(place));
    }

    static ShopTrouble damaged(Path file, String why) {
        return new ShopTrouble(
                ShopTrouble.Kind.DAMAGED,
                "%s is damaged (%s). It is left exactly as it is. %s"
                        .formatted(
                                file,
                                why,
                                Backups.newest(Backups.folder(file))
                                        .map(last ->
                                                "The last back-up is %s; \"scantling shop restore\" puts it in place and sets the damaged file aside."
                                                        .formatted(last.getFileName()))
                                        .orElse("There is no back-up beside it.")));
    }

    /** What the database said, wherever in a chain of causes it stands. */
    static ShopTrouble of(Path file, RuntimeException problem) {
        return sqlite(problem)
                .map(said -> of(file, said))
                .orElseGet(() -> new ShopTrouble(
                        ShopTrouble.Kind.OTHER, "%s cannot be used (%s).".formatted(file, problem.getMessage())));
    }

    private static ShopTrouble of(Path file, SQLiteException said) {
        SQLiteErrorCode code = said.getResultCode();
        String name = code.name();
        if (Stream.of("SQLITE_READONLY", "SQLITE_CANTOPEN", "SQLITE_PERM").anyMatch(name::startsWith)) {
            return readOnly(file);
        }
        if (name.startsWith("SQLITE_FULL") || name.startsWith("SQLITE_IOERR_WRITE")) {
            return full(file);
        }
        if (name.startsWith("SQLITE_CORRUPT") || name.startsWith("SQLITE_NOTADB")) {
            return damaged(file, code.message);
        }
        return new ShopTrouble(ShopTrouble.Kind.OTHER, "%s cannot be used (%s).".formatted(file, code.message));
    }

    static Optional<SQLiteException> sqlite(Throwable problem) {
        for (@Nullable Throwable at = problem; at != null; at = at.getCause()) {
            if (at instanceof SQLiteException said) {
                return Optional.of(said);
            }
        }
        return Optional.empty();
    }
}
