package scantling.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.function.DoubleBinaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * A length that knows where it came from: a value and the short sum that made it, down to what the maker typed, a table
 * gave or the bench measured. Immutable. Sums collect like terms, so that {@code (width - leg) - leg} explains itself as
 * width less two legs.
 *
 * <p>Two Dims are equal when their values are equal; that they come from the same place is asked with
 * {@link #sameSourceAs}.
 */
public final class Dim implements Comparable<Dim> {
    /** The corner that a piece is measured from: left, front, floor. */
    public static final Dim ZERO = new Dim(Length.ZERO, new Making.Sum(List.of()));

    /** Sums of so many sums are put together at once, so that a long row of them is never opened in one go. */
    private static final int DEEPEST = 64;

    private final Length value;
    private final int depth;
    /** Put together from {@link #sum} when first asked for; whoever comes to it at the same time makes the same one. */
    private @Nullable Making making;

    private final @Nullable Unopened sum;

    private Dim(Length value, Making making) {
        this.value = value;
        this.making = making;
        this.sum = null;
        this.depth = 0;
    }

    private Dim(Length value, Unopened sum) {
        this.value = value;
        this.sum = sum;
        this.depth = 1 + Math.max(sum.first.depth, sum.second.depth);
    }

    /** One number and another so many times. Most sums are only ever asked for their value. */
    private record Unopened(Dim first, long times, Dim second) {
        Making opened() {
            return collected(new Terms(1, first).add(times, second)).making();
        }
    }

    /** Typed by the maker. */
    public static Dim given(Length value, String label, String text, Span span) {
        return new Dim(value, new Making.Given(label, text, span));
    }

    /** From a table row with its source. */
    public static Dim lookedUp(Length value, String table, String key, String source) {
        return new Dim(value, new Making.LookedUp(table, key, source));
    }

    /** Gives a sum a name; what making it adds to its uncertainty comes with it. */
    public static Dim named(String path, Dim planned, Tolerance tolerance) {
        return new Dim(planned.value, new Making.Named(path, planned, tolerance));
    }

    /** A number that the maker sets against its sum. */
    public static Dim set(String path, Dim planned, Dim set, Tolerance tolerance) {
        return new Dim(set.value, new Making.Set(path, planned, set, tolerance));
    }

    /** A number measured at the bench. */
    public static Dim measured(String path, Dim planned, Length measured, Tolerance tolerance) {
        return new Dim(measured, new Making.Measured(path, planned, tolerance));
    }

    /** The larger of several. */
    public static Dim largerOf(Dim first, Dim... others) {
        return extreme(true, first, others);
    }

    /** The smaller of several. */
    public static Dim smallerOf(Dim first, Dim... others) {
        return extreme(false, first, others);
    }

    private static Dim extreme(boolean larger, Dim first, Dim... others) {
        List<Dim> candidates = new ArrayList<>();
        collect(larger, first, candidates);
        Arrays.stream(others).forEach(other -> collect(larger, other, candidates));
        BinaryOperator<Dim> better = (a, b) -> (larger ? b.compareTo(a) > 0 : b.compareTo(a) < 0) ? b : a;
        Dim best = candidates.stream().reduce(better).orElse(first);
        if (candidates.size() == 1) {
            return best;
        }
        candidates.removeIf(candidate -> candidate == best);
        candidates.add(0, best);
        return new Dim(best.value, new Making.Extreme(larger, candidates));
    }

    /** The smaller of what is already the smaller of several is the smallest of all; each stands there once. */
    private static void collect(boolean larger, Dim dim, List<Dim> candidates) {
        if (dim.making() instanceof Making.Extreme extreme && extreme.larger() == larger) {
            extreme.candidates().forEach(candidate -> collect(larger, candidate, candidates));
        } else if (candidates.stream().noneMatch(dim::sameSourceAs)) {
            candidates.add(dim);
        }
    }

    /** The long side over two square sides: a slope, a diagonal. */
    public static Dim slope(Dim run, Dim rise) {
        double a = run.value.toMillimetres();
        double b = rise.value.toMillimetres();
        double slope = Math.hypot(a, b);
        DoubleBinaryOperator share = (part, whole) -> whole == 0 ? 0 : part / whole;
        return worked(
                Length.ofMillimetres(slope),
                "square root of the sum of both squares",
                new Making.Input(share.applyAsDouble(a, slope), run),
                new Making.Input(share.applyAsDouble(b, slope), rise));
    }

    /** Worked out by a formula that is not a sum. @param rule the formula in words @param inputs what went in, with d(value)/d(input) */
    public static Dim worked(Length value, String rule, Making.Input... inputs) {
        return new Dim(value, new Making.Worked(rule, List.of(inputs)));
    }

    /** The value, exact. */
    public Length value() {
        return value;
    }

    /** How it came by its value. */
    public Making making() {
        Making made = making;
        if (made == null) {
            made = Objects.requireNonNull(sum).opened();
            making = made;
        }
        return made;
    }

    /** The name it goes by, when it has one. */
    public Optional<String> findPath() {
        return making().findPath();
    }

    /** Whether the bench has measured this very number. */
    public boolean isMeasured() {
        return making() instanceof Making.Measured;
    }

    /** The value by the plan: for a measured or set number what its sum says, else its value. */
    public Dim planned() {
        if (making() instanceof Making.Measured measured) {
            return measured.planned();
        }
        return making() instanceof Making.Set set ? set.planned() : this;
    }

    /** The sum of the two. */
    public Dim plus(Dim other) {
        return sum(1, other);
    }

    /** The difference of the two. */
    public Dim minus(Dim other) {
        return sum(-1, other);
    }

    /** A whole multiple. */
    public Dim times(long factor) {
        return collected(new Terms(factor, this));
    }

    /** A fraction of it, rounded half even to a tenth of a nanometre. @throws ArithmeticException for a denominator of zero */
    public Dim share(long numerator, long denominator) {
        return numerator == denominator
                ? this
                : new Dim(value.times(numerator, denominator), new Making.Share(this, numerator, denominator));
    }

    /** Half of it. */
    public Dim half() {
        return share(1, 2);
    }

    /** Rounded to a step; stays itself when it already is a whole number of steps. */
    public Dim rounded(Length step, Rounding rounding) {
        Length result = rounding.apply(value, step);
        return result.equals(value) ? this : new Dim(result, new Making.Rounded(this, step, rounding));
    }

    private Dim sum(long sign, Dim other) {
        if (other == ZERO || this == ZERO && sign > 0) {
            return other == ZERO ? this : other;
        }
        Length total = sign > 0 ? value.plus(other.value) : value.minus(other.value);
        Dim sum = new Dim(total, new Unopened(this, sign, other));
        return sum.depth < DEEPEST ? sum : new Dim(total, sum.making());
    }

    private static Dim collected(Terms terms) {
        List<Making.Sum.Term> list = terms.list();
        if (list.isEmpty()) {
            return ZERO;
        }
        if (list.size() == 1 && list.get(0).times() == 1) {
            return list.get(0).dim();
        }
        Length total = Length.ZERO;
        for (Making.Sum.Term term : list) {
            total = total.plus(term.dim().value.times(term.times()));
        }
        return new Dim(total, new Making.Sum(list));
    }

    /** Whether both are the same number from the same place, so that one less the other is nothing at all. */
    public boolean sameSourceAs(Dim other) {
        if (this == other) {
            return true;
        }
        if (!value.equals(other.value)) {
            return false;
        }
        Making made = making();
        Making others = other.making();
        Optional<String> path = made.findPath();
        return made == others
                || (path.isPresent()
                        ? path.equals(others.findPath())
                        : made.inputs().isEmpty() && made.equals(others));
    }

    @Override
    public int compareTo(Dim other) {
        return value.compareTo(other.value);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Dim dim && value.equals(dim.value);
    }

    @Override
    public int hashCode() {
        return value.hashCode();
    }

    /** The value with its name if it has one. */
    @Override
    public String toString() {
        return findPath().map(name -> name + " " + value).orElseGet(value::toString);
    }
}
