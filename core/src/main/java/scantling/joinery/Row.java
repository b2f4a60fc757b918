package scantling.joinery;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Making;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Extent;

/**
 * Where things can stand along the place where two parts meet, clear of what is already taken from either. Positions are
 * offsets from where the place begins, rounded to what a rule shows.
 */
final class Row {
    private static final double NOTHING = 1e-6;

    private final Meeting at;
    private final double step;
    private final double length;
    private final List<double[]> free;

    private Row(Meeting at, double step, List<double[]> free) {
        this.at = at;
        this.step = step;
        this.free = free;
        length = mm(at.runSize());
    }

    /**
     * The free stretches for a pocket of a joint.
     *
     * @param pocketE what would be taken from the entering part over the whole length of the place
     * @param pocketR the same of the receiving part
     * @param clear how much wood must stay between
     */
    static Row clearOf(Meeting at, Bench bench, Box pocketE, Box pocketR, Dim clear) {
        double between = mm(clear);
        List<double[]> blocked = Stream.concat(
                        blocked(at, bench.taken(at.entering()), Extent.of(pocketE), between),
                        blocked(at, bench.taken(at.receiving()), Extent.of(pocketR), between))
                .sorted(Comparator.comparingDouble(each -> each[0]))
                .toList();
        List<double[]> free = new ArrayList<>();
        double from = 0;
        for (double[] each : blocked) {
            if (each[0] > from + NOTHING) {
                free.add(new double[] {from, each[0]});
            }
            from = Math.max(from, each[1]);
        }
        double length = mm(at.runSize());
        if (from < length - NOTHING) {
            free.add(new double[] {from, length});
        }
        return new Row(at, mm(bench.rules().length("round")), free);
    }

    /** The whole length of a place, with nothing in the way. */
    static Row free(Meeting at, Bench bench) {
        return new Row(at, mm(bench.rules().length("round")), List.of(new double[] {0, mm(at.runSize())}));
    }

    private static Stream<double[]> blocked(Meeting at, List<Bench.Taken> taken, Extent pocket, double clear) {
        Axis run = at.run();
        double start = mm(at.start(run));
        return taken.stream()
                .filter(each -> Bench.near(each.extent(), pocket, clear - NOTHING))
                .map(each -> new double[] {
                    Bench.low(each.extent(), run) - start - clear, Bench.high(each.extent(), run) - start + clear
                });
    }

    /** Whether nothing is in the way anywhere. */
    boolean isFree() {
        return free.size() == 1 && free.get(0)[1] - free.get(0)[0] > length - NOTHING;
    }

    /**
     * Middles of so many things of a size, evenly spread; each moves to the nearest free place, and one that finds none
     * is left out.
     *
     * @param end from the ends of the place to the first and last middle
     * @param least how near they may come where not all find room otherwise
     */
    List<Dim> spread(int count, double size, double end, double least) {
        List<Dim> first = spread(count, size, end);
        return first.size() == count || least >= end ? first : more(first, spread(count, size, least));
    }

    private static List<Dim> more(List<Dim> first, List<Dim> second) {
        return second.size() > first.size() ? second : first;
    }

    private List<Dim> spread(int count, double size, double end) {
        List<Dim> middles = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            double wanted = count == 1 ? length / 2 : end + i * (length - 2 * end) / (count - 1);
            Optional<Double> found = nearest(wanted, size, Math.min(end, length / 2));
            if (found.isPresent() && found.get() >= last + 2 * size - step) {
                last = found.get();
                middles.add(position(last));
            }
        }
        return middles;
    }

    private Optional<Double> nearest(double wanted, double size, double end) {
        return free.stream()
                .map(stretch -> inside(stretch, wanted, size, end))
                .flatMap(Optional::stream)
                .min(Comparator.comparingDouble(found -> Math.abs(found - wanted)));
    }

    private Optional<Double> inside(double[] stretch, double wanted, double size, double end) {
        double from = stretch[0] <= NOTHING ? Math.min(end, size) : stretch[0] + size / 2;
        double to = stretch[1] >= length - NOTHING ? length - Math.min(end, size) : stretch[1] - size / 2;
        if (from > to + NOTHING) {
            return Optional.empty();
        }
        double nearest = Math.min(Math.max(wanted, from), to);
        double rounded = Math.round(nearest / step) * step;
        if (rounded < from - NOTHING) {
            rounded = Math.ceil(from / step - NOTHING) * step;
        }
        if (rounded > to + NOTHING) {
            rounded = Math.floor(to / step + NOTHING) * step;
        }
        return Optional.of(rounded < from - NOTHING ? nearest : rounded);
    }

    /** The longest free stretch between two offsets, as offsets; nothing when none is as long as the least. */
    Optional<Dim[]> longest(double from, double to, double least) {
        return free.stream()
                .map(each -> new double[] {up(Math.max(each[0], from)), down(Math.min(each[1], to))})
                .filter(each -> each[1] - each[0] >= least - NOTHING)
                .max(Comparator.comparingDouble(each -> each[1] - each[0]))
                .map(each -> new Dim[] {position(each[0]), position(each[1])});
    }

    private double up(double mm) {
        return Math.ceil(mm / step - NOTHING) * step;
    }

    private double down(double mm) {
        return Math.floor(mm / step + NOTHING) * step;
    }

    /** An offset as a number that moves with the length of the place. */
    private Dim position(double offset) {
        Length value = Length.ofMillimetres(offset);
        return Dim.worked(
                value,
                "placed along the joint, clear of what else is cut there, to what a rule shows",
                new Making.Input(length == 0 ? 0 : offset / length, at.runSize()));
    }

    static double mm(Dim dim) {
        return dim.value().toMillimetres();
    }
}
