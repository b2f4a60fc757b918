package scantling.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import scantling.finishing.Amount;
import scantling.pricing.Took;
import scantling.route.Logged;
import scantling.route.Minutes;
import scantling.route.Operation;
import scantling.route.Route;
import scantling.route.Times;
import scantling.route.Trade;

/**
 * What logged minutes of a job's operations come to, class by class, and what they teach the time standards.
 *
 * @param took by class, those of which something is logged
 * @param lessons kinds of work whose standard they move
 */
public record Learning(List<Took> took, List<Lesson> lessons) {
    /** Takes its own copies. */
    public Learning {
        took = List.copyOf(took);
        lessons = List.copyOf(lessons);
    }

    /** A standard that moves. @param before minutes for one unit @param now the same with this job @param observations logged times behind it now */
    public record Lesson(String work, String unit, Minutes before, Minutes now, int observations) {
        /** In a sentence. */
        public String sentence() {
            return String.format(
                    Locale.ROOT,
                    "%s: %s min for each %s from now on (%s to %s), %s before; %d logged time%s behind it.",
                    work,
                    plain(now.likely()),
                    unit,
                    plain(now.low()),
                    plain(now.high()),
                    plain(before.likely()),
                    observations,
                    observations == 1 ? "" : "s");
        }

        private static String plain(double minutes) {
            return String.format(Locale.ROOT, minutes < 10 ? "%.1f" : "%.0f", minutes);
        }
    }

    /**
     * Of one job.
     *
     * @param route what was planned
     * @param times the standards it was planned by
     * @param minutes hands-on minutes logged, by id of the operation; ids that the route does not have are passed over, see
     *     {@link #unknown}
     */
    public static Learning of(Route route, Times times, Map<String, Double> minutes) {
        List<Logged> log = new ArrayList<>();
        Map<Trade, Took> took = new LinkedHashMap<>();
        Set<String> works = new TreeSet<>();
        for (Operation operation : route.operations()) {
            Trade trade = operation.step().trade();
            Double spent = minutes.get(operation.id());
            Took before = took.getOrDefault(trade, new Took(trade.words(), 0, 0, Amount.ZERO, 0));
            took.put(trade, plus(before, operation.hands(), spent == null ? 0 : spent));
            if (spent != null && spent > 0) {
                log.add(new Logged(operation.work(), operation.amount(), spent));
                works.add(operation.work());
            }
        }
        Times moved = times.and(log);
        List<Lesson> lessons = works.stream()
                .map(work -> lesson(times.of(work), moved.of(work)))
                .toList();
        return new Learning(took.values().stream().filter(one -> one.done() > 0).toList(), lessons);
    }

    private static Took plus(Took before, Minutes hands, double spent) {
        boolean logged = spent > 0;
        Amount planned = new Amount(hands.low(), hands.likely(), hands.high());
        return new Took(
                before.operation(),
                before.done() + (logged ? 1 : 0),
                before.all() + 1,
                logged ? before.planned().plus(planned) : before.planned(),
                before.minutes() + spent);
    }

    private static Lesson lesson(Times.Standard before, Times.Standard now) {
        return new Lesson(before.work(), before.unit(), before.each(), now.each(), now.observations());
    }

    /** Ids that the route does not have. */
    public static List<String> unknown(Route route, Set<String> ids) {
        return ids.stream().filter(id -> route.find(id).isEmpty()).sorted().toList();
    }
}
