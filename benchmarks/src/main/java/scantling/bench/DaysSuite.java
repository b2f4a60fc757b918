package scantling.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Construction;
import scantling.construct.Starters;
import scantling.piece.BenchLog;
import scantling.piece.PieceReader;
import scantling.plan.Planner;
import scantling.plan.Shop;
import scantling.plan.StandardWoods;
import scantling.route.Route;
import scantling.route.days.Agenda;
import scantling.route.days.Agendas;
import scantling.route.days.JobInHand;
import scantling.route.days.UsualHours;
import scantling.route.schedule.Effort;

/**
 * Puts the starters as jobs in hand on one calendar and prints how long it takes: the first sound timetable, the odds of
 * its dates, and the betterment. Argument: how often, the first time cold.
 */
public final class DaysSuite {
    private static final Instant MONDAY = Instant.parse("2026-11-23T07:00:00Z");
    private static final int RUNS = 400;

    private DaysSuite() {}

    /** The command line. */
    public static void main(String[] args) throws IOException {
        List<List<String>> sets =
                List.of(List.of("bedside-chest", "wall-shelf", "dining-table"), List.copyOf(Starters.NAMES));
        for (List<String> names : sets) {
            List<JobInHand> jobs = new ArrayList<>();
            for (String name : names) {
                jobs.add(job(name));
            }
            for (int k = 0; k < Integer.parseInt(args[0]); k++) {
                time(jobs, "first sound", Effort.FIRST, 0);
                time(jobs, "first, with odds", Effort.FIRST, RUNS);
                time(jobs, "bettered", Effort.USUAL, 0);
            }
        }
    }

    private static void time(List<JobInHand> jobs, String what, Effort effort, int runs) {
        long start = System.nanoTime();
        Agenda agenda = Agendas.plan(UsualHours.in(ZoneOffset.UTC), jobs, MONDAY, effort, runs);
        System.out.printf(
                "%d jobs, %d operations, %s: %.0f ms; late %d, finish %d, switches %d, bound %d, %s%n",
                jobs.size(),
                agenda.entries().size(),
                what,
                (System.nanoTime() - start) / 1e6,
                agenda.timetable().score().lateness(),
                agenda.timetable().score().finish(),
                agenda.timetable().score().switches(),
                agenda.timetable().bound().finish(),
                agenda.timetable().status());
    }

    private static JobInHand job(String name) throws IOException {
        try (InputStream in = Starters.open(name)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            Route route = Planner.plan(
                            PieceReader.read(text, Construction.language(), StandardWoods.standard())
                                    .piece()
                                    .orElseThrow(),
                            BenchLog.EMPTY,
                            Shop.usual())
                    .plan()
                    .route();
            return new JobInHand(name, route, Optional.of(LocalDate.of(2026, 12, 18)), 1, Map.of(), Map.of());
        }
    }
}
