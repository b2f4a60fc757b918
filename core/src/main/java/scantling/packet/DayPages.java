package scantling.packet;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import scantling.measure.Once;
import scantling.route.Operation;
import scantling.route.days.Agenda;
import scantling.route.days.JobInHand;

/** What the page templates ask of the days of work. */
public final class DayPages {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    private final PacketContent content;
    private final RoutePages route;
    private final Optional<Days> dated;
    private final Once<List<Day>> all = Once.of(this::findAll);

    DayPages(PacketContent content, RoutePages route) {
        this.content = content;
        this.route = route;
        this.dated = content.days().filter(Days::dated);
    }

    /** The job of these days that this packet is of. */
    private String job(Days days) {
        return days.jobs().stream()
                .filter(each -> each.route().equals(content.route()))
                .map(JobInHand::name)
                .findFirst()
                .orElse("");
    }

    /** A day. @param heading its date or number @param lines what is begun on it, in order */
    public record Day(String heading, List<Line> lines) {}

    /** Something done on a day. @param at when it is begun, or empty @param done whether it is done already */
    public record Line(String at, boolean done, RoutePages.Row row) {}

    /** What days are meant. */
    public String note() {
        return dated.isPresent()
                ? "Days and times as they would fall if all takes as long as is likely; in between is time for what"
                        + " else is in hand."
                : "Days of eight hours, one pair of hands, nothing else in hand; say from when, and they get dates.";
    }

    /** When it will be done; nothing when no beginning is said. */
    public Optional<String> promise() {
        return dated.stream()
                .flatMap(days -> days.agenda().promises().stream()
                        .filter(promise -> promise.job().equals(job(days))))
                .map(promise -> "Planned for %s. Nine times in ten not later than %s."
                        .formatted(DAY.format(promise.planned()), DAY.format(promise.safe())))
                .findFirst();
    }

    /** Day by day, what is done already before all else. */
    public List<Day> all() {
        return all.get();
    }

    private List<Day> findAll() {
        Days days = dated.orElseGet(() -> Days.undated(content.route()));
        String job = job(days);
        List<Operation> order = new ArrayList<>(finished(days, job));
        List<Agenda.Entry> entries = days.agenda().entries().stream()
                .filter(entry -> entry.job().equals(job))
                .toList();
        int before = order.size();
        entries.forEach(entry -> order.add(entry.operation()));
        Iterator<RoutePages.Row> rows = route.rows(order).iterator();
        Map<String, List<Line>> by = new LinkedHashMap<>();
        for (int i = 0; i < before; i++) {
            by.computeIfAbsent("Done already", key -> new ArrayList<>()).add(new Line("", true, rows.next()));
        }
        Map<LocalDate, Integer> numbers = new LinkedHashMap<>();
        for (Agenda.Entry entry : entries) {
            numbers.putIfAbsent(entry.from().toLocalDate(), numbers.size() + 1);
            by.computeIfAbsent(heading(entry.from(), numbers), key -> new ArrayList<>())
                    .add(new Line(dated.isPresent() ? TIME.format(entry.from()) : "", false, rows.next()));
        }
        return by.entrySet().stream()
                .map(day -> new Day(day.getKey(), day.getValue()))
                .toList();
    }

    private String heading(ZonedDateTime at, Map<LocalDate, Integer> numbers) {
        return dated.isPresent() ? DAY.format(at) : "Day " + numbers.get(at.toLocalDate());
    }

    private static List<Operation> finished(Days days, String job) {
        return days.jobs().stream()
                .filter(each -> each.name().equals(job))
                .flatMap(each -> each.route().operations().stream().filter(operation -> isDone(each, operation)))
                .toList();
    }

    private static boolean isDone(JobInHand job, Operation operation) {
        return Optional.ofNullable(job.done().get(operation.id()))
                .flatMap(JobInHand.Done::to)
                .isPresent();
    }
}
