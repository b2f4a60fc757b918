package scantling.route.days;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import scantling.piece.Workshop;
import scantling.timber.Table;

/** The hours of a shop that has not said its own: those of a table of the program. */
public final class UsualHours {
    private static final Table TABLE = Table.read("route/usual-hours.csv");

    private static final Table.Row DRYING =
            Table.read("route/route-figures.csv").getRow("name", "usual drying room");

    private UsualHours() {}

    /** Square metres to dry on where a shop does not say. */
    static double dryingRoom() {
        return DRYING.number("value");
    }

    static String dryingSource() {
        return DRYING.source();
    }

    /** A shop of one pair of hands that works the usual hours, has the usual room to dry and counts nothing else. @param zone where its clock hangs */
    public static Workshop in(ZoneId zone) {
        Map<DayOfWeek, List<Workshop.Hours>> week = new EnumMap<>(DayOfWeek.class);
        for (Table.Row row : TABLE.rows()) {
            week.computeIfAbsent(DayOfWeek.valueOf(row.text("day")), day -> new ArrayList<>())
                    .add(new Workshop.Hours(LocalTime.parse(row.text("from")), LocalTime.parse(row.text("to"))));
        }
        OptionalInt uncounted = OptionalInt.empty();
        return new Workshop(zone, week, Set.of(), 1, uncounted, Map.of(), uncounted, uncounted);
    }
}
