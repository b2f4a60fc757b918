package scantling.shop;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import javax.sql.DataSource;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * The open database: one connection that writes, one that reads. A write is on the disk when {@link #write} returns: the
 * log ahead of the file is flushed with every commit.
 */
final class Database implements AutoCloseable {
    private static final int BUSY_MILLISECONDS = 5_000;

    private final Path file;
    private final Handle writer;
    private final Handle reader;
    private final ReentrantLock writing = new ReentrantLock();
    private final ReentrantLock reading = new ReentrantLock();

    private Database(Path file, Handle writer, Handle reader) {
        this.file = file;
        this.writer = writer;
        this.reader = reader;
    }

    /** Opens a file that has the schema of today. */
    static Database open(Path file) {
        return guarded(file, () -> {
            Handle writer = Jdbi.open(source(file, SQLiteConfig.TransactionMode.IMMEDIATE));
            return new Database(file, writer, Jdbi.open(source(file, SQLiteConfig.TransactionMode.DEFERRED)));
        });
    }

    static DataSource source(Path file, SQLiteConfig.TransactionMode mode) {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        config.setBusyTimeout(BUSY_MILLISECONDS);
        config.setTransactionMode(mode);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file);
        return source;
    }

    /** For looking only: nothing in the file or beside it is changed. */
    static DataSource readOnly(Path file) {
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(true);
        config.setBusyTimeout(BUSY_MILLISECONDS);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file);
        return source;
    }

    /** Something that may meet with trouble. */
    interface Work<T> {
        T run() throws SQLException;
    }

    /** Runs work and turns what the database says into {@link ShopTrouble}. */
    static <T> T guarded(Path file, Work<T> work) {
        try {
            return work.run();
        } catch (SQLException said) {
            throw Troubles.of(file, new IllegalStateException(said));
        } catch (JdbiException said) {
            throw Troubles.of(file, said);
        }
    }

    /** All of it or nothing; on the disk when it returns. */
    <T> T write(Function<Handle, T> work) {
        writing.lock();
        try {
            return guarded(file, () -> writer.inTransaction(work::apply));
        } finally {
            writing.unlock();
        }
    }

    /** What was last written, all of one moment. */
    <T> T read(Function<Handle, T> work) {
        reading.lock();
        try {
            return guarded(file, () -> reader.inTransaction(work::apply));
        } finally {
            reading.unlock();
        }
    }

    Path file() {
        return file;
    }

    @Override
    public void close() {
        reader.close();
        writer.close();
    }
}
