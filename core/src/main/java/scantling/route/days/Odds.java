package scantling.route.days;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import scantling.route.Minutes;
import scantling.route.schedule.Goal;
import scantling.route.schedule.Network;
import scantling.route.schedule.Task;
import scantling.route.schedule.Timetable;
import scantling.route.schedule.Walk;
import scantling.timber.Table;

/**
 * The odds of dates: the jobs are gone through many times in the order of the agenda, each operation taking as long as chance
 * says within its marks. A part of chance is one for all operations of one kind of work, because a standard that is wrong is
 * wrong everywhere.
 */
final class Odds {
    /** Standard deviations from the median to the mark that nine in ten do not pass. */
    private static final double TO_MARK = 1.2816;

    private static final double SHARED = Table.read("route/route-figures.csv")
            .getRow("name", "kept with itself")
            .number("value");
    private static final int MOST_DRIVERS = 3;
    private static final long SEED = 1;
    /** How many times the mean square of a correlation of independent numbers, which is one over their count, is still chance. */
    private static final double CHANCE = 4;

    private final Network network;
    private final List<Place> from;
    private final List<String> names;
    private final int[][] finishes;
    private final double[][] lengths;

    Odds(Network network, List<Place> from, List<String> names, Timetable timetable, int runs) {
        this.network = network;
        this.from = from;
        this.names = names;
        int goals = network.goals().size();
        finishes = new int[goals][Math.max(1, runs)];
        lengths = new double[network.tasks().size()][Math.max(1, runs)];
        if (runs == 0) {
            for (int g = 0; g < goals; g++) {
                finishes[g][0] =
                        timetable.places().get(network.goals().get(g).task()).end();
            }
        }
        SplittableRandom random = new SplittableRandom(SEED);
        for (int run = 0; run < runs; run++) {
            run(run, timetable, random.split());
        }
    }

    private void run(int run, Timetable timetable, SplittableRandom random) {
        Map<String, Double> shared = new HashMap<>();
        List<Task> tasks = new ArrayList<>();
        for (int i = 0; i < network.tasks().size(); i++) {
            Task task = network.tasks().get(i);
            Place place = from.get(i);
            double common = shared.computeIfAbsent(place.operation().work(), k -> random.nextGaussian());
            double chance = Math.sqrt(SHARED) * common + Math.sqrt(1 - SHARED) * random.nextGaussian();
            double factor = factor(place.operation().hands(), chance);
            lengths[i][run] = factor * task.work();
            int work = task.work() == 0 ? 0 : (int) Math.max(1, Math.round(factor * task.work()));
            boolean unbroken = task.unbroken() && work <= network.time().longest();
            tasks.add(new Task(
                    task.name(),
                    task.goal(),
                    work,
                    unbroken,
                    task.hold(),
                    task.earliest(),
                    task.pinned(),
                    task.uses()));
        }
        Network other = new Network(tasks, network.capacities(), network.links(), network.time(), network.goals());
        Timetable walked = Walk.inOrderOf(other, timetable);
        for (int g = 0; g < finishes.length; g++) {
            Goal goal = network.goals().get(g);
            finishes[g][run] = walked.places().get(goal.task()).end();
        }
    }

    /** A median of one, marks where the minutes have them, on either side of its own spread. */
    private static double factor(Minutes minutes, double chance) {
        double mark = chance > 0 ? minutes.high() / minutes.likely() : minutes.likely() / Math.max(1e-9, minutes.low());
        return Math.exp(chance / TO_MARK * Math.log(mark));
    }

    /** The tick by which a goal is reached in a share of the runs. */
    int at(int goal, double share) {
        int[] sorted = finishes[goal].clone();
        Arrays.sort(sorted);
        return sorted[(int) Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)];
    }

    /**
     * The operations whose length goes most with the date of a goal, by the square of their correlation; those of one job
     * and one step count together, for they are alike. What chance alone would give is left out.
     */
    List<Agenda.Driver> drivers(int goal) {
        double[] dates = Arrays.stream(finishes[goal]).asDoubleStream().toArray();
        Map<String, double[]> sums = new LinkedHashMap<>();
        for (int i = 0; i < lengths.length; i++) {
            double[] sum = sums.computeIfAbsent(group(i), k -> new double[dates.length]);
            for (int run = 0; run < sum.length; run++) {
                sum[run] += lengths[i][run];
            }
        }
        double noise = CHANCE / Math.max(1, dates.length);
        Map<String, Double> squares = new LinkedHashMap<>();
        sums.forEach((name, length) -> squares.put(name, Math.pow(correlation(length, dates), 2)));
        squares.values().removeIf(square -> square < noise);
        double all = squares.values().stream().mapToDouble(one -> one).sum();
        return squares.entrySet().stream()
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .limit(MOST_DRIVERS)
                .map(one -> new Agenda.Driver(one.getKey(), one.getValue() / all))
                .toList();
    }

    /** By the title of an operation that stands alone, else by its step, with its job. */
    private String group(int task) {
        Place place = from.get(task);
        long alike = from.stream().filter(other -> isAlike(other, place)).count();
        String words = place.operation().step().words();
        return alike == 1
                ? place.operation().title()
                : "%s, %d operations of %s".formatted(words, alike, names.get(place.job()));
    }

    private static boolean isAlike(Place one, Place other) {
        return one.job() == other.job()
                && one.operation().step() == other.operation().step();
    }

    private static double correlation(double[] a, double[] b) {
        double meanA = Arrays.stream(a).average().orElse(0);
        double meanB = Arrays.stream(b).average().orElse(0);
        double ab = 0;
        double aa = 0;
        double bb = 0;
        for (int k = 0; k < a.length; k++) {
            ab += (a[k] - meanA) * (b[k] - meanB);
            aa += (a[k] - meanA) * (a[k] - meanA);
            bb += (b[k] - meanB) * (b[k] - meanB);
        }
        return aa == 0 || bb == 0 ? 0 : ab / Math.sqrt(aa * bb);
    }
}
