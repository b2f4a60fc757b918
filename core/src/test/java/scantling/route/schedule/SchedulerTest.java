package scantling.route.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Small timetables worked by hand. Ticks are quarters of an hour; a day has 8 hours of work, from 8 to 16. */
class SchedulerTest {
    private static final int HANDS = 0;
    private static final int CLAMPS = 1;
    private static final int DAY = 96;
    private static final List<Capacity> SHOP =
            List.of(new Capacity("hands", 1, Capacity.Axis.WORKED), new Capacity("clamps", 4, Capacity.Axis.CLOCK));

    private static WorkTime days(int count) {
        return WorkTime.of(java.util.stream.IntStream.range(0, count)
                .mapToObj(day -> new WorkTime.Window(day * DAY + 32, day * DAY + 64, day))
                .toList());
    }

    private static Task hands(String name, int goal, int work) {
        return new Task(name, goal, work, false, 0, 0, OptionalInt.empty(), List.of(Use.during(HANDS, 1)));
    }

    private static Task glue(String name, int goal, int work, int hold, int clamps) {
        List<Use> uses = List.of(Use.during(HANDS, 1), Use.throughout(CLAMPS, clamps));
        return new Task(name, goal, work, true, hold, 0, OptionalInt.empty(), uses);
    }

    private static Goal goal(String name, int task) {
        return new Goal(name, task, OptionalInt.empty(), 1);
    }

    private static Timetable sound(Network network, Effort effort) {
        Timetable timetable = Scheduler.schedule(network, effort);
        assertEquals(List.of(), TimetableCheck.problems(network, timetable));
        return timetable;
    }

    @Test
    void workThatDoesNotFitTheDayGoesOnNextMorning() {
        Network network =
                new Network(List.of(hands("plane", 0, 40)), SHOP, List.of(), days(5), List.of(goal("chest", 0)));
        assertEquals(
                new Timetable.Place(32, DAY + 40),
                sound(network, Effort.FIRST).places().get(0));
    }

    @Test
    void aGlueUpIsNotBrokenOffByTheNight() {
        Network network = new Network(
                List.of(hands("fit", 0, 30), glue("glue", 0, 4, 16, 2)),
                SHOP,
                List.of(Link.then(0, 1)),
                days(5),
                List.of(goal("chest", 1)));
        assertEquals(DAY + 32, sound(network, Effort.FIRST).places().get(1).start());
    }

    @Test
    void whatDriesDoesSoOverNightAndTheHandsDoTheOtherJobBefore() {
        // Chest: glue 2 h, dries 16 h, plane 1 h. Table: 6 h. Worked by hand: the glue dries over night whether it is
        // spread at
        // 8 or at 14, so the table comes first (8-14), then the glue (14-16); at 8 next morning it has dried for 16 h.
        Network network = new Network(
                List.of(glue("glue", 0, 8, 64, 4), hands("plane", 0, 4), hands("table", 1, 24)),
                SHOP,
                List.of(new Link(0, 1, 64, OptionalInt.empty())),
                days(5),
                List.of(goal("chest", 1), goal("table", 2)));
        Timetable best = sound(network, Effort.USUAL);
        assertEquals(new Score(0, 56 + DAY + 36, 1), best.score());
        assertEquals(
                List.of(56, DAY + 32, 32),
                best.places().stream().map(Timetable.Place::start).toList());
    }

    @Test
    void clampsThatAreTakenLetTheNextGlueUpWait() {
        // Three of four clamps for six hours each: the second glue-up cannot begin before the first comes out of them.
        Network network = new Network(
                List.of(glue("first", 0, 4, 24, 3), glue("second", 1, 4, 24, 3)),
                SHOP,
                List.of(),
                days(5),
                List.of(goal("chest", 0), goal("table", 1)));
        Timetable best = sound(network, Effort.USUAL);
        List<Integer> starts =
                best.places().stream().map(Timetable.Place::start).sorted().toList();
        assertEquals(List.of(32, 60), starts);
    }

    @Test
    void aCoatWaitsWhereItsRecoatWindowWouldCloseOverNight() {
        // Coats of an hour, the next between 2 and 4 hours later. Begun after six hours of other work, the second coat
        // would
        // come next morning, too late: the first waits for the morning too.
        List<Link> links = List.of(Link.then(0, 1), new Link(1, 2, 8, OptionalInt.of(16)));
        Network network = new Network(
                List.of(hands("sand", 0, 24), hands("first coat", 0, 4), hands("second coat", 0, 4)),
                SHOP,
                links,
                days(5),
                List.of(goal("chest", 2)));
        for (Effort effort : List.of(Effort.FIRST, Effort.USUAL)) {
            assertEquals(
                    List.of(32, DAY + 32, DAY + 44),
                    sound(network, effort).places().stream()
                            .map(Timetable.Place::start)
                            .toList());
        }
    }

