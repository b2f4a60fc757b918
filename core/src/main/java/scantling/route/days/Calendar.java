package scantling.route.days;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import scantling.piece.Workshop;
import scantling.route.schedule.WorkTime;

/**
 * The working time of a shop in ticks of five minutes, counted from a midnight by the clock of the world: a night in which the
 * clocks are changed is an hour longer or shorter, as it is.
 */
public final class Calendar {
    /** Minutes in a tick. */
    public static final int TICK = 5;

    private static final long SECONDS = 60L * TICK;
    private static final int MOST_DAYS = 3660;

    private final Workshop workshop;
    private final LocalDate first;
    private final Instant origin;
    private final WorkTime time;

    private Calendar(Workshop workshop, LocalDate first, Instant origin, WorkTime time) {
        this.workshop = workshop;
        this.first = first;
        this.origin = origin;
        this.time = time;
    }

    /**
     * The calendar from a day on, until it holds so many ticks of work and reaches so many ticks of the clock.
     *
     * @throws IllegalArgumentException if the shop does not work that much in ten years
     */
    public static Calendar from(Workshop workshop, LocalDate first, long workTicks, long clockTicks) {
        Instant origin = first.atStartOfDay(workshop.zone()).toInstant();
        List<WorkTime.Window> windows = new ArrayList<>();
        long work = 0;
        long clock = 0;
        for (int day = 0; day < MOST_DAYS && (work < workTicks || clock < clockTicks); day++) {
            for (Workshop.Hours hours : workshop.on(first.plusDays(day))) {
                long from = up(origin, at(workshop, first.plusDays(day), hours.from()));
                long to = down(origin, at(workshop, first.plusDays(day), hours.to()));
                if (to > from
                        && (windows.isEmpty() || windows.get(windows.size() - 1).to() <= from)) {
                    windows.add(new WorkTime.Window((int) from, (int) to, day));
                    work += to - from;
                    clock = to;
                }
            }
        }
        if (work < workTicks || clock < clockTicks) {
            throw new IllegalArgumentException(
                    "The shop does not work (%d) hours in ten years.".formatted(workTicks * TICK / 60));
        }
        return new Calendar(workshop, first, origin, WorkTime.of(windows));
    }

    /** A time of day that the clocks leave out is taken as the first moment after the gap. */
    private static Instant at(Workshop workshop, LocalDate day, LocalTime time) {
        return ZonedDateTime.of(day, time, workshop.zone()).toInstant();
    }

    private static long up(Instant origin, Instant at) {
        return -Math.floorDiv(origin.getEpochSecond() - at.getEpochSecond(), SECONDS);
    }

    private static long down(Instant origin, Instant at) {
        return Math.floorDiv(at.getEpochSecond() - origin.getEpochSecond(), SECONDS);
    }

    /** Working time in ticks. */
    public WorkTime time() {
        return time;
    }

    /** The first tick that does not begin before a moment; 0 for moments before the calendar. */
    public int tickFrom(Instant at) {
        return (int) Math.max(0, Math.min(Integer.MAX_VALUE / 4, up(origin, at)));
    }

    /** The last tick that ends by the end of a day. */
    public int endOf(LocalDate day) {
        Instant midnight = day.plusDays(1).atStartOfDay(workshop.zone()).toInstant();
        return (int) Math.max(0, Math.min(Integer.MAX_VALUE / 4, down(origin, midnight)));
    }

    /** The moment at which a tick begins. */
    public ZonedDateTime momentOf(int tick) {
        return origin.plusSeconds(tick * SECONDS).atZone(workshop.zone());
    }

    /** The day from which it counts. */
    public LocalDate first() {
        return first;
    }

    /** So many minutes as whole ticks, at least one. */
    static int ticks(double minutes) {
        return Math.max(1, (int) Math.ceil(minutes / TICK - 1e-9));
    }

    /** So many hours of waiting as whole ticks. */
    static int ticksOfHours(double hours) {
        return (int) Math.ceil(hours * 60 / TICK - 1e-9);
    }
}
