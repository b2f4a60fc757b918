package scantling.web;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A job sheet as a page shows it.
 *
 * @param version differs from that of every other sheet this server has made
 * @param strands by id, in the order of the sheet
 */
public record Sheet(String version, Map<String, Strand> strands) {
    /** Takes its own copy. */
    public Sheet {
        strands = Collections.unmodifiableMap(new LinkedHashMap<>(strands));
    }

    /**
     * All that is kept of a sheet that pages may still show: enough to tell what such a page lacks.
     *
     * @param version as of the sheet
     * @param prints of its strands by id
     */
    record Past(String version, Map<String, Strand.Print> prints) {
        Past {
            prints = Collections.unmodifiableMap(new LinkedHashMap<>(prints));
        }
    }

    /** The strands that have a heading, by id, in the order of work. */
    public Map<String, String> headings() {
        Map<String, String> headings = new LinkedHashMap<>();
        strands.forEach((id, strand) -> headings.put(id, strand.heading()));
        headings.values().removeIf(String::isEmpty);
        return headings;
    }

    Past past() {
        Map<String, Strand.Print> prints = new LinkedHashMap<>();
        strands.forEach((id, strand) -> prints.put(id, strand.print()));
        return new Past(version, prints);
    }

    /** Whether a page that shows another sheet can be brought up to date strand by strand. */
    boolean sameStrands(Past other) {
        return strands.keySet().equals(other.prints().keySet());
    }

    /** The strands that differ from those of another sheet. */
    Map<String, Strand> since(Past other) {
        Map<String, Strand> changed = new LinkedHashMap<>(strands);
        changed.entrySet()
                .removeIf(strand ->
                        strand.getValue().print().equals(other.prints().get(strand.getKey())));
        return changed;
    }
}
