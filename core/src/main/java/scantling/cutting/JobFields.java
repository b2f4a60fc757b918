package scantling.cutting;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import scantling.piece.Spelling;

/** Which fields a job may have, and what is said of any other: a field that is only passed over would be missed by nobody. */
final class JobFields {
    static final List<String> JOB = List.of("unit", "saw", "keep", "wishes", "sheets", "boards", "sticks", "parts");
    static final List<String> SAW = List.of("kerf", "trim", "mitre", "stages", "firstCut");
    static final List<String> KEEP = List.of("longer", "shorter");
    static final List<String> WISHES = List.of("setting", "cut", "offcut", "sizes", "nearEdge", "together");
    static final List<String> DEFECT = List.of("from", "to", "edge", "deep");
    private static final List<String> SHEET = List.of("name", "length", "width", "count", "cost", "trimmed", "onHand");
    private static final List<String> BOARD =
            List.of("name", "length", "width", "count", "cost", "trimmed", "onHand", "defects");
    private static final List<String> STICK = List.of("name", "length", "width", "count", "cost", "trimmed", "onHand");
    private static final List<String> PART =
            List.of("name", "length", "width", "count", "turn", "row", "beside", "glued");
    private static final List<String> STICK_PART =
            List.of("name", "length", "width", "count", "mitres", "turn", "glued");

    private final List<String> problems;

    /** @param problems where what is wrong is put */
    JobFields(List<String> problems) {
        this.problems = problems;
    }

    static List<String> stock(String kind) {
        return switch (kind) {
            case "sheets" -> SHEET;
            case "boards" -> BOARD;
            default -> STICK;
        };
    }

    static List<String> part(boolean stick) {
        return stick ? STICK_PART : PART;
    }

    /** Tells every field that means nothing here. False when there are no fields at all. */
    boolean known(JsonNode node, String where, List<String> fields) {
        if (!node.isObject()) {
            if (!node.isMissingNode()) {
                problems.add(
                        "%s: (%s) has no fields; it needs some, such as %s.".formatted(where, node, fields.get(0)));
            }
            return false;
        }
        node.fieldNames().forEachRemaining(name -> {
            if (!fields.contains(name)) {
                problems.add("%s: there is no such field here.%s"
                        .formatted(where.isEmpty() ? name : where + "." + name, meant(name, fields)));
            }
        });
        return true;
    }

    private static String meant(String name, List<String> fields) {
        String maybe = Spelling.maybe(name, fields);
        return maybe.isEmpty() ? " There are: %s.".formatted(String.join(", ", fields)) : maybe;
    }

    /** A word of the maker's own, such as the name of a row; empty when absent. */
    String word(JsonNode node, String field, String where) {
        JsonNode value = node.path(field);
        if (!value.isMissingNode() && !value.isTextual() && !value.isNumber()) {
            problems.add("%s.%s: (%s) must be a word of your own.".formatted(where, field, value));
        }
        return value.asText("").strip();
    }

    /** A field that is true or false. */
    boolean flag(JsonNode node, String field, String where, boolean usual) {
        JsonNode value = node.path(field);
        if (!value.isMissingNode() && !value.isBoolean()) {
            problems.add("%s.%s: (%s) must be true or false.".formatted(where, field, value));
        }
        return value.asBoolean(usual);
    }
}