    @Test
    void theJobThatIsDueIsDoneFirst() {
        Network network = new Network(
                List.of(hands("chest", 0, 16), hands("table", 1, 16)),
                SHOP,
                List.of(),
                days(5),
                List.of(goal("chest", 0), new Goal("table", 1, OptionalInt.of(50), 3)));
        Timetable best = sound(network, Effort.USUAL);
        assertEquals(32, best.places().get(1).start());
        assertEquals(0, best.score().lateness());
    }

    @Test
    void jobsAreNotSwitchedWhereNothingIsGained() {
        // Two jobs of two halves each, no waits: by hand, one after the other is one switch, in turns it would be
        // three.
        Network network = new Network(
                List.of(hands("a 1", 0, 4), hands("a 2", 0, 4), hands("b 1", 1, 4), hands("b 2", 1, 4)),
                SHOP,
                List.of(Link.then(0, 1), Link.then(2, 3)),
                days(5),
                List.of(goal("a", 1), goal("b", 3)));
        assertEquals(new Score(0, 40 + 48, 1), sound(network, Effort.USUAL).score());
    }

    @Test
    void whatHasBegunStaysWhereItIsAndHoldsItsClamps() {
        Task begun = new Task(
                "begun",
                0,
                4,
                true,
                40,
                0,
                OptionalInt.of(36),
                List.of(Use.during(HANDS, 1), Use.throughout(CLAMPS, 4)));
        Network network = new Network(
                List.of(begun, glue("next", 0, 4, 8, 1)), SHOP, List.of(), days(5), List.of(goal("chest", 1)));
        Timetable timetable = sound(network, Effort.USUAL);
        assertEquals(36, timetable.places().get(0).start());
        // In clamps until tick 80, at night: the next is glued in the morning.
        assertEquals(DAY + 32, timetable.places().get(1).start());
    }

    @Test
    void theJudgeSeesEveryKindOfWrong() {
        Network network = new Network(
                List.of(glue("glue", 0, 8, 64, 4), hands("plane", 0, 4), glue("other", 0, 4, 8, 1)),
                SHOP,
                List.of(new Link(0, 1, 64, OptionalInt.empty())),
                days(5),
                List.of(goal("chest", 1)));
        Timetable wrong = new Timetable(
                List.of(new Timetable.Place(32, 40), new Timetable.Place(40, 44), new Timetable.Place(42, 47)),
                new Score(0, 3, 0),
                new Score(0, 0, 0),
                Timetable.Status.FIRST,
                "");
        List<String> said = TimetableCheck.problems(network, wrong);
        for (String word : List.of("0 between them", "of hands", "of clamps", "broken off", "takes 5", "scores")) {
            assertTrue(said.stream().anyMatch(line -> line.contains(word)), () -> word + ": " + said);
        }
    }

    @Test
    void whatCannotBePutInTimeIsRefused() {
        List<Goal> goals = List.of(goal("chest", 0));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Network(List.of(glue("glue", 0, 40, 0, 1)), SHOP, List.of(), days(5), goals));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Network(List.of(glue("glue", 0, 4, 0, 9)), SHOP, List.of(), days(5), goals));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Network(
                        List.of(hands("a", 0, 1), hands("b", 0, 1)),
                        SHOP,
                        List.of(Link.then(0, 1), Link.then(1, 0)),
                        days(5),
                        goals));
        assertThrows(IllegalArgumentException.class, () -> WorkTime.of(List.of()));
    }

    /**
     * Two jobs of three tasks each for one pair of hands, without waits: by hand, both can be done one after the other with
     * one turn from the first to the second, and nothing ends later for it.
     */
    @Test
    void theMakerTurnsFromJobToJobAsSeldomAsCanBe() {
        List<Task> tasks = new ArrayList<>();
        List<Link> links = new ArrayList<>();
        for (int goal = 0; goal < 2; goal++) {
            for (int k = 0; k < 3; k++) {
                tasks.add(new Task(
                        "task " + goal + k, goal, 2, false, 0, 0, OptionalInt.empty(), List.of(Use.during(0, 1))));
                if (k > 0) {
                    links.add(Link.then(tasks.size() - 2, tasks.size() - 1));
                }
            }
        }
        Network network = new Network(
                tasks,
                List.of(new Capacity("hands", 1, Capacity.Axis.WORKED)),
                links,
                WorkTime.ALWAYS,
                List.of(new Goal("one", 2, OptionalInt.empty(), 1), new Goal("other", 5, OptionalInt.empty(), 1)));
        Timetable found = Scheduler.schedule(network, Effort.USUAL);
        assertEquals(new Score(0, 6 + 12, 1), found.score());
    }
}
