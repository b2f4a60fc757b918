package scantling.route;

import java.util.OptionalDouble;
import scantling.timber.Table;

/**
 * Time after an operation in which nobody's hands are needed.
 *
 * @param hours least time before what comes next
 * @param closes hours after which it is too late for what comes next, where that is so
 * @param why what happens in it
 * @param source who says so
 */
public record Pause(double hours, OptionalDouble closes, String why, String source) {
    /** None. */
    public static final Pause NONE = new Pause(0, OptionalDouble.empty(), "", "");

    private static final Table TABLE = Table.read("route/pauses.csv");

    /** Checks that the window is open at all. */
    public Pause {
        if (hours < 0 || closes.orElse(hours) < hours) {
            throw new IllegalArgumentException(
                    "A pause of (%s) hours that closes after (%s) leaves no time.".formatted(hours, closes));
        }
    }

    static Pause of(String name) {
        return of(TABLE.getRow("pause", name));
    }

    private static Pause of(Table.Row row) {
        return new Pause(row.number("least_h"), OptionalDouble.empty(), row.text("why"), row.source());
    }
}
