package scantling.web;

import java.nio.charset.StandardCharsets;

/**
 * One strand of a job sheet.
 *
 * @param markup a section with its id
 * @param print the same for strands that are the same, and for no others
 */
public record Strand(String markup, String print) {
    private static final int ONE_BYTE = 0xFF;

    static Strand of(String markup) {
        String narrow = narrow(markup);
        return new Strand(narrow, Assets.print(narrow.getBytes(StandardCharsets.ISO_8859_1)));
    }

    /** The same to every reader of markup; a text of narrow characters takes half the room. */
    private static String narrow(String markup) {
        StringBuilder out = new StringBuilder();
        int from = 0;
        for (int i = 0; i < markup.length(); i++) {
            if (markup.charAt(i) > ONE_BYTE) {
                int wide = markup.codePointAt(i);
                out.append(markup, from, i).append("&#").append(wide).append(';');
                i += Character.charCount(wide) - 1;
                from = i + 1;
            }
        }
        return from == 0 ? markup : out.append(markup, from, markup.length()).toString();
    }

    /** As it is sent to take the place of the one with its id. */
    String instead(String id) {
        String head = "<section id=\"" + id + "\"";
        if (!markup.startsWith(head)) {
            throw new IllegalArgumentException("The strand (%s) does not begin with its section.".formatted(id));
        }
        return head + " hx-swap-oob=\"true\"" + markup.substring(head.length());
    }

    /** Its heading, in plain text as markup; empty when it has none. */
    String heading() {
        int from = markup.indexOf("<h2>");
        int to = from < 0 ? -1 : markup.indexOf("</h2>", from);
        return to < 0 ? "" : markup.substring(from + "<h2>".length(), to);
    }
}
