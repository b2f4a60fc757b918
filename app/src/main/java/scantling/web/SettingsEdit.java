package scantling.web;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Writes one value into the text of the shop's settings and leaves every other character as it is. */
final class SettingsEdit {
    private SettingsEdit() {}

    /** The text with a value in a section: in place of the old one, or behind the others of the section, or in a new section. */
    static String put(String text, String section, String key, String value) {
        Matcher head =
                Pattern.compile("(?m)^" + Pattern.quote(section) + ":[ \\t]*").matcher(text);
        if (!head.find()) {
            String air = text.isEmpty() || text.endsWith("\n") ? "" : "\n";
            return text + air + "%s: {%s: %s}\n".formatted(section, key, value);
        }
        int begin = head.end();
        Matcher next = Pattern.compile("(?m)^[^\\s#]").matcher(text);
        int end = next.find(begin) ? next.start() : text.length();
        String body = text.substring(begin, end);
        return text.substring(0, begin) + within(body, key, value) + text.substring(end);
    }

    private static String within(String body, String key, String value) {
        Matcher old = Pattern.compile("(?m)(^\\s*|[{,]\\s*)(" + Pattern.quote(key)
                        + ":[ \\t]*)([^,}#\\n]*?)(?=[ \\t]*(?:[,}#\\n]|$))")
                .matcher(body);
        if (old.find()) {
            return body.substring(0, old.start(3)) + value + body.substring(old.end(3));
        }
        if (body.startsWith("{")) {
            return "{%s: %s%s"
                    .formatted(key, value, body.startsWith("{}") ? body.substring(1) : ", " + body.substring(1));
        }
        int line = body.indexOf('\n');
        return line < 0
                ? body + "\n  %s: %s\n".formatted(key, value)
                : body.substring(0, line + 1) + "  %s: %s\n".formatted(key, value) + body.substring(line + 1);
    }
}
