package scantling.feature;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import scantling.measure.Dim;

/**
 * How a machine is set for a feature. Two features with equal settings are made without touching the machine between
 * them.
 *
 * @param machine what it is made with, in trade words: biscuit joiner, router, drill press
 * @param tool what is in it: biscuit cutter, straight bit 12, brad-point 5; empty when it says nothing
 * @param sizes what is dialled in, by the name on the machine, in the order it is dialled: fence height, depth stop
 * @param angles what is tilted or swung, by the name on the machine, in degrees off square: blade tilt, mitre gauge
 * @param notes what else to know, each a sentence: two plunges, 10 apart
 */
public record Setting(
        String machine, String tool, Map<String, Dim> sizes, Map<String, Double> angles, List<String> notes) {
    /** Takes its own copies; the order of sizes and angles is kept by the maps that are given. */
    public Setting {
        sizes = Collections.unmodifiableMap(new LinkedHashMap<>(sizes));
        angles = Collections.unmodifiableMap(new LinkedHashMap<>(angles));
        notes = List.copyOf(notes);
    }

    /** One with everything square. */
    public Setting(String machine, String tool, Map<String, Dim> sizes, List<String> notes) {
        this(machine, tool, sizes, Map.of(), notes);
    }

    /** An angle as it is read off a scale: to a tenth of a degree. */
    public static String degrees(double angle) {
        return String.format(Locale.ROOT, "%.1f°", angle);
    }

    /** The same for two settings exactly when nothing is touched between them; what the notes say changes nothing. */
    public String key() {
        StringBuilder key = new StringBuilder(machine).append('|').append(tool);
        sizes.forEach((name, dim) -> key.append('|').append(name).append(' ').append(dim.value()));
        angles.forEach((name, angle) -> key.append('|').append(name).append(' ').append(degrees(angle)));
        return key.toString();
    }
}
