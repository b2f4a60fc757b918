package scantling.route.schedule;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.OptionalInt;

/**
 * Everything to be put in time.
 *
 * @param tasks what is to be done
 * @param capacities what there is only so much of
 * @param links what comes before what
 * @param time when there is work
 * @param goals what is to be done by when, at least one
 */
public record Network(List<Task> tasks, List<Capacity> capacities, List<Link> links, WorkTime time, List<Goal> goals) {
    /**
     * Takes its own copies.
     *
     * @throws IllegalArgumentException if an index points nowhere, a task takes more than there is, an unbroken task is
     *     longer than any window, or the links go round in a circle
     */
    public Network {
        tasks = List.copyOf(tasks);
        capacities = List.copyOf(capacities);
        links = List.copyOf(links);
        goals = List.copyOf(goals);
        if (goals.isEmpty()) {
            throw new IllegalArgumentException("Nothing is to be done.");
        }
        for (Task task : tasks) {
            check(task, capacities, time);
        }
        order(tasks.size(), links);
    }

    private static void check(Task task, List<Capacity> capacities, WorkTime time) {
        if (task.unbroken() && task.work() > time.longest()) {
            throw new IllegalArgumentException("(%s) takes (%d) without a break; the longest stretch is (%d)."
                    .formatted(task.name(), task.work(), time.longest()));
        }
        for (int c = 0; c < capacities.size(); c++) {
            int most = Math.max(task.amountDuring(c), task.amountAfter(c));
            if (most > capacities.get(c).amount()) {
                throw new IllegalArgumentException(
                        "(%s) takes (%d) of (%s).".formatted(task.name(), most, capacities.get(c)));
            }
            if (task.amountAfter(c) > 0 && capacities.get(c).axis() == Capacity.Axis.WORKED) {
                throw new IllegalArgumentException("(%s) cannot hold (%s) over night."
                        .formatted(task.name(), capacities.get(c).name()));
            }
        }
    }

    /** An order in which every task stands behind those it waits for; the smaller index first where both may. */
    int[] order() {
        return order(tasks.size(), links);
    }

    private static int[] order(int count, List<Link> links) {
        int[] open = new int[count];
        List<List<Integer>> after = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            after.add(new ArrayList<>());
        }
        for (Link link : links) {
            after.get(link.before()).add(link.after());
            open[link.after()]++;
        }
        Deque<Integer> ready = new ArrayDeque<>();
        for (int i = 0; i < count; i++) {
            if (open[i] == 0) {
                ready.add(i);
            }
        }
        int[] order = new int[count];
        int at = 0;
        while (!ready.isEmpty()) {
            int next = ready.remove();
            order[at++] = next;
            for (int follower : after.get(next)) {
                if (--open[follower] == 0) {
                    ready.add(follower);
                }
            }
        }
        if (at < count) {
            throw new IllegalArgumentException("The tasks wait for each other in a circle.");
        }
        return order;
    }

    /** Whether clock and working time are one and no window ever closes, so that time can be run backwards. */
    boolean isPlain() {
        return time.isAlways()
                && links.stream().allMatch(link -> link.closes().isEmpty())
                && tasks.stream()
                        .allMatch(task -> task.earliest() == 0
                                && task.hold() == 0
                                && task.pinned().isEmpty());
    }

    /** The same with time run backwards; only for plain networks. */
    Network backwards() {
        List<Link> turned = links.stream()
                .map(link -> new Link(link.after(), link.before(), link.lag(), OptionalInt.empty()))
                .toList();
        return new Network(tasks, capacities, turned, time, goals);
    }
}
