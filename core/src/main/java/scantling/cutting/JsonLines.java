package scantling.cutting;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** On which line of a text each field stands, to tell it with what is wrong. */
final class JsonLines {
    private final Map<String, Integer> lines = new HashMap<>();

    private JsonLines() {}

    /** Of a text that begins with JSON; what stands behind its end is not looked at. */
    static JsonLines of(String text) {
        JsonLines all = new JsonLines();
        try (JsonParser parser = new JsonFactory().createParser(text)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                String pointer = parser.getParsingContext().pathAsPointer().toString();
                all.lines.putIfAbsent(
                        place(pointer), parser.currentTokenLocation().getLineNr());
            }
        } catch (IOException behindTheEnd) {
            // a reader of trees stops at the end of the first value; what was read until here has its lines
            return all;
        }
        return all;
    }

    /** {@code /parts/3/width} as {@code parts[3].width}. */
    private static String place(String pointer) {
        return pointer.replaceAll("/(\\d+)(?=/|$)", "[$1]").replace('/', '.').replaceFirst("^\\.", "");
    }

    /** Problems, each begun with its line: the line of the field it is about, or of what that field is missing from. */
    List<String> before(List<String> problems) {
        return problems.stream().map(this::withLine).toList();
    }

    private String withLine(String problem) {
        int end = problem.indexOf(": ");
        String place = end < 0 ? "" : problem.substring(0, end);
        while (!place.isEmpty() && !lines.containsKey(place)) {
            int cut = Math.max(place.lastIndexOf('.'), place.lastIndexOf('['));
            place = place.substring(0, Math.max(0, cut));
        }
        return place.isEmpty() ? problem : "line %d: %s".formatted(lines.get(place), problem);
    }
}
