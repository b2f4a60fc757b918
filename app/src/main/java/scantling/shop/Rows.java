package scantling.shop;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jdbi.v3.core.statement.SqlStatement;
import org.jdbi.v3.core.statement.Update;

/** Reads and writes whole rows. Every value is bound; every name is one of {@link ShopTable}'s. */
final class Rows {
    private final Handle handle;

    Rows(Handle handle) {
        this.handle = handle;
    }

    Optional<Row> find(ShopTable table, String key) {
        return where(table, table.key() + " = ?", key).stream().findFirst();
    }

    List<Row> all(ShopTable table) {
        return where(table, "1 = 1");
    }

    /** @param condition written in this package, with a question mark for each value */
    List<Row> where(ShopTable table, String condition, Object... values) {
        String sql = "SELECT %s FROM %s WHERE %s ORDER BY %s"
                .formatted(names(table.columns()), table.word(), condition, table.order());
        return bound(handle.createQuery(sql), values).map(mapper(table)).list();
    }

    private static <S extends SqlStatement<S>> S bound(S statement, Object... values) {
        for (int i = 0; i < values.length; i++) {
            statement.bind(i, values[i]);
        }
        return statement;
    }

    private static RowMapper<Row> mapper(ShopTable table) {
        return (results, context) -> {
            Map<String, Object> row = new LinkedHashMap<>();
            for (ShopTable.Column column : table.columns()) {
                row.put(
                        column.name(),
                        column.number() ? results.getLong(column.name()) : results.getString(column.name()));
            }
            return Row.of(row);
        };
    }

    private static String names(List<ShopTable.Column> columns) {
        return columns.stream().map(column -> '"' + column.name() + '"').collect(Collectors.joining(", "));
    }

    /** A whole row. */
    void insert(ShopTable table, Row row) {
        List<ShopTable.Column> columns = table.columns();
        insert(table, columns, row);
    }

    /** A row whose number the database gives. @return the number */
    long append(ShopTable table, Row row) {
        List<ShopTable.Column> columns =
                table.columns().subList(1, table.columns().size());
        insert(table, columns, row);
        return handle.createQuery("SELECT last_insert_rowid()")
                .mapTo(Long.class)
                .one();
    }

    private void insert(ShopTable table, List<ShopTable.Column> columns, Row row) {
        String marks = String.join(", ", Collections.nCopies(columns.size(), "?"));
        Update update =
                handle.createUpdate("INSERT INTO %s (%s) VALUES (%s)".formatted(table.word(), names(columns), marks));
        for (int i = 0; i < columns.size(); i++) {
            update.bind(i, row.get(columns.get(i).name()));
        }
        update.execute();
    }

    /** Some columns of a row. */
    void update(ShopTable table, Object key, Row changed) {
        List<ShopTable.Column> columns = table.columns().stream()
                .filter(column -> changed.values().containsKey(column.name()))
                .toList();
        String sets =
                columns.stream().map(column -> '"' + column.name() + "\" = ?").collect(Collectors.joining(", "));
        Update update = handle.createUpdate("UPDATE %s SET %s WHERE %s = ?".formatted(table.word(), sets, table.key()));
        for (int i = 0; i < columns.size(); i++) {
            update.bind(i, changed.get(columns.get(i).name()));
        }
        update.bind(columns.size(), key);
        update.execute();
    }

    void delete(ShopTable table, String key) {
        handle.createUpdate("DELETE FROM %s WHERE %s = ?".formatted(table.word(), table.key()))
                .bind(0, key)
                .execute();
    }

    /** A single number. */
    long number(String sql, Object... values) {
        return bound(handle.createQuery(sql), values).mapTo(Long.class).one();
    }

    /** Runs one statement of this package's. */
    void run(String sql, Map<String, Object> values) {
        handle.createUpdate(sql).bindMap(values).execute();
    }
}
