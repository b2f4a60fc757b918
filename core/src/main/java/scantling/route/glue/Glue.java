package scantling.route.glue;

import java.util.List;
import scantling.timber.Table;

/**
 * A kind of glue.
 *
 * @param name its product class
 * @param openMinutes how long it may lie open before the joint is closed
 * @param assemblyMinutes how long from the first joint spread to the last clamp tight
 * @param clampMinutes in clamps, where nothing strains the joint
 * @param machineHours before the joint is planed or strained
 * @param leastCelsius below which it does not set well
 * @param spreadLow least grams for a square metre
 * @param spreadHigh most grams for a square metre
 * @param source who says so
 */
public record Glue(
        String name,
        double openMinutes,
        double assemblyMinutes,
        double clampMinutes,
        double machineHours,
        double leastCelsius,
        double spreadLow,
        double spreadHigh,
        String source) {
    private static final List<Glue> ALL =
            Table.read("route/glues.csv").rows().stream().map(Glue::of).toList();

    /** All that are known, the usual one first. */
    public static List<Glue> all() {
        return ALL;
    }

    /** The glue of a shop that says nothing else. */
    public static Glue usual() {
        return ALL.get(0);
    }

    private static Glue of(Table.Row row) {
        return new Glue(
                row.text("glue"),
                row.number("open_min"),
                row.number("assembly_min"),
                row.number("clamp_min"),
                row.number("machine_hours"),
                row.number("least_celsius"),
                row.number("spread_low"),
                row.number("spread_high"),
                row.source());
    }
}
