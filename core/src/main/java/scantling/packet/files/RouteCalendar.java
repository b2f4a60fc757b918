package scantling.packet.files;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.TimeZoneRegistry;
import net.fortuna.ical4j.model.TimeZoneRegistryFactory;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;
import scantling.packet.Days;
import scantling.route.Caution;
import scantling.route.Operation;
import scantling.route.Pause;
import scantling.route.days.Agenda;
import scantling.route.days.JobInHand;

/**
 * The work of jobs as a calendar file by RFC 5545. Every operation is one event whose identity follows from the job and the
 * operation alone: a calendar that takes the file again moves the events it has. Times stand in the shop's own zone.
 */
public final class RouteCalendar {
    private static final int MOST_OCTETS = 75;
    private static final int MINUTES = 60;
    private static final String LINE_END = "\r\n";

    private final Days days;
    private final Calendar calendar = new Calendar();

    private RouteCalendar(Days days) {
        this.days = days;
    }

    /** Writes it; nothing when there is nothing to put in it, for the standard knows no empty calendar. */
    public static Optional<String> of(Days days) {
        RouteCalendar route = new RouteCalendar(days);
        String text = route.written();
        return route.calendar.getComponents("VEVENT").isEmpty() ? Optional.empty() : Optional.of(text);
    }

    /** The identity of an operation of a job, the same however often it is planned. */
    static String identity(String job, String operation) {
        byte[] name = ("scantling " + job + "\n" + operation).getBytes(StandardCharsets.UTF_8);
        return UUID.nameUUIDFromBytes(name).toString();
    }

    private String written() {
        calendar.add(new ProdId("-//Scantling//Route//EN"));
        calendar.add(ImmutableVersion.VERSION_2_0);
        calendar.add(ImmutableCalScale.GREGORIAN);
        zones();
        days.jobs().forEach(this::done);
        days.agenda().entries().forEach(this::entry);
        return calendar.toString().lines().map(RouteCalendar::folded).collect(Collectors.joining());
    }

    private ZoneId zone() {
        return days.agenda().entries().stream()
                .map(entry -> entry.from().getZone())
                .findFirst()
                .orElse(ZoneOffset.UTC);
    }

    private void zones() {
        Set<String> names = new TreeSet<>();
        if (!(zone().normalized() instanceof ZoneOffset)) {
            names.add(zone().getId());
        }
        TimeZoneRegistry registry = TimeZoneRegistryFactory.getInstance().createRegistry();
        names.forEach(name -> calendar.add(registry.getTimeZone(name).getVTimeZone()));
    }

    private void done(JobInHand job) {
        for (Operation operation : job.route().operations()) {
            JobInHand.Done done = job.done().get(operation.id());
            if (done != null && done.to().isPresent()) {
                ZonedDateTime to = done.to().get().atZone(zone());
                add(job.name(), operation, done.from().atZone(zone()), to, "Done: ");
            }
        }
    }

    private void entry(Agenda.Entry entry) {
        add(entry.job(), entry.operation(), entry.from(), entry.to(), entry.begun() ? "Goes on: " : "");
    }

    private void add(String job, Operation operation, ZonedDateTime from, ZonedDateTime to, String before) {
        VEvent event = new VEvent(false);
        event.add(new Uid(identity(job, operation.id())));
        event.add(new DtStamp(days.made()));
        // Calendars take the event with the higher number for the later one; minutes since 1970 always grow.
        event.add(new Sequence((int) (days.made().getEpochSecond() / MINUTES)));
        times(event, from, to);
        String name = job.isEmpty() ? "" : job + ": ";
        event.add(new Summary(before + name + operation.title()));
        event.add(new Description(told(operation)));
        calendar.add(event);
    }

    private static void times(VEvent event, ZonedDateTime from, ZonedDateTime to) {
        if (from.getZone().normalized() instanceof ZoneOffset) {
            event.add(new DtStart<Instant>(from.toInstant()));
            event.add(new DtEnd<Instant>(to.toInstant()));
        } else {
            event.add(new DtStart<ZonedDateTime>(from));
            event.add(new DtEnd<ZonedDateTime>(to));
        }
    }

    private static String told(Operation operation) {
        StringBuilder text = new StringBuilder("%.0f minutes of hands (%.0f to %.0f)."
                .formatted(
                        operation.hands().likely(),
                        operation.hands().low(),
                        operation.hands().high()));
        Pause pause = operation.pause();
        if (pause.hours() > 0) {
            text.append("\nThen %.1f hours: %s.".formatted(pause.hours(), pause.why()));
        }
        operation.settings().forEach(setting -> text.append("\n").append(setting));
        operation.cautions().stream()
                .map(Caution::sentence)
                .forEach(caution -> text.append("\nMind: ").append(caution));
        return text.toString();
    }

    /** A line in pieces of at most 75 octets, none of which ends within a letter, as the standard asks. */
    static String folded(String line) {
        StringBuilder out = new StringBuilder();
        int room = MOST_OCTETS;
        for (int letter : line.codePoints().toArray()) {
            String next = Character.toString(letter);
            int octets = next.getBytes(StandardCharsets.UTF_8).length;
            if (octets > room) {
                out.append(LINE_END).append(' ');
                room = MOST_OCTETS - 1;
            }
            out.append(next);
            room -= octets;
        }
        return out.append(LINE_END).toString();
    }
}
