package scantling.packet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The sections a packet can have on paper, by the words one asks for them by. */
public final class PacketSections {
    private static final Map<String, String> HEADINGS = new LinkedHashMap<>();

    static {
        HEADINGS.put("cover", "Drawing");
        HEADINGS.put("parts", "Parts");
        HEADINGS.put("buying", "Buying list");
        HEADINGS.put("milling", "Milling list");
        HEADINGS.put("cutting", "Cutting diagrams");
        HEADINGS.put("drilling", "Each part from its marks");
        HEADINGS.put("settings", "Machine settings");
        HEADINGS.put("joints", "Joints");
        HEADINGS.put("hardware", "Hardware");
        HEADINGS.put("route", "Route");
        HEADINGS.put("gluing", "Order of glue-up");
        HEADINGS.put("lasting", "Will it last");
        HEADINGS.put("finish", "Finish");
        HEADINGS.put("findings", "Findings");
    }

    private PacketSections() {}

    /** All words, in the order of the paper. */
    public static List<String> words() {
        return List.copyOf(HEADINGS.keySet());
    }

    /** What stands over a section. */
    public static String heading(String word) {
        return HEADINGS.getOrDefault(word, word);
    }
}
