package scantling.route.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Gathers what belongs to one job: where the maker turns from one job to another, the next task of the job at hand is done
 * first, or the other job's task put off to its next, as long as nothing comes to be later than it was.
 */
final class Gathering {
    private final Network network;
    private final Orders orders;
    private final Serial serial;
    private final SplittableRandom random;

    Gathering(Network network, long seed) {
        this.network = network;
        orders = new Orders(network);
        serial = new Serial(network);
        random = new SplittableRandom(seed);
    }

    /** A timetable as good as this one, with fewer turns where some were found. @param tries how often it is tried */
    Timetable run(Timetable found, int tries) {
        if (network.goals().size() < 2 || !found.note().isEmpty()) {
            return found;
        }
        int[] starts = found.places().stream().mapToInt(Timetable.Place::start).toArray();
        int[] order = Orders.byTime(starts, orders.topological());
        if (!serial.run(order) || serial.score().compareTo(found.score()) > 0) {
            return found;
        }
        Score best = serial.score();
        for (int k = 0; k < tries && best.switches() > 0; k++) {
            int[] next = order.clone();
            if (gathered(next) && serial.run(next) && serial.score().compareTo(best) <= 0) {
                best = serial.score();
                order = next;
            }
        }
        serial.run(order);
        return new Timetable(places(), best, found.bound(), found.status(), found.note());
    }

    /** Moves one task of the order to its own. @return whether there was one to move */
    private boolean gathered(int[] order) {
        int at = 1 + random.nextInt(order.length - 1);
        int goal = goal(order[at - 1]);
        if (goal(order[at]) == goal) {
            return false;
        }
        int same = random.nextBoolean() ? goal : goal(order[at]);
        if (same == goal) {
            int from = next(order, at + 1, goal);
            return from > 0 && orders.move(order, from, at);
        }
        int to = next(order, at + 1, same);
        return to > at + 1 && orders.move(order, at, to - 1);
    }

    private int goal(int task) {
        return network.tasks().get(task).goal();
    }

    private int next(int[] order, int from, int goal) {
        for (int k = from; k < order.length; k++) {
            if (goal(order[k]) == goal) {
                return k;
            }
        }
        return -1;
    }

    private List<Timetable.Place> places() {
        List<Timetable.Place> places = new ArrayList<>();
        for (int i = 0; i < serial.starts.length; i++) {
            places.add(new Timetable.Place(serial.starts[i], serial.ends[i]));
        }
        return places;
    }
}
