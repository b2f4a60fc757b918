package scantling.route.days;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import scantling.piece.Workshop;
import scantling.route.schedule.Effort;
import scantling.route.schedule.Scheduler;
import scantling.route.schedule.Timetable;

/** What would have to change for a job to be done by its day: each change tried by itself, the job alone in the shop. */
final class Changes {
    private static final LocalTime LATEST = LocalTime.of(23, 0);
    private static final int LONGER = 2;

    private final Workshop workshop;
    private final JobInHand job;
    private final Instant now;

    Changes(Workshop workshop, JobInHand job, Instant now) {
        this.workshop = workshop;
        this.job = job;
        this.now = now;
    }

    /** Every change with the day it comes to. */
    String told() {
        LocalDate due = job.due().orElseThrow();
        List<String> enough = new ArrayList<>();
        List<String> tooLate = new ArrayList<>();
        tried().forEach((words, day) -> (day.isAfter(due) ? tooLate : enough).add("%s: %s".formatted(words, day)));
        String rest = tooLate.isEmpty() ? "" : " Not enough by itself: %s.".formatted(String.join("; ", tooLate));
        return (enough.isEmpty()
                        ? "Agree on a later day."
                        : "It would be in time with %s. Or agree on a later day.".formatted(String.join("; ", enough)))
                + rest;
    }

    private Map<String, LocalDate> tried() {
        Map<String, LocalDate> tried = new LinkedHashMap<>();
        if (!job.arrives().isEmpty()) {
            tried.put("all material there now", earliest(workshop, waitingForNothing()));
        }
        tried.put("two hours more each working day", earliest(longer(), job));
        tried.put("Saturdays worked like Fridays", earliest(saturdays(), job));
        tried.put("one more pair of hands", earliest(with(workshop.hours(), workshop.hands() + 1), job));
        tried.put("all of these together", earliest(all(), waitingForNothing()));
        return tried;
    }

    private LocalDate earliest(Workshop shop, JobInHand one) {
        Laying alone = new Laying(shop, List.of(one), now);
        Timetable best = Scheduler.schedule(alone.network(), Effort.FIRST);
        int last = alone.network().goals().get(0).task();
        return alone.calendar().momentOf(best.places().get(last).end()).toLocalDate();
    }

    private JobInHand waitingForNothing() {
        return new JobInHand(job.name(), job.route(), job.due(), job.priority(), Map.of(), job.done());
    }

    private Workshop longer() {
        Map<DayOfWeek, List<Workshop.Hours>> week = new EnumMap<>(DayOfWeek.class);
        workshop.hours().forEach((day, hours) -> week.put(day, longer(hours)));
        return with(week, workshop.hands());
    }

    private static List<Workshop.Hours> longer(List<Workshop.Hours> hours) {
        if (hours.isEmpty()) {
            return hours;
        }
        List<Workshop.Hours> more = new ArrayList<>(hours);
        Workshop.Hours last = more.remove(more.size() - 1);
        LocalTime to = last.to().isAfter(LATEST.minusHours(LONGER))
                ? last.to()
                : last.to().plusHours(LONGER);
        more.add(new Workshop.Hours(last.from(), to));
        return more;
    }

    private Workshop saturdays() {
        Map<DayOfWeek, List<Workshop.Hours>> week = new EnumMap<>(DayOfWeek.class);
        week.putAll(workshop.hours());
        week.put(DayOfWeek.SATURDAY, workshop.hours().getOrDefault(DayOfWeek.FRIDAY, List.of()));
        return with(week, workshop.hands());
    }

    private Workshop all() {
        Map<DayOfWeek, List<Workshop.Hours>> week = new EnumMap<>(DayOfWeek.class);
        saturdays().hours().forEach((day, hours) -> week.put(day, longer(hours)));
        return with(week, workshop.hands() + 1);
    }

    private Workshop with(Map<DayOfWeek, List<Workshop.Hours>> hours, int hands) {
        return new Workshop(
                workshop.zone(),
                hours,
                workshop.closed(),
                hands,
                workshop.benches(),
                workshop.clamps(),
                workshop.spray(),
                workshop.drying(),
                workshop.dryingRoom());
    }
}
