package scantling.web;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The top in the text of a piece: one step of the outermost list, written in one line or over several. Only what is asked
 * for changes.
 *
 * @param text of the piece
 */
public record TopText(String text) {
    private static final Pattern TOP = Pattern.compile("(?m)^( *)- top:[ \\t]*");
    private static final Pattern BUILD = Pattern.compile("(?m)^build:[^\\n]*\\n");
    private static final Pattern ITEM = Pattern.compile("(?m)^( *)- ");

    /** Whether the piece has one. */
    public boolean isThere() {
        return TOP.matcher(text).find();
    }

    /** Whether it stands out over a piece that is as large as said, or the piece stands in under a top that is. */
    public String way() {
        return body().filter(body -> body.contains("inset:")).isPresent() ? "inset" : "overhang";
    }

    /** What one of its words is said to be; empty when it is not said. */
    public String said(String key) {
        return body().map(body -> Pattern.compile(
                                "(?:^|[{,\\s])" + Pattern.quote(key) + ":[ \\t]*(\\{[^}]*\\}|[^,}#\\n]*)")
                        .matcher(body))
                .filter(Matcher::find)
                .map(found -> found.group(1).strip())
                .orElse("");
    }

    /** What it is lipped with; empty when it is not. */
    public String lipping() {
        return inner("lipped", "with");
    }

    /** How far it stands out, or what is under it stands in, on a side. @param side front, back or ends */
    public String out(String side) {
        return inner(way(), side);
    }

    private String inner(String key, String word) {
        Matcher found = Pattern.compile("[{,\\s]" + Pattern.quote(word) + ":[ \\t]*([^,}]*)")
                .matcher(said(key));
        return found.find() ? found.group(1).strip() : "";
    }

    private Optional<String> body() {
        Matcher top = TOP.matcher(text);
        return top.find() ? Optional.of(text.substring(top.end(), end(top))) : Optional.empty();
    }

    /** Where the step ends: before the next line that stands no deeper than it begins. */
    private int end(Matcher top) {
        Matcher next =
                Pattern.compile("(?m)^ {0," + top.group(1).length() + "}[^\\s]").matcher(text);
        return next.find(top.end()) ? next.start() : text.length();
    }

    /** The text with a word of the top said otherwise; an empty value leaves it out. */
    TopText with(String key, String value) {
        Matcher top = TOP.matcher(text);
        if (!top.find() || value.equals(said(key))) {
            return this;
        }
        int end = end(top);
        String body = text.substring(top.end(), end);
        String spelled = body.startsWith("{") || body.startsWith("\n") ? body : "{of: " + body.strip() + "}\n";
        String changed = spelled.startsWith("{") ? flow(spelled, key, value) : block(spelled, key, value, top.group(1));
        return new TopText(text.substring(0, top.end()) + changed + text.substring(end));
    }

    private static String flow(String body, String key, String value) {
        Matcher old = Pattern.compile("([{,]\\s*)" + Pattern.quote(key) + ":[ \\t]*(?:\\{[^}]*\\}|[^,}]*)")
                .matcher(body);
        if (old.find()) {
            return value.isEmpty()
                    ? body.substring(0, old.start())
                            + (old.group(1).startsWith("{") ? "{" : "")
                            + body.substring(old.end())
                    : body.substring(0, old.start()) + old.group(1) + key + ": " + value + body.substring(old.end());
        }
        int close = body.lastIndexOf('}');
        return value.isEmpty() ? body : body.substring(0, close) + ", " + key + ": " + value + body.substring(close);
    }

    private static String block(String body, String key, String value, String indent) {
        Matcher old = Pattern.compile(
                        "(?m)^( *)" + Pattern.quote(key) + ":[ \\t]*(?:\\{[^}\\n]*\\}|[^#\\n]*?)(?=[ \\t]*(?:#|$))")
                .matcher(body);
        if (old.find()) {
            int line = body.indexOf('\n', old.end()) + 1;
            return value.isEmpty()
                    ? body.substring(0, old.start()) + (line == 0 ? "" : body.substring(line))
                    : body.substring(0, old.start()) + old.group(1) + key + ": " + value + body.substring(old.end());
        }
        String deep = indent + "    ";
        int first = body.indexOf('\n', 1) + 1;
        return value.isEmpty()
                ? body
                : body.substring(0, first) + deep + key + ": " + value + "\n" + body.substring(first);
    }

    /** The text with a top before everything else that is built; empty where no list of elements is. */
    Optional<TopText> added(String step) {
        Matcher build = BUILD.matcher(text);
        if (!build.find()) {
            return Optional.empty();
        }
        Matcher item = ITEM.matcher(text);
        return item.find(build.end())
                ? Optional.of(new TopText(text.substring(0, build.end()) + item.group(1) + "- top: " + step + "\n"
                        + text.substring(build.end())))
                : Optional.empty();
    }
}
