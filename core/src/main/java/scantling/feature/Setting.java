package scantling.feature;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import scantling.measure.Dim;

/**
 * How a machine is set for a feature. Two features with equal settings are made without touching the machine between
 * them.
 *
 * @param machine what it is made with, in trade words: biscuit joiner, router, drill press
 * @param tool what is in it: biscuit cutter, straight bit 12, brad-point 5; empty when it says nothing
 * @param sizes what is dialled in, by the name on the machine, in the order it is dialled: fence height, depth stop
 * @param notes what else to know, each a sentence: two plunges, 10 apart
 */
public record Setting(String machine, String tool, Map<String, Dim> sizes, List<String> notes) {
    /** Takes its own copies; the order of the sizes is kept by the map that is given. */
    public Setting {
        sizes = Collections.unmodifiableMap(new LinkedHashMap<>(sizes));
        notes = List.copyOf(notes);
    }

    /** The same for two settings exactly when nothing is touched between them; what the notes say changes nothing. */
    public String key() {
        StringBuilder key = new StringBuilder(machine).append('|').append(tool);
        sizes.forEach((name, dim) -> key.append('|').append(name).append(' ').append(dim.value()));
        return key.toString();
    }
}
