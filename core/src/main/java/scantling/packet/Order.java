package scantling.packet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What is wanted of a packet.
 *
 * @param paper what it is printed on
 * @param sections of packet.pdf, by their words; none for all
 * @param files kinds of files, by their words
 * @param labels the sheet labels are printed on
 */
public record Order(Paper paper, Set<String> sections, Set<String> files, LabelSheet labels) {
    /** The kinds of files there are. */
    public static final List<String> FILES = List.of(
            "packet",
            "templates",
            "labels",
            "page",
            "tables",
            "data",
            "drawings",
            "outlines",
            "scene",
            "calendar",
            "handover",
            "record",
            "cost",
            "timber");

    /** Those for the maker's own eyes, written only when named. */
    private static final Set<String> OWN = Set.of("cost", "timber");

    private static final Set<String> USUAL = Set.of("packet", "page", "tables", "data", "drawings");

    /** Takes its own copies. */
    public Order {
        sections = Set.copyOf(sections);
        files = Set.copyOf(files);
    }

    /** What each kind of file is, in words. */
    public static String words(String file) {
        return switch (file) {
            case "packet" -> "The packet, for the bench";
            case "templates" -> "Templates at true size";
            case "labels" -> "Labels for the parts";
            case "page" -> "The job sheet as one page";
            case "tables" -> "List of parts as a table (CSV)";
            case "data" -> "Everything as data (JSON)";
            case "drawings" -> "Every drawing (SVG)";
            case "outlines" -> "Outlines of parts for machines (DXF)";
            case "scene" -> "The piece in the round (glTF)";
            case "calendar" -> "The route for a calendar (iCalendar)";
            case "handover" -> "Sheet to hand over to the client";
            case "record" -> "Record of the build, to show";
            case "cost" -> "Cost sheet, for the maker only";
            case "timber" -> "Woods side by side, for the maker only";
            default -> file;
        };
    }

    /** What a plan writes when nothing else is said: the packet, the job sheet, tables, data and drawings. */
    public static Order usual(Paper paper) {
        return new Order(paper, Set.of(), USUAL, LabelSheet.plain(paper));
    }

    /** Every kind of file there is, but for those with the maker's costs. */
    public static Order everything(Paper paper, LabelSheet labels) {
        Set<String> files = new TreeSet<>(FILES);
        files.removeAll(OWN);
        return new Order(paper, Set.of(), files, labels);
    }

    /**
     * Only what is named: words of sections, which ask for a packet of these, and of files.
     *
     * @throws IllegalArgumentException naming all words that are neither, or that there is none
     */
    public static Order only(Collection<String> words, Paper paper, LabelSheet labels) {
        Set<String> sections = new TreeSet<>();
        Set<String> files = new TreeSet<>();
        List<String> unknown = new ArrayList<>();
        for (String said : words) {
            String word = said.strip();
            if (word.isEmpty()) {
                continue;
            }
            if (PacketSections.words().contains(word)) {
                sections.add(word);
                files.add("packet");
            } else if (FILES.contains(word)) {
                files.add(word);
            } else {
                unknown.add(word);
            }
        }
        if (!unknown.isEmpty() || files.isEmpty()) {
            String wrong = unknown.isEmpty()
                    ? "Nothing is named."
                    : "There is nothing called %s in a packet.".formatted(String.join(", ", unknown));
            throw new IllegalArgumentException("%s Sections: %s. Files: %s."
                    .formatted(wrong, String.join(", ", PacketSections.words()), String.join(", ", FILES)));
        }
        return new Order(paper, sections, files, labels);
    }

    /** Whether this kind of file is wanted. */
    public boolean wants(String file) {
        return files.contains(file);
    }
}
