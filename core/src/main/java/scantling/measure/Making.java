package scantling.measure;

import java.util.List;
import java.util.Optional;

/** How a {@link Dim} came by its value. A making that has inputs says how strongly each of them acts. */
public sealed interface Making {
    /** What this was made from, each with d(value)/d(input); empty for what was typed or looked up. */
    List<Input> inputs();

    /** One input of a making. @param effect d(value)/d(input) @param dim the input */
    record Input(double effect, Dim dim) {}

    /** Typed by the maker. @param label what it is, in the maker's words @param text as typed @param span where */
    record Given(String label, String text, Span span) implements Making {
        @Override
        public List<Input> inputs() {
            return List.of();
        }
    }

    /** From a table. @param table which @param key which row @param source who says so; 'common practice' or 'from memory' where nobody does */
    record LookedUp(String table, String key, String source) implements Making {
        @Override
        public List<Input> inputs() {
            return List.of();
        }
    }

    /** A sum of whole multiples, like terms collected. Without terms it is the corner that the piece is measured from. */
    record Sum(List<Term> terms) implements Making {
        /** Takes its own copy. */
        public Sum {
            terms = List.copyOf(terms);
        }

        /** @param times how often it is taken, never zero @param dim what */
        public record Term(long times, Dim dim) {}

        @Override
        public List<Input> inputs() {
            return terms.stream().map(t -> new Input(t.times(), t.dim())).toList();
        }
    }

    /** A fraction of something: a half, an equal share of three, a quarter of the thickness. */
    record Share(Dim whole, long numerator, long denominator) implements Making {
        @Override
        public List<Input> inputs() {
            return List.of(new Input((double) numerator / denominator, whole));
        }
    }

    /** The larger or the smaller of several; the one that decides stands first. */
    record Extreme(boolean larger, List<Dim> candidates) implements Making {
        /** Takes its own copy. */
        public Extreme {
            candidates = List.copyOf(candidates);
        }

        @Override
        public List<Input> inputs() {
            return List.of(new Input(1, candidates.get(0)));
        }
    }

    /** Rounded to a step. */
    record Rounded(Dim exact, Length step, Rounding rounding) implements Making {
        @Override
        public List<Input> inputs() {
            return List.of(new Input(1, exact));
        }
    }

    /** Worked out by a formula that is not a sum, such as the length of a slope. @param rule the formula in words */
    record Worked(String rule, List<Input> inputs) implements Making {
        /** Takes its own copy. */
        public Worked {
            inputs = List.copyOf(inputs);
        }
    }

    /** A number with a name of its own. @param path its name @param planned its sum @param tolerance what making it adds */
    record Named(String path, Dim planned, Tolerance tolerance) implements Making {
        @Override
        public List<Input> inputs() {
            return List.of(new Input(1, planned));
        }
    }

    /** Set by the maker against its sum. @param path its name @param planned the sum it replaces @param set what the maker gave */
    record Set(String path, Dim planned, Dim set, Tolerance tolerance) implements Making {
        @Override
        public List<Input> inputs() {
            return List.of(new Input(1, set));
        }
    }

    /** Measured at the bench; its planned sum is kept beside it. */
    record Measured(String path, Dim planned, Tolerance tolerance) implements Making {
        @Override
        public List<Input> inputs() {
            return List.of();
        }
    }

    /** The name it goes by, when it has one. */
    default Optional<String> findPath() {
        if (this instanceof Named named) {
            return Optional.of(named.path());
        }
        if (this instanceof Set set) {
            return Optional.of(set.path());
        }
        return this instanceof Measured measured ? Optional.of(measured.path()) : Optional.empty();
    }

    /** What its own making or measuring adds; nothing for numbers that are only worked out. */
    default Tolerance ownTolerance() {
        if (this instanceof Named named) {
            return named.tolerance();
        }
        if (this instanceof Set set) {
            return set.tolerance();
        }
        return this instanceof Measured measured ? measured.tolerance() : Tolerance.NONE;
    }
}
