package scantling.web;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import scantling.plan.Plan;

/**
 * A job sheet as a page shows it.
 *
 * @param version differs from that of every other sheet this server has made
 * @param plan what it shows; empty when the text cannot be built as it stands
 * @param strands markup by id, in the order of the sheet
 */
public record Sheet(String version, Optional<Plan> plan, Map<String, String> strands) {
    /** Takes its own copy. */
    public Sheet {
        strands = Collections.unmodifiableMap(new LinkedHashMap<>(strands));
    }

    /** The strands that have a heading, by id, in the order of work. */
    public Map<String, String> headings() {
        Map<String, String> headings = new LinkedHashMap<>();
        strands.forEach((id, markup) -> headings.put(id, Strands.heading(markup)));
        headings.values().removeIf(String::isEmpty);
        return headings;
    }

    /** Whether a page that shows another sheet can be brought up to date strand by strand. */
    boolean sameStrands(Sheet other) {
        return strands.keySet().equals(other.strands.keySet());
    }

    /** The strands that differ from those of another sheet. */
    Map<String, String> since(Sheet other) {
        Map<String, String> changed = new LinkedHashMap<>(strands);
        changed.entrySet().removeIf(strand -> strand.getValue().equals(other.strands.get(strand.getKey())));
        return changed;
    }
}
