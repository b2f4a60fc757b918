package scantling.measure;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * How strongly a number follows each of its sources, and how uncertain it is for that. Works backward through the sums
 * once, so that a source met along several ways counts with all of them.
 */
public final class Sensitivity {
    private final List<Effect> effects;

    /** How much a number moves for each unit its source moves. */
    public record Effect(Dim source, double effect) {}

    /** Uncertainty of a number: every source at its worst at once, and as independent errors usually add. */
    public record Spread(Length worstCase, Length rootSumSquare) {
        /** The same for the maker. */
        public String words(LengthFormat format) {
            return "As made: within %s at the worst, %s as errors usually add."
                    .formatted(format.formatWithUnit(worstCase), format.formatWithUnit(rootSumSquare));
        }
    }

    private Sensitivity(List<Effect> effects) {
        this.effects = List.copyOf(effects);
    }

    /** d(value)/d(source) for every given, looked-up or measured number below, in the order they are met. */
    public static Sensitivity toSources(Dim dim) {
        return new Sensitivity(propagate(dim, d -> d.making().inputs().isEmpty()));
    }

    /**
     * d(value)/d(size as made) for every size that a process makes or measures. A part is cut to a number on the plan,
     * so its error is its own: what lies below a made size is not looked into.
     */
    public static Sensitivity toProcesses(Dim dim) {
        return new Sensitivity(propagate(dim, d -> d.making().ownTolerance().isMade()));
    }

    /** The uncertainty of a number by the tolerances of what it is made from. */
    public static Spread tolerance(Dim dim) {
        double worst = 0;
        double squares = 0;
        for (Effect effect : toProcesses(dim).effects) {
            double share = Math.abs(effect.effect())
                    * effect.source().making().ownTolerance().halfRange().toMillimetres();
            worst += share;
            squares += share * share;
        }
        return new Spread(Length.ofMillimetres(worst), Length.ofMillimetres(Math.sqrt(squares)));
    }

    /** The sources that act, each with its effect. */
    public List<Effect> effects() {
        return effects;
    }

    /** The effect of one source, 0 when it has none. */
    public double of(Dim source) {
        return effects.stream()
                .filter(effect -> effect.source().sameSourceAs(source))
                .mapToDouble(Effect::effect)
                .sum();
    }

    private static List<Effect> propagate(Dim dim, Predicate<Dim> stopAt) {
        Map<Dim, Double> weight = new IdentityHashMap<>();
        weight.put(dim, 1.0);
        List<Effect> found = new ArrayList<>();
        for (Dim next : fromResultToSources(dim, stopAt)) {
            double effect = weight.getOrDefault(next, 0.0);
            if (stopAt.test(next)) {
                collect(found, next, effect);
            } else {
                next.making().inputs().forEach(in -> weight.merge(in.dim(), effect * in.effect(), Double::sum));
            }
        }
        found.removeIf(effect -> effect.effect() == 0);
        return found;
    }

    private static void collect(List<Effect> found, Dim source, double effect) {
        for (int i = 0; i < found.size(); i++) {
            if (found.get(i).source().sameSourceAs(source)) {
                found.set(i, new Effect(source, found.get(i).effect() + effect));
                return;
            }
        }
        found.add(new Effect(source, effect));
    }

    /** Every number once, each before all that it is made from. */
    private static List<Dim> fromResultToSources(Dim dim, Predicate<Dim> stopAt) {
        Set<Dim> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        List<Dim> finished = new ArrayList<>();
        record Visit(Dim dim, boolean leaving) {}
        Deque<Visit> open = new ArrayDeque<>(List.of(new Visit(dim, false)));
        while (!open.isEmpty()) {
            Visit visit = open.pop();
            if (visit.leaving()) {
                finished.add(visit.dim());
            } else if (seen.add(visit.dim())) {
                open.push(new Visit(visit.dim(), true));
                if (!stopAt.test(visit.dim())) {
                    visit.dim().making().inputs().forEach(in -> open.push(new Visit(in.dim(), false)));
                }
            }
        }
        Collections.reverse(finished);
        return finished;
    }
}
