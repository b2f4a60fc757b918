package scantling.route.schedule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;

/**
 * Reads the text form in which resource-constrained project instances are published (single mode, renewable resources:
 * Kolisch and Sprecher 1996): sections of successors, of durations with requests, and of availabilities.
 */
public final class PublishedNetwork {
    private PublishedNetwork() {}

    /**
     * Reads an instance as a network with work at every hour and no due date.
     *
     * @throws IllegalArgumentException if a section is missing
     */
    public static Network read(String text) {
        List<String> lines = text.lines().map(String::strip).toList();
        List<int[]> successors = rows(lines, "PRECEDENCE RELATIONS:");
        List<int[]> requests = rows(lines, "REQUESTS/DURATIONS:");
        int[] amounts = rows(lines, "RESOURCEAVAILABILITIES:").get(0);
        List<Capacity> capacities = new ArrayList<>();
        for (int c = 0; c < amounts.length; c++) {
            capacities.add(new Capacity("R " + (c + 1), amounts[c], Capacity.Axis.WORKED));
        }
        List<Task> tasks = requests.stream().map(PublishedNetwork::task).toList();
        List<Link> links = new ArrayList<>();
        for (int[] row : successors) {
            Arrays.stream(row).skip(3).forEach(next -> links.add(Link.then(row[0] - 1, next - 1)));
        }
        Goal goal = new Goal("all", tasks.size() - 1, OptionalInt.empty(), 1);
        return new Network(tasks, capacities, links, WorkTime.ALWAYS, List.of(goal));
    }

    private static Task task(int[] row) {
        List<Use> uses = new ArrayList<>();
        for (int c = 3; c < row.length; c++) {
            if (row[c] > 0) {
                uses.add(Use.during(c - 3, row[c]));
            }
        }
        return Task.of("task " + row[0], row[2], uses);
    }

    /** The rows of numbers that follow a heading and its column titles. */
    private static List<int[]> rows(List<String> lines, String heading) {
        int at = lines.indexOf(heading);
        if (at < 0) {
            throw new IllegalArgumentException("The section (%s) is missing.".formatted(heading));
        }
        return lines.subList(at + 1, lines.size()).stream()
                .dropWhile(line -> !line.matches("[\\d\\s]+"))
                .takeWhile(line -> line.matches("[\\d\\s]+"))
                .map(line -> Arrays.stream(line.split("\\s+"))
                        .mapToInt(Integer::parseInt)
                        .toArray())
                .toList();
    }
}
