package scantling.stock;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.measure.Dim;
import scantling.timber.Table;

/**
 * What slides, hinges, pins and other fittings ask of the wood around them: one profile for each kind, its sizes by name,
 * each with its source. The profiles as they ship are of no one make; a maker replaces any size by what the sheet says
 * that came with the item in hand.
 */
public final class HardwareProfiles {
    /** Side-mount ball-bearing slides. */
    public static final String SIDE_MOUNT = "side mount ball-bearing";
    /** Concealed undermount slides. */
    public static final String UNDERMOUNT = "concealed undermount";
    /** Cup hinges. */
    public static final String CUP_HINGE = "35 mm cup hinge";
    /** Butt hinges. */
    public static final String BUTT_HINGE = "butt hinge";
    /** The 32 mm system. */
    public static final String SYSTEM = "32 mm system";

    private static final List<String> TABLES = List.of("slides", "hinges", "fittings", "system");

    private static final class Standard {
        static final HardwareProfiles ALL = read();
    }

    private final Map<String, Map<String, List<Dim>>> profiles;

    private HardwareProfiles(Map<String, Map<String, List<Dim>>> profiles) {
        this.profiles = profiles;
    }

    /** The profiles as they ship. */
    public static HardwareProfiles standard() {
        return Standard.ALL;
    }

    private static HardwareProfiles read() {
        Map<String, Map<String, List<Dim>>> all = new LinkedHashMap<>();
        for (String name : TABLES) {
            for (Table.Row row : Table.read("hardware/" + name + ".csv").rows()) {
                String profile = row.text("profile");
                String value = row.text("value");
                all.computeIfAbsent(profile, key -> new LinkedHashMap<>())
                        .computeIfAbsent(value, key -> new ArrayList<>())
                        .add(row.dim("size", profile + ", " + value));
            }
        }
        return new HardwareProfiles(all);
    }

    /**
     * These profiles with a maker's own sizes in place of one value.
     *
     * @param own all sizes of that name: one, or the lengths a slide is sold in
     * @throws IllegalArgumentException for a profile that is not there
     */
    public HardwareProfiles with(String profile, String value, List<Dim> own) {
        if (!profiles.containsKey(profile)) {
            throw new IllegalArgumentException(
                    "No profile is called (%s); there are %s.".formatted(profile, profiles.keySet()));
        }
        Map<String, Map<String, List<Dim>>> all = new LinkedHashMap<>(profiles);
        Map<String, List<Dim>> values = new LinkedHashMap<>(profiles.get(profile));
        values.put(value, List.copyOf(own));
        all.put(profile, values);
        return new HardwareProfiles(all);
    }

    /** The names of all profiles in the order of the tables. */
    public List<String> names() {
        return List.copyOf(profiles.keySet());
    }

    /** The sizes of a profile by their names, in the order of the table; none for a profile that is not there. */
    public Map<String, List<Dim>> sizes(String profile) {
        return Collections.unmodifiableMap(profiles.getOrDefault(profile, Map.of()));
    }

    /** A size that a profile may have. */
    public Optional<Dim> find(String profile, String value) {
        return all(profile, value).stream().findFirst();
    }

    /** A size of a profile. @throws IllegalArgumentException when it is not there, which is a fault of the one who asks */
    public Dim of(String profile, String value) {
        List<Dim> sizes = all(profile, value);
        if (sizes.isEmpty()) {
            throw new IllegalArgumentException("No (%s) is known for the fitting (%s).".formatted(value, profile));
        }
        return sizes.get(0);
    }

    /** All sizes of that name, in the order of the table: the lengths a slide is sold in. */
    public List<Dim> all(String profile, String value) {
        return profiles.getOrDefault(profile, Map.of()).getOrDefault(value, List.of());
    }
}
