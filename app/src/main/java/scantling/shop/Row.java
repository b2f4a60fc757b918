package scantling.shop;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** One row of a table, or some columns of one: texts and whole numbers by the name of their column. Immutable. */
final class Row {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Map<String, Object> values;

    private Row(Map<String, Object> values) {
        this.values = values;
    }

    static Row empty() {
        return new Row(Map.of());
    }

    /** @param values the caller gives them away */
    static Row of(Map<String, Object> values) {
        return new Row(values);
    }

    Row with(String column, String text) {
        return withValue(column, text);
    }

    Row with(String column, long number) {
        return withValue(column, number);
    }

    private Row withValue(String column, Object value) {
        Map<String, Object> more = new LinkedHashMap<>(values);
        more.put(column, value);
        return new Row(more);
    }

    Map<String, Object> values() {
        return values;
    }

    boolean isEmpty() {
        return values.isEmpty();
    }

    Object get(String column) {
        Object value = values.get(column);
        if (value == null) {
            throw new IllegalStateException("A row has no column (%s), only (%s).".formatted(column, values.keySet()));
        }
        return value;
    }

    String text(String column) {
        return (String) get(column);
    }

    long number(String column) {
        return (Long) get(column);
    }

    /** A text that may be empty for nothing. */
    Optional<String> said(String column) {
        String text = text(column);
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }

    /** Only those columns whose values differ from another row's. */
    Row differing(Row other) {
        Row result = empty();
        for (Map.Entry<String, Object> value : values.entrySet()) {
            if (!value.getValue().equals(other.values.get(value.getKey()))) {
                result = result.withValue(value.getKey(), value.getValue());
            }
        }
        return result;
    }

    /** Only some columns. */
    Row only(Iterable<String> columns) {
        Row result = empty();
        for (String column : columns) {
            result = result.withValue(column, get(column));
        }
        return result;
    }

    String json() {
        ObjectNode node = JSON.createObjectNode();
        values.forEach((column, value) -> {
            if (value instanceof Long number) {
                node.put(column, number);
            } else {
                node.put(column, (String) value);
            }
        });
        return isEmpty() ? "" : node.toString();
    }

    /** Reads what {@link #json} wrote. @throws IllegalArgumentException for anything else */
    static Row ofJson(String json) {
        if (json.isEmpty()) {
            return empty();
        }
        try {
            Row row = empty();
            JsonNode tree = JSON.readTree(json);
            for (Map.Entry<String, JsonNode> field : tree.properties()) {
                JsonNode value = field.getValue();
                row = value.isIntegralNumber()
                        ? row.with(field.getKey(), value.longValue())
                        : row.with(field.getKey(), value.textValue() == null ? "" : value.textValue());
            }
            return row;
        } catch (JsonProcessingException unreadable) {
            throw new IllegalArgumentException("This is no row: (%s).".formatted(json), unreadable);
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Row row && values.equals(row.values);
    }

    @Override
    public int hashCode() {
        return values.hashCode();
    }

    @Override
    public String toString() {
        return values.toString();
    }
}
