package scantling.web;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The job sheet taken apart into its strands, so that after a change only those that changed are sent. */
final class Strands {
    /** What stands before the first section: name, title block, tally. */
    static final String TOP = "top";

    private static final Pattern SECTION = Pattern.compile("(?m)^<section id=\"([a-z-]+)\">");

    private Strands() {}

    /** Each strand by its id, in the order of the sheet. */
    static Map<String, String> of(String body) {
        Map<String, String> strands = new LinkedHashMap<>();
        Matcher section = SECTION.matcher(body);
        String id = TOP;
        int from = 0;
        while (section.find()) {
            put(strands, id, body.substring(from, section.start()));
            id = section.group(1);
            from = section.start();
        }
        put(strands, id, body.substring(from));
        return strands;
    }

    private static void put(Map<String, String> strands, String id, String markup) {
        String clean = markup.strip();
        strands.put(id, id.equals(TOP) ? "<section id=\"top\">" + clean + "</section>" : clean);
    }

    /** A strand as it is sent to take the place of the one with its id. */
    static String instead(String id, String markup) {
        String head = "<section id=\"" + id + "\"";
        if (!markup.startsWith(head)) {
            throw new IllegalArgumentException("The strand (%s) does not begin with its section.".formatted(id));
        }
        return head + " hx-swap-oob=\"true\"" + markup.substring(head.length());
    }

    /** The heading of a strand, in plain text as markup; empty when it has none. */
    static String heading(String markup) {
        int from = markup.indexOf("<h2>");
        int to = markup.indexOf("</h2>");
        return from < 0 || to < from ? "" : markup.substring(from + "<h2>".length(), to);
    }
}
