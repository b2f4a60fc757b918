package scantling.web;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * One strand of a job sheet.
 *
 * @param markup a section with its id
 * @param print tells it from others
 */
public record Strand(String markup, Print print) {
    /** Of a strand that no page shows: it differs from every other. */
    static final Print NONE = new Print("", Map.of());

    private static final int ONE_BYTE = 0xFF;
    private static final String LEAF = "<sheet-leaf id=\"";
    private static final String LEAF_END = "</sheet-leaf>";
    private static final String INSTEAD = " hx-swap-oob=\"true\"";

    /**
     * The same for strands that are the same, and for no others.
     *
     * @param frame of what stands around its leaves
     * @param leaves of those of its drawings and tables that can be sent by themselves, by id
     */
    record Print(String frame, Map<String, String> leaves) {
        private boolean hasSame(String leaf, Print other) {
            return Objects.equals(leaves.get(leaf), other.leaves.get(leaf));
        }
    }

    /** Where a leaf stands in the markup. */
    private record Leaf(String id, int from, int to) {}

    static Strand of(String markup) {
        String narrow = narrow(markup);
        StringBuilder frame = new StringBuilder();
        Map<String, String> leaves = new LinkedHashMap<>();
        int from = 0;
        for (Leaf leaf : leaves(narrow)) {
            frame.append(narrow, from, leaf.from()).append(LEAF).append(leaf.id());
            leaves.put(leaf.id(), print(narrow.substring(leaf.from(), leaf.to())));
            from = leaf.to();
        }
        return new Strand(
                narrow,
                new Print(print(frame.append(narrow, from, narrow.length()).toString()), leaves));
    }

    private static String print(String narrow) {
        return Assets.print(narrow.getBytes(StandardCharsets.ISO_8859_1));
    }

    private static List<Leaf> leaves(String markup) {
        List<Leaf> leaves = new ArrayList<>();
        for (int at = markup.indexOf(LEAF); at >= 0; at = markup.indexOf(LEAF, at + 1)) {
            int id = at + LEAF.length();
            int end = markup.indexOf(LEAF_END, at) + LEAF_END.length();
            leaves.add(new Leaf(markup.substring(id, markup.indexOf('"', id)), at, end));
        }
        return leaves;
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
        return head + INSTEAD + markup.substring(head.length());
    }

    /** The same for a page that shows an earlier one: only its leaves that differ, where nothing else does. */
    String instead(String id, Print shown) {
        if (!shown.frame().equals(print.frame())
                || !shown.leaves().keySet().equals(print.leaves().keySet())) {
            return instead(id);
        }
        StringBuilder out = new StringBuilder();
        for (Leaf leaf : leaves(markup)) {
            if (!print.hasSame(leaf.id(), shown)) {
                int head = leaf.from() + LEAF.length() + leaf.id().length() + 1;
                out.append(markup, leaf.from(), head).append(INSTEAD).append(markup, head, leaf.to());
            }
        }
        return out.toString();
    }

    /** Its heading, in plain text as markup; empty when it has none. */
    String heading() {
        int from = markup.indexOf("<h2>");
        int to = from < 0 ? -1 : markup.indexOf("</h2>", from);
        return to < 0 ? "" : markup.substring(from + "<h2>".length(), to);
    }
}
