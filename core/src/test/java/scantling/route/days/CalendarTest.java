package scantling.route.days;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import scantling.piece.Workshop;

/** Working time against java.time, walked through five minutes at a time. */
class CalendarTest {
    private static final Workshop.Hours MORNING = hours("01:00", "04:30");
    private static final Workshop.Hours DAY = hours("08:00", "12:30");
    private static final Workshop.Hours LATE = hours("13:15", "17:05");

    private static Workshop.Hours hours(String from, String to) {
        return new Workshop.Hours(LocalTime.parse(from), LocalTime.parse(to));
    }

    static Workshop shop(String zone, Set<LocalDate> closed, Map<DayOfWeek, List<Workshop.Hours>> hours) {
        return new Workshop(
                ZoneId.of(zone),
                hours,
                closed,
                1,
                OptionalInt.empty(),
                Map.of(),
                OptionalInt.empty(),
                OptionalInt.empty());
    }

    private static boolean isWorking(Workshop shop, Instant at) {
        ZonedDateTime local = at.atZone(shop.zone());
        return shop.on(local.toLocalDate()).stream()
                .anyMatch(hours -> !local.toLocalTime().isBefore(hours.from())
                        && local.toLocalTime().isBefore(hours.to()));
    }

    /** Hours in the night of the change of clocks, a leap day, the turn of a year. */
    @ParameterizedTest
    @CsvSource({
        "Europe/Berlin, 2026-03-27",
        "Europe/Berlin, 2026-10-23",
        "America/New_York, 2027-03-12",
        "America/New_York, 2026-10-30",
        "Australia/Lord_Howe, 2026-10-02",
        "Europe/Lisbon, 2028-02-27",
        "Asia/Kolkata, 2026-12-30"
    })
    void workEndsWhenAWalkThroughJavaTimeSaysSo(String zone, LocalDate first) {
        Workshop shop = shop(
                zone,
                Set.of(first.plusDays(4)),
                Map.of(
                        DayOfWeek.SUNDAY, List.of(MORNING),
                        DayOfWeek.MONDAY, List.of(DAY, LATE),
                        DayOfWeek.TUESDAY, List.of(DAY, LATE),
                        DayOfWeek.FRIDAY, List.of(LATE)));
        Calendar calendar = Calendar.from(shop, first, 400, 400);
        SplittableRandom random = new SplittableRandom(7);
        for (int k = 0; k < 60; k++) {
            Instant start =
                    first.atStartOfDay(shop.zone()).toInstant().plus(Duration.ofMinutes(5L * random.nextInt(2000)));
            int work = 1 + random.nextInt(100);
            Instant walked = start;
            for (int done = 0; done < work; walked = walked.plus(Duration.ofMinutes(5))) {
                done += isWorking(shop, walked) ? 1 : 0;
            }
            int from = calendar.time().workAt(calendar.tickFrom(start));
            assertEquals(
                    walked.atZone(shop.zone()),
                    calendar.momentOf(calendar.time().endOf(from + work)),
                    () -> "from " + start + ", " + work + " ticks");
        }
    }

    @Test
    void aShopThatHardlyEverWorksIsRefused() {
        Workshop never = shop("Europe/Lisbon", Set.of(), Map.of());
        assertThrows(IllegalArgumentException.class, () -> Calendar.from(never, LocalDate.of(2026, 11, 25), 10, 10));
    }

    @Test
    void minutesOutOfHoursAreNotWorkedUnlessAllAre() {
        Workshop shop = shop("Europe/Lisbon", Set.of(), Map.of(DayOfWeek.MONDAY, List.of(DAY)));
        Instant eleven =
                ZonedDateTime.of(2026, 11, 23, 11, 0, 0, 0, shop.zone()).toInstant();
        assertEquals(90, TimeLog.worked(shop, eleven, eleven.plus(Duration.ofHours(5))));
        Instant evening = eleven.plus(Duration.ofHours(9));
        assertEquals(30, TimeLog.worked(shop, evening, evening.plus(Duration.ofMinutes(30))));
    }
}
