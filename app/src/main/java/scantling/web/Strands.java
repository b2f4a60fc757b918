package scantling.web;

import java.util.LinkedHashMap;
import java.util.Map;

/** The job sheet taken apart into its strands, so that after a change only those that changed are sent. */
final class Strands {
    /** What stands before the first section: name, title block, tally. */
    static final String TOP = "top";

    private static final String SECTION = "\n<section id=\"";
    /** Widths that only paper needs; a page may hold no style of its own. */
    private static final String OF_PAPER = " style=\"width:";

    private static final String NOTE = "<div class=\"pencil ";
    private static final String LETTER = "id=\"note-";
    private static final String SOURCE = "<p class=\"src\">";

    private Strands() {}

    /** Each strand by its id, in the order of the sheet. */
    static Map<String, String> of(String body) {
        Map<String, String> strands = new LinkedHashMap<>();
        String id = TOP;
        int from = 0;
        for (int at = body.indexOf(SECTION); at >= 0; at = body.indexOf(SECTION, at + 1)) {
            put(strands, id, body.substring(from, at));
            int name = at + SECTION.length();
            id = body.substring(name, body.indexOf('"', name));
            from = at + 1;
        }
        put(strands, id, body.substring(from));
        return strands;
    }

    private static void put(Map<String, String> strands, String id, String markup) {
        String clean = markup.strip();
        strands.put(id, id.equals(TOP) ? "<section id=\"top\">" + clean + "</section>" : clean);
    }

    /** A strand as a page of a job shows it: nothing of paper, and under each finding the way to what would clear it. */
    static String onPage(String job, String strand) {
        return withWaysOut(job, withoutPaper(strand));
    }

    private static String withoutPaper(String strand) {
        StringBuilder out = new StringBuilder();
        int from = 0;
        for (int at = strand.indexOf(OF_PAPER); at >= 0; at = strand.indexOf(OF_PAPER, from)) {
            out.append(strand, from, at);
            from = strand.indexOf('"', at + OF_PAPER.length()) + 1;
        }
        return from == 0 ? strand : out.append(strand, from, strand.length()).toString();
    }

    private static String withWaysOut(String job, String strand) {
        StringBuilder out = new StringBuilder();
        int from = 0;
        for (int at = strand.indexOf(NOTE); at >= 0; at = strand.indexOf(NOTE, from)) {
            int letter = strand.indexOf(LETTER, at) + LETTER.length();
            int source = strand.indexOf(SOURCE, letter);
            out.append(strand, from, source);
            out.append("<p class=\"act\"><a href=\"/jobs/")
                    .append(job)
                    .append("/ways?note=")
                    .append(strand, letter, strand.indexOf('"', letter))
                    .append("\">What would clear it</a></p>");
            from = source;
        }
        return from == 0 ? strand : out.append(strand, from, strand.length()).toString();
    }
}
