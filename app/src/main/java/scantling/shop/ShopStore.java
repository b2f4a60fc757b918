package scantling.shop;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import scantling.stock.Rack;

/**
 * A shop's memory, open. One process at a time holds a folder; within it, any number of threads may ask and act. What
 * {@link #take} answers with {@link Answer.Taken} is on the disk and survives whatever happens next.
 */
public final class ShopStore implements AutoCloseable {
    /** The shop's file inside its folder. */
    public static final String FILE = "shop.scantling";
    /** Entries of bench logs that are kept: a few MB. */
    private static final long LOGGED = 20_000;

    private final FolderLock lock;
    private final Database database;
    private final Journal journal;
    private final Devices devices;
    private final JobBook jobBook;
    private final Backups backups;
    private final BackupSchedule schedule;
    private final byte[] pageKey;
    private final Kept<Log, List<Logged>> logs = new Kept<>(LOGGED, log -> 1 + log.size());

    /** What the bench had said of a job when so many acts were taken. */
    private record Log(String job, long lastAct) {}

    private ShopStore(FolderLock lock, Database database, Backups backups, Clock clock, byte[] pageKey) {
        this.lock = lock;
        this.pageKey = pageKey;
        this.database = database;
        this.backups = backups;
        this.schedule = new BackupSchedule(() -> backups.makeIfDue(version()));
        this.journal = new Journal(database, clock);
        this.devices = new Devices(database, clock);
        this.jobBook = new JobBook(this);
    }

    /** Opens the shop in a folder, making both when they are not there. @throws ShopTrouble when it cannot be */
    public static ShopStore open(Path folder) {
        return open(folder, Clock.systemUTC());
    }

    /** The same by a clock of the caller's. @throws ShopTrouble when it cannot be */
    public static ShopStore open(Path folder, Clock clock) {
        FolderLock lock = FolderLock.take(folder);
        try {
            Path file = folder.toAbsolutePath().resolve(FILE);
            checkThere(file);
            Backups backups = new Backups(file, clock);
            Schema.bring(file, version -> backups.make(0, "before schema " + version));
            return new ShopStore(lock, Database.open(file), backups, clock, PageKey.of(folder, clock));
        } catch (ShopTrouble trouble) {
            lock.close();
            throw trouble;
        }
    }

    private static void checkThere(Path file) {
        if (Files.exists(file)) {
            Soundness.check(file);
        } else if (Backups.newest(Backups.folder(file)).isPresent()) {
            throw new ShopTrouble(
                    ShopTrouble.Kind.DAMAGED,
                    "%s is gone, but there are back-ups beside it. \"scantling shop restore\" puts the last one in place."
                            .formatted(file));
        }
    }

    /** Takes an act. @throws ShopTrouble when the disk or the file keeps it from being taken; then nothing has changed */
    public Answer take(Sent sent) {
        return journal.take(sent);
    }

    private <T> T read(Function<Shelves, T> question) {
        return database.read(handle -> question.apply(new Shelves(new Rows(handle))));
    }

    /** All jobs, by id. */
    public List<Job> jobs() {
        return read(Shelves::jobs);
    }

    /** One job. */
    public Optional<Job> job(String id) {
        return read(shelves -> shelves.job(id));
    }

    /** The text of a job that counts. */
    public Optional<Revision> text(String job) {
        return read(shelves -> shelves.job(job).flatMap(found -> shelves.revision(job, found.revision())));
    }

    /** Every text a job ever had, oldest first. */
    public List<Revision> revisions(String job) {
        return read(shelves -> shelves.revisions(job));
    }

    /** One text of a job. */
    public Optional<Revision> revision(String job, int number) {
        return read(shelves -> shelves.revision(job, number));
    }

    /** The text that would count if an act were taken back, or done again; empty when it changed no text. */
    public Optional<Revision> turned(String act) {
        return read(shelves -> shelves.turned(act));
    }

    /** Everything the bench ever said of a job, oldest first, what was taken back included and marked. */
    public List<Logged> bench(String job) {
        return read(shelves -> bench(shelves, job));
    }

    private List<Logged> bench(Shelves shelves, String job) {
        return logs.get(new Log(job, shelves.lastActOf(job)), () -> shelves.bench(job));
    }

    /** All clients, by id. */
    public List<Client> clients() {
        return read(Shelves::clients);
    }

    /** The rack with prices and places, in the order in which it was filled. */
    public List<OnHand> onHand() {
        return read(Shelves::onHand);
    }

    /** The rack as the planner takes it. */
    public Rack rack() {
        return read(Shelves::rack);
    }

    /** Hardware and finish on hand. */
    public List<Supply> supplies() {
        return read(Shelves::supplies);
    }

    /** What the shop has set for itself. */
    public ShopSettings settings() {
        return read(Shelves::settings);
    }

    /** The latest acts, newest first. @param most how many at most */
    public List<Recorded> lastActs(int most) {
        return read(shelves -> shelves.lastActs(most));
    }

    /** The number of the last act on a job; none for one that was never acted on. */
    public long lastActOf(String job) {
        return read(shelves -> shelves.lastActOf(job));
    }

    /** The number of the last act that was more than a note: until there is another, there is the same to do. */
    public long lastWork() {
        return read(Shelves::lastWork);
    }

    /** How many acts the journal holds: when it is as before, nothing has changed. */
    public long version() {
        return read(Shelves::version);
    }

    /** Keeps a photo; the same photo again is kept once. @return its id, for a note at the bench */
    public String keep(Photo photo) {
        database.write(handle -> handle.execute(
                "INSERT INTO photo (id, kind, bytes) VALUES (?, ?, ?) ON CONFLICT DO NOTHING",
                photo.id(),
                photo.kind(),
                photo.bytes()));
        return photo.id();
    }

    /** A photo that was kept. */
    public Optional<Photo> photo(String id) {
        return database.read(handle -> handle.createQuery("SELECT id, kind, bytes FROM photo WHERE id = ?")
                .bind(0, id)
                .map((row, context) -> new Photo(row.getString("id"), row.getString("kind"), row.getBytes("bytes")))
                .findFirst());
    }

    /** Who may come in. */
    public Devices devices() {
        return devices;
    }

    /** The plans of the jobs. */
    public JobBook jobBook() {
        return jobBook;
    }

    /** Copies the shop as it is now into the folder of back-ups. @return the copy */
    public Path backUp() {
        return backups.make(version(), Backups.ASKED);
    }

    /** Why the last back-up on schedule could not be made; empty when all is well. */
    public Optional<ShopTrouble> backUpTrouble() {
        return schedule.trouble();
    }

    /** The key of the stamps on pages, the same after the next start: 32 bytes, never to leave this machine. */
    public byte[] pageKey() {
        return pageKey.clone();
    }

    /** Writes everything but the paired devices into a new folder that people and programs can read. @throws ShopTrouble when it cannot be */
    public void exportTo(Path folder) {
        database.read(handle -> {
            ShopExport.write(handle, folder);
            return folder;
        });
    }

    /** What a job's plan follows from. @param before as it was read earlier, which stands while the journal has not grown */
    JobBook.Read inputs(String job, Optional<JobBook.Read> before) {
        return read(shelves -> {
            long version = shelves.version();
            return before.filter(known -> known.version() == version)
                    .orElseGet(() -> new JobBook.Read(version, shelves.inputs(job, () -> bench(shelves, job))));
        });
    }

    Database database() {
        return database;
    }

    @Override
    public void close() {
        // whatever the file says to its end, the folder is free for the next who opens it
        try {
            schedule.close();
            database.close();
        } finally {
            lock.close();
        }
    }
}
