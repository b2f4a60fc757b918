package scantling.finishing;

import java.util.Optional;
import scantling.timber.Table;

/**
 * Where to begin with a gun, as ranges; the sheet of the product and a board decide.
 *
 * @param nozzle in millimetres
 * @param air at the gun with the trigger pulled, psi
 * @param cup seconds through the usual small cup
 * @param note what else, or empty
 * @param source who says so
 */
public record Spray(Amount nozzle, Amount air, Amount cup, String note, String source) {
    private static final Table TABLE = Table.read("finishing/spray-settings.csv");

    /** Where to begin with a coat; nothing for ways that do not spray. */
    static Optional<Spray> of(Coat coat, Method method) {
        return method.sprays() ? TABLE.findRow("for", kind(coat)).map(Spray::of) : Optional.empty();
    }

    private static String kind(Coat coat) {
        if (coat.name().endsWith("paint")) {
            return "paint";
        }
        if (coat.role().equals("top") && coat.isWaterborne()) {
            return "waterborne top";
        }
        return coat.role().equals("filler") || coat.role().equals("wax") ? "top" : coat.role();
    }

    private static Spray of(Table.Row row) {
        return new Spray(
                Amount.between(row.number("nozzle_low_mm"), row.number("nozzle_high_mm")),
                Amount.between(row.number("air_low_psi"), row.number("air_high_psi")),
                Amount.between(row.number("cup_low_s"), row.number("cup_high_s")),
                row.text("note"),
                row.source());
    }

    /** In one line. */
    public String words() {
        String more = note.isEmpty() ? "" : "; " + note;
        return "nozzle %s mm, %s psi with the trigger pulled, %s s in the cup%s; begin here and adjust on a board"
                .formatted(Say.range(nozzle), Say.range(air), Say.range(cup), more);
    }
}
