package scantling.packet.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import org.junit.jupiter.api.Test;
import scantling.packet.Days;
import scantling.route.Minutes;
import scantling.route.Needs;
import scantling.route.Operation;
import scantling.route.Pause;
import scantling.route.Route;
import scantling.route.Step;
import scantling.route.days.JobInHand;
import scantling.route.days.UsualHours;
import scantling.route.glue.GlueOrder;

/** Read back by two readers that are not ours, and held against RFC 5545 sections 3.1, 3.3.11 and 3.8.4.7. */
class RouteCalendarTest {
    private static final ZoneId LISBON = ZoneId.of("Europe/Lisbon");
    private static final Instant WEDNESDAY = Instant.parse("2026-11-25T08:00:00Z");
    private static final Instant JULY = Instant.parse("2026-07-01T07:00:00Z");

    private static Operation operation(String id, String title, double minutes, double pause, String... after) {
        return new Operation(
                id,
                Step.FIRST_MILL,
                title,
                List.of("part"),
                List.of("fence 40; stop, 12 \\ 6"),
                List.of(),
                id,
                1,
                new Minutes(minutes, minutes, minutes),
                0,
                new Pause(pause, OptionalDouble.empty(), "it rests", "by hand"),
                Needs.HANDS,
                List.of(),
                List.of(after));
    }

    private static final Route ROUTE = new Route(
            List.of(
                    operation(
                            "mill / 桜",
                            "Mill; all, of 桜の木の引き出しの前板 and Größenordnung für die Schubladen, long",
                            120,
                            12),
                    operation("glue", "Glue", 60, 0, "mill / 桜")),
            GlueOrder.NONE);

    private static String written(Instant from, JobInHand job) {
        return RouteCalendar.of(Days.from(UsualHours.in(LISBON), List.of(job), from))
                .orElseThrow();
    }

    private static String written(Instant from) {
        return written(from, Days.alone("Chest, oak", ROUTE));
    }

    private static Map<String, VEvent> events(String text) {
        ICalendar calendar = Biweekly.parse(text).first();
        assertEquals(List.of(), List.copyOf(calendar.validate(ICalVersion.V2_0).getWarnings()));
        return calendar.getEvents().stream()
                .collect(Collectors.toMap(event -> event.getUid().getValue(), event -> event));
    }

    private static List<VEvent> inOrder(String text) {
        return events(text).values().stream()
                .sorted(Comparator.comparing(event -> event.getDateStart().getValue()))
                .toList();
    }

    private static Instant start(VEvent event) {
        return event.getDateStart().getValue().toInstant();
    }

    @Test
    void anotherReaderFindsEveryOperationAtItsTime() {
        // By hand: two hours from 8 on Wednesday, twelve hours of rest until 22, so the glue at 8 on Thursday for an
        // hour.
        List<VEvent> events = inOrder(written(WEDNESDAY));
        assertEquals(2, events.size());
        assertEquals(Instant.parse("2026-11-25T08:00:00Z"), start(events.get(0)));
        assertEquals(
                Instant.parse("2026-11-25T10:00:00Z"),
                events.get(0).getDateEnd().getValue().toInstant());
        assertEquals(Instant.parse("2026-11-26T08:00:00Z"), start(events.get(1)));
        assertEquals(
                Instant.parse("2026-11-26T09:00:00Z"),
                events.get(1).getDateEnd().getValue().toInstant());
    }

    @Test
    void commasSemicolonsBackslashesAndOtherScriptsComeBackAsTheyWere() {
        VEvent mill = inOrder(written(WEDNESDAY)).get(0);
        assertEquals(
                "Chest, oak: Mill; all, of 桜の木の引き出しの前板 and Größenordnung für die Schubladen, long",
                mill.getSummary().getValue());
        assertEquals(
                "120 minutes of hands (120 to 120).\nThen 12.0 hours: it rests.\nfence 40; stop, 12 \\ 6",
                mill.getDescription().getValue());
    }

    @Test
    void timesStandInTheShopsOwnZoneAndItsSummerIsKept() {
        String text = written(JULY);
        assertTrue(text.contains("BEGIN:VTIMEZONE\r\nTZID:Europe/Lisbon\r\n"), text);
        assertTrue(text.contains("DTSTART;TZID=Europe/Lisbon:20260701T080000\r\n"), text);
        assertEquals(JULY, start(inOrder(text).get(0)));
    }

    @Test
    void takingItInAgainMovesTheEventsThatAreThere() {
        Map<String, VEvent> first = events(written(WEDNESDAY));
        Map<String, VEvent> later = events(written(WEDNESDAY.plusSeconds(24 * 3600)));
        assertEquals(first.keySet(), later.keySet());
        first.forEach((uid, event) -> {
            VEvent moved = Objects.requireNonNull(later.get(uid), uid);
            assertEquals(24 * 3600, start(moved).getEpochSecond() - start(event).getEpochSecond());
            assertTrue(moved.getSequence().getValue() > event.getSequence().getValue(), uid);
        });
    }

    @Test
    void whatIsDoneStaysWhereItWasDone() {
        Instant to = WEDNESDAY.plusSeconds(1800);
        JobInHand.Done done = new JobInHand.Done(WEDNESDAY, Optional.of(to));
        JobInHand job = new JobInHand("Chest, oak", ROUTE, Optional.empty(), 1, Map.of(), Map.of("mill / 桜", done));
        List<VEvent> events = inOrder(written(to, job));
        assertEquals(2, events.size());
        assertTrue(events.get(0).getSummary().getValue().startsWith("Done: "), "" + events.get(0));
        assertEquals(to, events.get(0).getDateEnd().getValue().toInstant());
        assertEquals(
                events(written(WEDNESDAY)).keySet(), events(written(to, job)).keySet());
    }

    @Test
    void noLineIsLongerThanSeventyFiveOctetsAndAllEndAsTheStandardSays() {
        String text = written(WEDNESDAY);
        assertTrue(text.endsWith("END:VCALENDAR\r\n"));
        assertEquals(text, text.replace("\r\n", "\n").replace("\r", "").replace("\n", "\r\n"));
        for (String line : text.split("\r\n")) {
            assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, line);
        }
    }

    @Test
    void theLibraryOfTheStandardFindsNothingWrong() throws Exception {
        Calendar read = new CalendarBuilder().build(new StringReader(written(WEDNESDAY)));
        assertEquals(List.of(), List.copyOf(read.validate(true).getEntries()));
    }

    @Test
    void withNothingToDoThereIsNone() {
        JobInHand empty = Days.alone("Chest", Route.NONE);
        assertEquals(Optional.empty(), RouteCalendar.of(Days.from(UsualHours.in(LISBON), List.of(empty), WEDNESDAY)));
    }
}
