package scantling.route.schedule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * The first timetable and its betterment: orders by rules of priority put one by one, then orders changed a little at a
 * time with late acceptance (Burke and Bykov 2017); where time can be run backwards every timetable is first pushed against
 * its end and back again (forward-backward improvement, Tormos and Lova 2001).
 */
final class Search {
    private static final int MEMORY = 40;

    private final Network network;
    private final Orders orders;
    private final Serial forward;
    private final List<Serial> backward;
    private final SplittableRandom random;
    private final long[] memory = new long[MEMORY];

    private int[] bestOrder = {};
    private int[] bestStarts = {};
    private int[] bestEnds = {};
    private Score best = new Score(Long.MAX_VALUE, Long.MAX_VALUE, Integer.MAX_VALUE);
    private int bestMissed = Integer.MAX_VALUE;

    Search(Network network, long seed) {
        this.network = network;
        orders = new Orders(network);
        forward = new Serial(network);
        backward = network.isPlain() ? List.of(new Serial(network.backwards())) : List.of();
        random = new SplittableRandom(seed);
    }

    /** The best found. @param steps how often an order is changed @param bound where there is nothing left to better */
    Timetable run(int steps, Score bound) {
        for (int[] order : first()) {
            tried(order.clone());
        }
        int[] current = bestOrder.clone();
        Arrays.fill(memory, cost(best));
        long at = cost(best);
        for (int step = 0; step < steps && best.compareTo(bound) > 0; step++) {
            int[] next = current.clone();
            int moves = 1 + random.nextInt(3);
            for (int m = 0; m < moves; m++) {
                orders.shift(next, random);
            }
            next = tried(next);
            long cost = cost(forward.score()) + (long) forward.missed() * Integer.MAX_VALUE;
            if (cost <= at || cost <= memory[step % MEMORY]) {
                current = next;
                at = cost;
            }
            memory[step % MEMORY] = at;
        }
        return new Timetable(places(), best, bound, Timetable.Status.FIRST, missedNote());
    }

    private String missedNote() {
        return bestMissed == 0 ? "" : "No order was found that keeps every recoat window open.";
    }

    private List<Timetable.Place> places() {
        List<Timetable.Place> places = new ArrayList<>();
        for (int i = 0; i < bestStarts.length; i++) {
            places.add(new Timetable.Place(bestStarts[i], bestEnds[i]));
        }
        return places;
    }

    private static long cost(Score score) {
        return score.lateness() * 64 + score.finish() * 8 + score.switches();
    }

    /** Puts an order and keeps it if it is the best. @return the order of the timetable it came to */
    private int[] tried(int[] order) {
        forward.run(order);
        keep(order);
        if (backward.isEmpty()) {
            return order;
        }
        int[] topological = orders.topological();
        int[] negated = Arrays.stream(forward.ends).map(end -> -end).toArray();
        int[] reversed = reversed(topological);
        Serial back = backward.get(0);
        back.run(Orders.byTime(negated, reversed));
        int[] again = Orders.byTime(Arrays.stream(back.ends).map(end -> -end).toArray(), topological);
        forward.run(again);
        keep(again);
        return again;
    }

    private static int[] reversed(int[] order) {
        int[] turned = new int[order.length];
        for (int k = 0; k < order.length; k++) {
            turned[k] = order[order.length - 1 - k];
        }
        return turned;
    }

    private void keep(int[] order) {
        Score score = forward.score();
        int missed = forward.missed();
        if (missed < bestMissed || missed == bestMissed && score.compareTo(best) < 0) {
            best = score;
            bestMissed = missed;
            bestOrder = order.clone();
            bestStarts = forward.starts.clone();
            bestEnds = forward.ends.clone();
        }
    }

    /** By the latest beginning that the due dates leave, by what waits for it, by both, job by job. */
    private List<int[]> first() {
        int count = network.tasks().size();
        int[] tails = orders.tails();
        int[] heads = orders.heads();
        int[] followers = orders.followers();
        int longest = Arrays.stream(tails).max().orElse(0);
        double stretch = network.time().isAlways() ? 1 : stretch();
        double[] latest = new double[count];
        double[] wanted = new double[count];
        double[] slack = new double[count];
        double[] jobs = new double[count];
        for (int i = 0; i < count; i++) {
            Goal goal = network.goals().get(network.tasks().get(i).goal());
            double due = goal.due().orElse((int) Math.min(1 << 24, longest * stretch));
            latest[i] = due - tails[i] * stretch;
            wanted[i] = -followers[i];
            slack[i] = latest[i] + heads[i];
            jobs[i] = due / goal.weight() * 1e6 + latest[i];
        }
        return List.of(orders.byKey(latest), orders.byKey(wanted), orders.byKey(slack), orders.byKey(jobs));
    }

    /** How much longer work takes by the clock than in working time, over the first weeks. */
    private double stretch() {
        WorkTime time = network.time();
        int last = Math.min(time.windows() - 1, 20);
        return (double) (time.to(last) - time.from(0)) / (time.before(last) + time.to(last) - time.from(last));
    }
}
