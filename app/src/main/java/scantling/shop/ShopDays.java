package scantling.shop;

import java.time.Clock;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import scantling.piece.Workshop;
import scantling.plan.Plan;
import scantling.route.Operation;
import scantling.route.Step;
import scantling.route.Times;
import scantling.route.days.Agenda;
import scantling.route.days.Agendas;
import scantling.route.days.JobInHand;
import scantling.route.days.UsualHours;
import scantling.route.schedule.Effort;

/** What is to be done when, over all jobs in hand; kept until something in the shop changes or a quarter of an hour is over. */
public final class ShopDays {
    private static final int MINUTES_OF_AN_HOUR = 60;
    private static final int MORNING = 8 * MINUTES_OF_AN_HOUR;
    private static final int LAST_MINUTE = 24 * MINUTES_OF_AN_HOUR - 1;
    private static final long QUARTER = 900;
    /** Sawing to rough sizes is one stint at the bench and two operations; neither is learned from. */
    private static final Set<Step> ONE_STINT = Set.of(Step.CROSSCUT, Step.RIP);

    private final ShopStore store;
    private final Clock clock;
    private Known known = new Known(-1, -1, List.of());

    private record Known(long version, long quarter, List<Agenda.Entry> entries) {}

    /** @param clock by which it is now, and where the shop is */
    public ShopDays(ShopStore store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /** Everything left to do on jobs that can be built, by the time it begins; none when the shop hardly ever works. */
    public synchronized List<Agenda.Entry> entries() {
        long version = store.lastWork();
        long quarter = clock.instant().getEpochSecond() / QUARTER;
        if (known.version() != version || known.quarter() != quarter) {
            known = new Known(version, quarter, planned(clock.instant()));
        }
        return known.entries();
    }

    /** The first day on which there is something to do. */
    public List<Agenda.Entry> today() {
        List<Agenda.Entry> all = entries();
        return all.stream()
                .filter(entry ->
                        entry.from().toLocalDate().equals(all.get(0).from().toLocalDate()))
                .toList();
    }

    private List<Agenda.Entry> planned(Instant now) {
        List<JobInHand> jobs = new ArrayList<>();
        List<scantling.route.Logged> times = new ArrayList<>();
        for (Job job : store.jobs()) {
            if (job.state() == Job.State.IN_HAND) {
                route(job).ifPresent(plan -> {
                    Progress progress = Progress.of(plan, store.bench(job.id()));
                    learn(plan.route().operations(), progress, times);
                    jobs.add(new JobInHand(job.id(), plan.route(), job.due(), 1, Map.of(), progress.done()));
                });
            }
        }
        Times learned = store.settings().shop(store.rack()).office().times().and(times);
        List<JobInHand> timed = jobs.stream()
                .map(job -> new JobInHand(
                        job.name(), job.route().timed(learned), job.due(), job.priority(), job.arrives(), job.done()))
                .toList();
        try {
            ShopSettings settings = store.settings();
            return Agendas.plan(calendar(settings, clock.getZone()), timed, now, Effort.FIRST, 0)
                    .entries();
        } catch (IllegalArgumentException hardlyEverWorks) {
            return List.of();
        }
    }

    private Optional<Plan> route(Job job) {
        return store.jobBook()
                .planOf(job.id())
                .filter(JobPlan.Planned.class::isInstance)
                .map(plan -> ((JobPlan.Planned) plan).plan())
                .filter(plan -> plan.problems().isEmpty());
    }

    /** What was logged on an operation that is done teaches how long such work takes here. */
    private static void learn(List<Operation> operations, Progress progress, List<scantling.route.Logged> times) {
        for (Operation operation : operations) {
            int spent = progress.minutes(operation);
            if (spent > 0 && progress.isDone(operation) && !ONE_STINT.contains(operation.step())) {
                times.add(new scantling.route.Logged(operation.work(), operation.amount(), spent));
            }
        }
    }

    /** When the shop works: as its text says, else by the hours it has set, else as usual. */
    public static Workshop calendar(ShopSettings settings, ZoneId zone) {
        return settings.calendar()
                .orElseGet(() -> settings.section(Section.HOURS).isEmpty()
                                && settings.closed().isEmpty()
                        ? UsualHours.in(zone)
                        : workshop(settings, zone));
    }

    /** The shop's hours: each day from eight in the morning (common practice), for as long as is set. */
    static Workshop workshop(ShopSettings settings, ZoneId zone) {
        Map<DayOfWeek, List<Workshop.Hours>> hours = new EnumMap<>(DayOfWeek.class);
        for (DayOfWeek day : DayOfWeek.values()) {
            int worked = Math.min(LAST_MINUTE, (int) Math.round(settings.hours(day) * MINUTES_OF_AN_HOUR));
            if (worked > 0) {
                int from = Math.min(MORNING, LAST_MINUTE - worked);
                hours.put(day, List.of(new Workshop.Hours(at(from), at(from + worked))));
            }
        }
        return new Workshop(
                zone,
                hours,
                settings.closed(),
                1,
                OptionalInt.empty(),
                Map.of(),
                OptionalInt.empty(),
                OptionalInt.empty());
    }

    private static LocalTime at(int minute) {
        return LocalTime.of(minute / MINUTES_OF_AN_HOUR, minute % MINUTES_OF_AN_HOUR);
    }
}
