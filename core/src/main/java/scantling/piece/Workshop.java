package scantling.piece;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import scantling.measure.Length;

/**
 * When a shop works and what it has only so much of.
 *
 * @param zone where its clock hangs
 * @param hours when there is work, by day of the week, in order and apart
 * @param closed days without work
 * @param hands how many pairs of hands, at least one
 * @param benches bench places; not said, they are not counted
 * @param clamps how many clamps of which length; none said, they are not counted
 * @param spray places to spray; not said, they are not counted
 * @param drying places to dry, one to a coat; not said, they are not counted
 * @param dryingRoom square metres to dry on, all shelves of a rack together; not said, the usual room is taken where places
 *     are not counted either
 */
public record Workshop(
        ZoneId zone,
        Map<DayOfWeek, List<Hours>> hours,
        Set<LocalDate> closed,
        int hands,
        OptionalInt benches,
        Map<Length, Integer> clamps,
        OptionalInt spray,
        OptionalInt drying,
        OptionalDouble dryingRoom) {
    /** Part of a day. @param from when work begins @param to when it stops, later on the same day */
    public record Hours(LocalTime from, LocalTime to) {}

    /** Takes its own copies, lengths of clamps and days in order. */
    public Workshop {
        hours = Map.copyOf(hours);
        closed = new TreeSet<>(closed);
        clamps = new TreeMap<>(clamps);
    }

    /** One that does not say how much room there is to dry. */
    public Workshop(
            ZoneId zone,
            Map<DayOfWeek, List<Hours>> hours,
            Set<LocalDate> closed,
            int hands,
            OptionalInt benches,
            Map<Length, Integer> clamps,
            OptionalInt spray,
            OptionalInt drying) {
        this(zone, hours, closed, hands, benches, clamps, spray, drying, OptionalDouble.empty());
    }

    /** The hours of a day; none where it is closed. */
    public List<Hours> on(LocalDate day) {
        return closed.contains(day) ? List.of() : hours.getOrDefault(day.getDayOfWeek(), List.of());
    }
}
