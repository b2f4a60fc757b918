package scantling.route.days;

import java.util.BitSet;
import java.util.List;
import scantling.route.schedule.Link;
import scantling.route.schedule.Network;

/** Why a task comes when it does, in a sentence: what it lets dry, what waits for it, when its job is due. */
final class Reasons {
    private static final double LONG_HOURS = 1;

    private final Network network;
    private final List<Place> from;

    Reasons(Network network, List<Place> from) {
        this.network = network;
        this.from = from;
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
        List<Integer> now = List.of(task);
        while (!now.isEmpty()) {
            List<Integer> at = now;
            List<Integer> next = network.links().stream()
                    .filter(link -> at.contains(link.before()))
                    .map(Link::after)
                    .distinct()
                    .filter(after -> !seen.get(after))
                    .toList();
            for (int one : next) {
                if (from.get(one).operation().pause().hours() >= LONG_HOURS) {
                    return one;
                }
                seen.set(one);
            }
            now = next;
        }
        return -1;
    }

    private BitSet followers(int task) {
        BitSet found = new BitSet();
        found.set(task);
        boolean grows = true;
        while (grows) {
            int before = found.cardinality();
            network.links().stream().filter(link -> found.get(link.before())).forEach(link -> found.set(link.after()));
            grows = found.cardinality() > before;
        }
        found.clear(task);
        return found;
    }
}
