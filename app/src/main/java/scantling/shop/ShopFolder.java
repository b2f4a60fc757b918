package scantling.shop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import scantling.plan.Shop;

/**
 * What can be done to a shop's folder without its pages: putting something in its place while it is closed, and looking at it
 * whoever has it open.
 */
public final class ShopFolder {
    private static final List<String> BESIDE = List.of("", "-wal", "-shm");

    private final Path folder;
    private final Path file;
    private final Clock clock;

    /** The shop in a folder. */
    public ShopFolder(Path folder, Clock clock) {
        this.folder = folder.toAbsolutePath().normalize();
        this.file = this.folder.resolve(ShopStore.FILE);
        this.clock = clock;
    }

    /** Where the shop is when the maker does not say: {@code scantling-shop} in their own folder. */
    public static Path usual() {
        return Path.of(System.getProperty("user.home", "."), "scantling-shop");
    }

    /** The back-ups there are, oldest first. */
    public List<Path> backups() {
        return Backups.all(Backups.folder(file));
    }

    /** Copies the shop as it is at this moment into its back-ups, open or not. @return the copy */
    public Path backUp() {
        long acts = read(handle -> new Shelves(new Rows(handle)).version());
        return new Backups(file, clock).make(acts, Backups.ASKED);
    }

    /**
     * Writes everything but the paired devices into a new folder that people and programs can read. Of a shop that is open it
     * is what was there at one moment, byte for byte what the closed shop would give; acts go on meanwhile.
     *
     * @throws ShopTrouble when there is no shop, or the folder cannot be written
     */
    public void exportTo(Path target) {
        read(handle -> {
            ShopExport.write(handle, target);
            return target;
        });
    }

    /** The shop as the planner takes it, open or not: its settings and its rack. @throws ShopTrouble when there is none */
    public Shop shop() {
        return read(handle -> {
            Shelves shelves = new Shelves(new Rows(handle));
            return shelves.settings().shop(shelves.rack());
        });
    }

    private <T> T read(Function<Handle, T> question) {
        if (!Files.exists(file) && backups().isEmpty()) {
            throw new ShopTrouble(
                    ShopTrouble.Kind.OTHER,
                    "There is no shop in %s: no %s lies there. Nothing was written.".formatted(folder, ShopStore.FILE));
        }
        try (ShopStore store = ShopStore.open(folder, clock)) {
            return store.database().read(question);
        } catch (ShopTrouble trouble) {
            if (trouble.kind() != ShopTrouble.Kind.IN_USE) {
                throw trouble;
            }
        }
        return readOpenElsewhere(question);
    }

    /** Whoever has it open writes on; what is read is all of one moment, and nothing is changed. */
    private <T> T readOpenElsewhere(Function<Handle, T> question) {
        Soundness.check(file);
        Schema.checkToday(file);
        return Database.guarded(file, () -> {
            try (Handle handle = Jdbi.open(Database.readOnly(file))) {
                return handle.inTransaction(question::apply);
            }
        });
    }

    /**
     * What restoring did.
     *
     * @param backup which back-up is in place now
     * @param setAside where the file that was there has been put; empty when there was none
     */
    public record Restored(Path backup, Optional<Path> setAside) {}

    /**
     * Puts a back-up in place. What is there now is set aside, never thrown away.
     *
     * @param name of one of {@link #backups}; empty for the newest
     * @throws ShopTrouble when there is no such back-up, it is damaged, or the shop is open
     */
    public Restored restore(Optional<String> name) {
        Path backup = backups().stream()
                .filter(one ->
                        name.map(String.valueOf(one.getFileName())::equals).orElse(true))
                .reduce((earlier, later) -> later)
                .orElseThrow(() -> new ShopTrouble(
                        ShopTrouble.Kind.OTHER,
                        name.map(asked -> "There is no back-up called \"%s\" in %s."
                                        .formatted(asked, Backups.folder(file)))
                                .orElse("There is no back-up in %s.".formatted(Backups.folder(file)))));
        try (FolderLock lock = FolderLock.take(folder)) {
            lock.held();
            Soundness.check(backup);
            return new Restored(backup, replaceWith(backup));
        } catch (IOException unwritable) {
            throw Troubles.of(folder, unwritable);
        }
    }

    /**
     * At every moment there is a file in place: the old one until the new one takes its name. The log beside the old one goes
     * first, because it must never be read into the new one; its copy is safe by then.
     */
    private Optional<Path> replaceWith(Path backup) throws IOException {
        Path draft = Disk.draft(file);
        Files.copy(backup, draft, StandardCopyOption.REPLACE_EXISTING);
        Optional<Path> aside = Files.exists(file) ? Optional.of(setAside()) : Optional.empty();
        for (String beside : BESIDE.subList(1, BESIDE.size())) {
            Files.deleteIfExists(folder.resolve(ShopStore.FILE + beside));
        }
        Disk.publish(draft, file);
        return aside;
    }

    private Path setAside() throws IOException {
        String moment =
                clock.instant().truncatedTo(ChronoUnit.SECONDS).toString().replace(':', '-');
        Path aside = folder.resolve("set aside").resolve(moment);
        for (int n = 2; Files.exists(aside); n++) {
            aside = folder.resolve("set aside").resolve(moment + " " + n);
        }
        Files.createDirectories(aside);
        for (String beside : BESIDE) {
            Path part = folder.resolve(ShopStore.FILE + beside);
            if (Files.exists(part)) {
                Path copy = aside.resolve(ShopStore.FILE + beside);
                Files.copy(part, copy);
                Disk.flush(copy);
            }
        }
        return aside;
    }

    /**
     * Makes a shop of an exported folder. Everything is read and checked before anything is put in place.
     *
     * @throws ShopTrouble when there is a shop already, or with everything that is wrong in what should be read in
     */
    public void importFrom(Path exported) {
        try (FolderLock lock = FolderLock.take(folder)) {
            lock.held();
            if (Files.exists(file)) {
                throw new ShopTrouble(
                        ShopTrouble.Kind.OTHER,
                        "There is a shop in %s already. Read the exported one into another folder.".formatted(folder));
            }
            Path draft = Disk.draft(file);
            try {
                ShopImport.read(exported, draft);
                Disk.publish(draft, file);
            } finally {
                for (String beside : BESIDE) {
                    Files.deleteIfExists(draft.resolveSibling(draft.getFileName() + beside));
                }
            }
        } catch (IOException unwritable) {
            throw Troubles.of(folder, unwritable);
        }
    }
}
