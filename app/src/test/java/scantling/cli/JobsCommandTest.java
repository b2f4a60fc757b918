package scantling.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Route, days and today as a maker would ask for them. */
class JobsCommandTest extends AtTheConsole {
    private static final String SHOP = """
        shop:
          zone: Europe/Lisbon
          hours: 8:00-12:30, 13:15-17:00
          clamps: {600: 8, 1200: 8}
        jobs:
          shelf:
            piece: wall-shelf.yaml
        """;

    @BeforeEach
    void start() {
        assertEquals(
                Exit.WELL,
                scantling("new", shop.resolve("wall-shelf.yaml").toString()).code());
    }

    private Answer days(String text) throws IOException {
        Path file = Files.writeString(shop.resolve("jobs.yaml"), text);
        return scantling("days", file.toString(), "--at", "2026-11-23T08:00", "--first");
    }

    @Test
    void theRouteIsToldFromReceivingToDelivering() {
        Answer answer = scantling("route", shop.resolve("wall-shelf.yaml").toString());
        assertEquals(Exit.WELL, answer.code(), answer::toString);
        for (String words :
                List.of("Receive and stack", "Joint and plane", "then 24 h", "Glue up", "Deliver", "Hands-on")) {
            assertTrue(answer.out().contains(words), words);
        }
    }

    @Test
    void theOrderOfGlueUpIsToldPartByPart() {
        Answer answer =
                scantling("route", "--gluing", shop.resolve("wall-shelf.yaml").toString());
        assertTrue(answer.out().contains("right side, toward the left"), answer::out);
    }

    @Test
    void theJobsInHandAreLaidOutDayByDayWithTheOddsOfTheirDates() throws IOException {
        Answer answer = days(SHOP);
        assertEquals(Exit.WELL, answer.code(), answer::toString);
        assertTrue(answer.out().startsWith("Monday 23 November 2026"), answer::out);
        assertTrue(answer.out().contains("Nine in ten"), answer::out);
    }

    @Test
    void todaySaysWhatComesFirstAndWhy() throws IOException {
        Path file = Files.writeString(shop.resolve("jobs.yaml"), SHOP);
        Answer answer = scantling("today", file.toString(), "--at", "2026-11-23T08:00", "--first");
        assertEquals(Exit.WELL, answer.code(), answer::toString);
        assertTrue(answer.out().contains("because it opens the way to \"Joint and plane"), answer::out);
    }

    @Test
    void aDueDateThatCannotBeKeptSaysStopAndTheEarliestDay() throws IOException {
        Answer answer = days(SHOP + "    due: 2026-11-24\n");
        assertEquals(Exit.STOP, answer.code(), answer::toString);
        assertTrue(answer.out().contains("even with nothing else in hand the earliest is"), answer::out);
    }

    @Test
    void everythingWrongInTheListIsToldAtOnceWithItsPlace() throws IOException {
        Answer answer = days("""
            shop:
              zone: Atlantis
              hours: 17:00-8:00
              hands: 0
            jobs:
              shelf: {piece: wall-shelf.yaml, due: 2026-02-30, priority: 12, colour: red}
            """);
        assertEquals(Exit.WRONG, answer.code());
        for (String words : List.of(
                "jobs.yaml:2:",
                "time zone",
                "working hours",
                "never works",
                "cannot be counted",
                "no day",
                "priority",
                "\"colour\"")) {
            assertTrue(answer.err().contains(words), () -> words + " is not in: " + answer.err());
        }
        assertFalse(answer.err().contains("\tat "));
    }

    @Test
    void whatWasNeverToBeDoneIsNotTakenAsDone() throws IOException {
        Answer answer = days(SHOP + "    done: {paint it blue: 2026-11-20 08:00 to 9:00}\n");
        assertEquals(Exit.WRONG, answer.code());
        assertTrue(answer.err().contains("Nothing called \"paint it blue\" is done to shelf"), answer::err);
    }
}
