package scantling.route.days;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import scantling.route.schedule.Link;
import scantling.route.schedule.Network;

/** Why a task comes when it does, in a sentence: what it lets dry, what waits for it, when its job is due. */
final class Reasons {
    private static final double LONG_HOURS = 1;

    private final List<Place> from;
    private final int[][] after;

    Reasons(Network network, List<Place> from) {
        this.from = from;
        after = new int[network.tasks().size()][0];
        for (Link link : network.links()) {
            int[] more = Arrays.copyOf(after[link.before()], after[link.before()].length + 1);
            more[more.length - 1] = link.after();
            after[link.before()] = more;
        }
    }

    String of(int task) {
        Place place = from.get(task);
        double hours = place.operation().pause().hours();
        if (hours >= LONG_HOURS) {
            return "then it needs no hands for %.0f h: %s"
                    .formatted(hours, place.operation().pause().why());
        }
        int drying = nextPause(task);
        if (drying >= 0) {
            Place next = from.get(drying);
            return "it opens the way to \"%s\", which then needs no hands for %.0f h"
                    .formatted(
                            next.operation().title(), next.operation().pause().hours());
        }
        int waiting = followers(task).cardinality();
        return waiting == 0
                ? "it is the last of its job"
                : "%d operation%s of its job wait%s for it"
                        .formatted(waiting, waiting == 1 ? "" : "s", waiting == 1 ? "s" : "");
    }

    /** The nearest task behind this one after which there is a pause; minus one when there is none. */
    private int nextPause(int task) {
        BitSet seen = new BitSet();
        Deque<Integer> next = new ArrayDeque<>(List.of(task));
        while (!next.isEmpty()) {
            for (int one : after[next.remove()]) {
                if (from.get(one).operation().pause().hours() >= LONG_HOURS) {
                    return one;
                }
                if (!seen.get(one)) {
                    seen.set(one);
                    next.add(one);
                }
            }
        }
        return -1;
    }

    private BitSet followers(int task) {
        BitSet found = new BitSet();
        Deque<Integer> next = new ArrayDeque<>(List.of(task));
        while (!next.isEmpty()) {
            for (int one : after[next.remove()]) {
                if (!found.get(one)) {
                    found.set(one);
                    next.add(one);
                }
            }
        }
        return found;
    }
}
