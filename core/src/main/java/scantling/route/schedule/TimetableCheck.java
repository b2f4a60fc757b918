package scantling.route.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** Judges a timetable against its network, tick by tick and with none of the search's own sums. */
public final class TimetableCheck {
    private final Network network;
    private final Timetable timetable;
    private final List<String> problems = new ArrayList<>();

    private TimetableCheck(Network network, Timetable timetable) {
        this.network = network;
        this.timetable = timetable;
    }

    /** Everything that is wrong; nothing when it can be done as it stands. */
    public static List<String> problems(Network network, Timetable timetable) {
        TimetableCheck check = new TimetableCheck(network, timetable);
        if (timetable.places().size() != network.tasks().size()) {
            return List.of("Not every task has its place.");
        }
        check.tasks();
        check.links();
        check.capacities();
        check.score();
        return List.copyOf(check.problems);
    }

    private void tasks() {
        for (int i = 0; i < network.tasks().size(); i++) {
            Task task = network.tasks().get(i);
            Timetable.Place place = timetable.places().get(i);
            boolean begun = task.pinned().isPresent();
            if (begun ? place.start() != task.pinned().getAsInt() : place.start() < task.earliest()) {
                problems.add("%s begins at %d.".formatted(task.name(), place.start()));
            }
            if (worked(place.start(), place.end()) != task.work()) {
                problems.add(
                        "%s takes %d, not %d.".formatted(task.name(), worked(place.start(), place.end()), task.work()));
            }
            boolean broken = place.end() - place.start() != task.work();
            if (task.unbroken() && broken && !begun) {
                problems.add("%s is broken off.".formatted(task.name()));
            }
        }
    }

    private int worked(int from, int to) {
        int sum = 0;
        for (int k = 0; k < network.time().windows(); k++) {
            sum += Math.max(
                    0,
                    Math.min(to, network.time().to(k))
                            - Math.max(from, network.time().from(k)));
        }
        return sum;
    }

    private void links() {
        for (Link link : network.links()) {
            int gap = timetable.places().get(link.after()).start()
                    - timetable.places().get(link.before()).end();
            if (gap < link.lag()) {
                problems.add("%s: %d between them, not %d.".formatted(names(link), gap, link.lag()));
            }
            if (link.closes().isPresent() && gap > link.closes().getAsInt()) {
                problems.add("%s: %d between them; it closed after %d."
                        .formatted(names(link), gap, link.closes().getAsInt()));
            }
        }
    }

    private String names(Link link) {
        return "%s, then %s"
                .formatted(
                        network.tasks().get(link.before()).name(),
                        network.tasks().get(link.after()).name());
    }

    private void capacities() {
        for (int c = 0; c < network.capacities().size(); c++) {
            TreeMap<Integer, Integer> changes = new TreeMap<>();
            for (int i = 0; i < network.tasks().size(); i++) {
                Task task = network.tasks().get(i);
                Timetable.Place place = timetable.places().get(i);
                step(changes, place.start(), place.end(), task.amountDuring(c));
                step(changes, place.end(), place.end() + task.hold(), task.amountAfter(c));
            }
            judge(network.capacities().get(c), changes);
        }
    }

    private static void step(TreeMap<Integer, Integer> changes, int from, int to, int amount) {
        if (to > from && amount > 0) {
            changes.merge(from, amount, Integer::sum);
            changes.merge(to, -amount, Integer::sum);
        }
    }

    /** A broken task gives its hands back at night, but nobody works then, so counting it through the night judges the same. */
    private void judge(Capacity capacity, TreeMap<Integer, Integer> changes) {
        int taken = 0;
        for (var change : changes.entrySet()) {
            taken += change.getValue();
            if (taken > capacity.amount()) {
                problems.add("At %d, %d of %s are taken; there are %d."
                        .formatted(change.getKey(), taken, capacity.name(), capacity.amount()));
                return;
            }
        }
    }

    private void score() {
        int[] ends = timetable.places().stream().mapToInt(Timetable.Place::end).toArray();
        int[] starts =
                timetable.places().stream().mapToInt(Timetable.Place::start).toArray();
        if (!Score.of(network, starts, ends).equals(timetable.score())) {
            problems.add("It says it scores %s.".formatted(timetable.score()));
        }
        if (timetable.bound().compareTo(timetable.score()) > 0) {
            problems.add("It is better than its bound %s.".formatted(timetable.bound()));
        }
    }
}
