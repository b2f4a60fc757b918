package scantling.shop;

import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationState;
import org.sqlite.SQLiteConfig;

/** Brings a file to the schema of today, by the scripts beside this class, each in a transaction of its own. */
final class Schema {
    private final Path file;
    private final Flyway flyway;

    private Schema(Path file, DataSource source) {
        this.file = file;
        this.flyway = Flyway.configure(Schema.class.getClassLoader())
                .dataSource(source)
                .locations("classpath:scantling/shop/schema")
                .failOnMissingLocations(true)
                .load();
    }

    /**
     * Brings a file to today's schema; a new file gets it.
     *
     * @param before told the next version before a file that has a schema is changed: makes a back-up
     */
    static void bring(Path file, Consumer<String> before) {
        try {
            new Schema(file, Database.source(file, SQLiteConfig.TransactionMode.IMMEDIATE)).bring(before);
        } catch (FlywayException said) {
            throw Troubles.of(file, said);
        }
    }

    /** For a file that another has open, and that is not to be changed. @throws ShopTrouble when its schema is not today's */
    static void checkToday(Path file) {
        try {
            Schema schema = new Schema(file, Database.readOnly(file));
            schema.checkNotLater();
            if (schema.flyway.info().pending().length > 0) {
                throw new ShopTrouble(
                        ShopTrouble.Kind.IN_USE,
                        "%s is open in an earlier Scantling than this one. Do it with the earlier one, or close that first."
                                .formatted(file));
            }
        } catch (FlywayException said) {
            throw Troubles.of(file, said);
        }
    }

    private void checkNotLater() {
        boolean future = Stream.of(flyway.info().all())
                .map(MigrationInfo::getState)
                .anyMatch(state -> state == MigrationState.FUTURE_SUCCESS || state == MigrationState.FUTURE_FAILED);
        if (future) {
            throw new ShopTrouble(
                    ShopTrouble.Kind.TOO_NEW,
                    "%s was written by a later Scantling than this one. Nothing was changed; open it with the later one."
                            .formatted(file));
        }
    }

    private void bring(Consumer<String> before) {
        checkNotLater();
        if (flyway.info().pending().length == 0) {
            return;
        }
        if (flyway.info().applied().length > 0) {
            before.accept(String.valueOf(flyway.info().pending()[0].getVersion()));
        }
        flyway.migrate();
    }
}
