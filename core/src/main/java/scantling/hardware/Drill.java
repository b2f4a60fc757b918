package scantling.hardware;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import scantling.feature.Setting;
import scantling.measure.Dim;

/**
 * How a hole is drilled.
 *
 * @param bit what is in the drill, in trade words, without its size
 * @param diameter of the bit
 * @param depth that the stop is set to
 * @param notes what else to know, each a sentence
 */
record Drill(String bit, Dim diameter, Dim depth, List<String> notes) {
    static final String BRAD_POINT = "brad-point bit";
    static final String TWIST = "twist bit";
    static final String FORSTNER = "flat-bottomed bit";

    Drill {
        notes = List.copyOf(notes);
    }

    Drill(String bit, Dim diameter, Dim depth) {
        this(bit, diameter, depth, List.of());
    }

    /** The same, less deep. */
    Drill deep(Dim other) {
        return new Drill(bit, diameter, other, notes);
    }

    /** The setting of the machine. @param fence from the edge or face the fence stands at @param size the bit's size in words */
    Setting setting(Dim fence, String size) {
        Map<String, Dim> sizes = new LinkedHashMap<>();
        sizes.put("depth stop", depth);
        sizes.put("fence", fence);
        return new Setting("drill", bit + " " + size, sizes, notes);
    }
}
