package scantling.route.days;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import scantling.construct.Finding;
import scantling.measure.Length;
import scantling.piece.Workshop;
import scantling.route.Minutes;
import scantling.route.Needs;
import scantling.route.Operation;
import scantling.route.Pause;
import scantling.route.Route;
import scantling.route.Step;
import scantling.route.glue.GlueOrder;
import scantling.route.schedule.Effort;

/** Agendas worked by hand. The shop works from 8 to 16 on weekdays; 23 November 2026 is a Monday. */
class AgendasTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/Lisbon");

    private static Workshop shop() {
        Map<DayOfWeek, List<Workshop.Hours>> week = new EnumMap<>(DayOfWeek.class);
        for (int day = 1; day <= 5; day++) {
            week.put(DayOfWeek.of(day), List.of(new Workshop.Hours(LocalTime.of(8, 0), LocalTime.of(16, 0))));
        }
        return new Workshop(
                ZONE,
                week,
                Set.of(),
                1,
                OptionalInt.of(2),
                Map.of(Length.mm(600), 2, Length.mm(1200), 2),
                OptionalInt.empty(),
                OptionalInt.of(1));
    }

    private static Instant at(int day, int hour) {
        return ZonedDateTime.of(2026, 11, day, hour, 0, 0, 0, ZONE).toInstant();
    }

    private static Operation operation(Step step, String id, double hours, double pause, Needs needs, String... after) {
        return new Operation(
                id,
                step,
                id,
                List.of("part"),
                List.of(),
                List.of(),
                id,
                1,
                new Minutes(hours * 45, hours * 60, hours * 90),
                0,
                new Pause(pause, OptionalDouble.empty(), "it dries", "by hand"),
                needs,
                List.of(),
                List.of(after));
    }

    /** Mill 2 h, rest 24 h, glue 1 h, in clamps 1 h and over night, plane 1 h. */
    private static Route chest(int clamps, int length) {
        return new Route(
                List.of(
                        operation(Step.RECEIVE, "receive cherry", 1, 0, Needs.HANDS),
                        operation(Step.FIRST_MILL, "mill", 2, 24, Needs.HANDS, "receive cherry"),
                        operation(Step.GLUE_UP, "glue", 1, 12, Needs.gluing(clamps, Length.mm(length), 1), "mill"),
                        operation(Step.FLUSH, "plane", 1, 0, Needs.BENCH, "glue")),
                GlueOrder.NONE);
    }

    private static JobInHand job(String name, Route route, Map<String, JobInHand.Done> done) {
        return new JobInHand(name, route, Optional.empty(), 1, Map.of(), done);
    }

    private static Agenda plan(Instant now, JobInHand... jobs) {
        return Agendas.plan(shop(), List.of(jobs), now, Effort.FIRST, 50);
    }

    private static List<String> said(Agenda agenda) {
        return agenda.entries().stream()
                .map(entry -> "%s %s %d %s"
                        .formatted(
                                entry.job(),
                                entry.operation().id(),
                                entry.from().getDayOfMonth(),
                                entry.from().toLocalTime()))
                .toList();
    }

    @Test
    void whatRestsAndDriesDoesSoOverNight() {
        assertEquals(
                List.of(
                        "chest receive cherry 23 08:00",
                        "chest mill 23 09:00",
                        "chest glue 24 11:00",
                        "chest plane 25 08:00"),
                said(plan(at(23, 8), job("chest", chest(2, 500), Map.of()))));
    }

    @Test
    void whatLetsSomethingRestComesFirstAndSaysSo() {
        Agenda agenda = plan(at(23, 8), job("chest", chest(2, 500), Map.of()));
        assertTrue(
                agenda.entries().get(1).why().contains("24 h"), agenda.entries().get(1)::why);
        assertTrue(
                agenda.entries().get(0).why().contains("mill"), agenda.entries().get(0)::why);
    }

    @Test
    void replannedFromNowThePastStaysAndWhatWasLateMovesTheRest() {
        // Milling ended on Tuesday at 15, two hours late: it rests until Wednesday at 15.
        Map<String, JobInHand.Done> done = Map.of(
                "receive cherry", new JobInHand.Done(at(23, 8), Optional.of(at(23, 9))),
                "mill", new JobInHand.Done(at(24, 12), Optional.of(at(24, 15))));
        assertEquals(
                List.of("chest glue 25 15:00", "chest plane 26 08:00"),
                said(plan(at(24, 15), job("chest", chest(2, 500), done))));
    }

    @Test
    void materialThatComesLaterIsWaitedFor() {
        JobInHand later = new JobInHand(
                "chest", chest(2, 500), Optional.empty(), 1, Map.of("cherry", LocalDate.of(2026, 11, 26)), Map.of());
        assertEquals(
                "chest receive cherry 26 08:00", said(plan(at(23, 8), later)).get(0));
    }

    @Test
    void aDueDateThatCannotBeKeptNamesTheEarliest() {
        JobInHand hurried =
                new JobInHand("chest", chest(2, 500), Optional.of(LocalDate.of(2026, 11, 24)), 1, Map.of(), Map.of());
        List<Finding> findings = plan(at(23, 8), hurried).findings();
        assertEquals(1, findings.size(), findings::toString);
        assertEquals(Finding.Severity.STOP, findings.get(0).severity());
        assertTrue(findings.get(0).sentence().contains("2026-11-25"), findings::toString);
    }

    @Test
    void clampsThatTheShopDoesNotHaveAreNamed() {
        assertTrue(plan(at(23, 8), job("chest", chest(3, 500), Map.of()))
                .findings()
                .isEmpty());
        Agenda tooMany = plan(at(23, 8), job("chest", chest(3, 900), Map.of()));
        assertTrue(tooMany.findings().get(0).sentence().contains("2 of its clamps"), tooMany.findings()::toString);
        Agenda tooLong = plan(at(23, 8), job("chest", chest(1, 2000), Map.of()));
        assertTrue(tooLong.findings().get(0).sentence().contains("no clamp of"), tooLong.findings()::toString);
    }

    @Test
    void theOddsLieAroundThePlanAndAreTheSameEveryTime() {
        Agenda agenda = plan(at(23, 8), job("chest", chest(2, 500), Map.of()));
        Agenda.Promise promise = agenda.promises().get(0);
        assertFalse(promise.safe().isBefore(promise.even()));
        assertEquals(
                agenda.promises(),
                plan(at(23, 8), job("chest", chest(2, 500), Map.of())).promises());
        // All before it has slack over the rest and the night: only the last hour moves the date.
        assertEquals("plane", promise.drivers().get(0).operation());
    }

    @Test
    void whenAllIsDoneNothingIsLeft() {
        JobInHand.Done done = new JobInHand.Done(at(23, 8), Optional.of(at(23, 9)));
        Map<String, JobInHand.Done> all = Map.of("receive cherry", done, "mill", done, "glue", done, "plane", done);
        assertEquals(
                List.of(), plan(at(27, 8), job("chest", chest(2, 500), all)).entries());
    }

    /** By hand: received Monday the 23rd, milled, rested till Tuesday at 11, glued, planed on Wednesday the 25th at the earliest. */
    @Test
    void anImpossibleDueDateSaysWhichChangesWouldDoAndWhichWouldNot() {
        JobInHand late = new JobInHand(
                "chest",
                chest(2, 600),
                Optional.of(LocalDate.of(2026, 11, 25)),
                1,
                Map.of("cherry", LocalDate.of(2026, 11, 26)),
                Map.of());
        Finding finding = plan(at(23, 8), late).findings().get(0);
        assertEquals(Finding.Severity.STOP, finding.severity());
        assertTrue(finding.remedy().contains("in time with all material there now: 2026-11-25"), finding::remedy);
        assertTrue(finding.remedy().contains("Not enough by itself: two hours more"), finding::remedy);
    }

    private static Operation coat(String id, double closes, String... after) {
        Operation plain = operation(Step.FINISH, id, 1, 2, Needs.coating(false, 0, 2), after);
        return new Operation(
                id,
                Step.FINISH,
                id,
                plain.parts(),
                List.of("Next coat within 6 h; later, scuff with 320 first."),
                List.of(),
                id,
                1,
                plain.hands(),
                0,
                new Pause(2, OptionalDouble.of(closes), "the coat dries", "by hand"),
                plain.needs(),
                List.of(),
                List.of(after));
    }

    /** Coat one was done on Friday at 16:00; its window of 6 h closed over the weekend. */
    @Test
    void aCoatWhoseWindowHasClosedWantsAScuffBeforeTheNext() {
        Route route = new Route(List.of(coat("one", 6), coat("two", 6, "one")), GlueOrder.NONE);
        JobInHand job = job("chest", route, Map.of("one", new JobInHand.Done(at(20, 15), Optional.of(at(20, 16)))));
        Agenda agenda = plan(at(23, 8), job);
        assertTrue(
                agenda.findings().get(0).sentence().contains("begins 64 h after \"one\""), agenda.findings()::toString);
        assertTrue(
                agenda.entries().get(0).operation().settings().toString().contains("has closed: scuff with 320"),
                agenda.entries()::toString);
    }

    @Test
    void aWindowThatIsKeptAsksForNothing() {
        Route route = new Route(List.of(coat("one", 6), coat("two", 6, "one")), GlueOrder.NONE);
        Agenda agenda = plan(at(23, 8), job("chest", route, Map.of()));
        assertEquals(List.of(), agenda.findings());
    }

    @Test
    void aCoatAfterDeliveryIsAStop() {
        Route route = new Route(
                List.of(coat("coat", 6), operation(Step.DELIVER, "deliver", 1, 0, Needs.HANDS, "coat")),
                GlueOrder.NONE);
        JobInHand job = job("chest", route, Map.of("deliver", new JobInHand.Done(at(20, 8), Optional.of(at(20, 9)))));
        Finding finding = plan(at(23, 8), job).findings().get(0);
        assertEquals(Finding.Severity.STOP, finding.severity());
        assertTrue(finding.sentence().contains("A coat cannot follow delivery"), finding::sentence);
    }

    /**
     * Two coats of an hour, each 0.6 m2 wet for two hours. On 1 m2 they cannot lie together: the first is done at 9 and dry
     * at 11, so the second, after which its own lies wet, is done at 11. On 2 m2 it is done at 10.
     */
    @Test
    void wetPartsWaitForRoomToDry() {
        assertEquals(at(23, 11), secondCoat(1.0));
        assertEquals(at(23, 10), secondCoat(2.0));
    }

    @Test
    void aCoatLargerThanTheRoomIsSaidOnceForItsJob() {
        Route route = new Route(List.of(wet("one", 3), wet("two", 4)), GlueOrder.NONE);
        List<Finding> findings = plan(drying(1), job("chest", route, Map.of())).findings();
        assertEquals(1, findings.size(), findings::toString);
        assertTrue(findings.get(0).sentence().contains("wants 4.0 m2"), findings::toString);
    }

    private static Instant secondCoat(double room) {
        Route route = new Route(List.of(wet("one", 0.6), wet("two", 0.6)), GlueOrder.NONE);
        List<Agenda.Entry> entries =
                plan(drying(room), job("chest", route, Map.of())).entries();
        return entries.get(1).to().toInstant();
    }

    private static Operation wet(String id, double room) {
        return operation(Step.FINISH, id, 1, 2, Needs.coating(false, room, 2));
    }

    private static Workshop drying(double room) {
        return new Workshop(
                ZONE,
                shop().hours(),
                Set.of(),
                1,
                OptionalInt.empty(),
                Map.of(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                OptionalDouble.of(room));
    }

    private static Agenda plan(Workshop shop, JobInHand job) {
        return Agendas.plan(shop, List.of(job), at(23, 8), Effort.FIRST, 0);
    }
}
