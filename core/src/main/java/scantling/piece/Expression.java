package scantling.piece;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.LengthReader;

/**
 * Reads a length or a sum of lengths: {@code 1 3/4}, {@code width - 2 * leg}, {@code (depth - 20 mm) / 3}. Lengths are
 * added and subtracted, multiplied and divided by plain numbers; a plain number that stands alone is a length in the unit
 * of the piece. Nothing else can be said, so that nothing else can happen.
 */
final class Expression {
    private static final int LONGEST = 300;
    private static final int DEEPEST = 50;
    /** A minus with air around it takes away, also before a fraction: {@code 20 - 3/4}. */
    private static final Pattern TAKES_AWAY = Pattern.compile("\\d(?:\\s+-\\s*|\\s*-\\s+)\\d+\\s*/");

    private final List<Tokens.Token> tokens;
    private final Scope scope;
    private final Literals literals;
    private final Problems problems;
    private int at;
    private int depth;

    private Expression(List<Tokens.Token> tokens, Scope scope, Literals literals, Problems problems) {
        this.tokens = tokens;
        this.scope = scope;
        this.literals = literals;
        this.problems = problems;
    }

    /** A plain number keeps the phrase it was written in, to become a length with its origin when it must. */
    private sealed interface Quantity {
        record Number(Rational value, Phrase phrase) implements Quantity {}

        record Size(Dim dim) implements Quantity {}
    }

    /** The length; empty when it cannot be read, which is then among the problems. */
    static Optional<Dim> read(Phrase phrase, Scope scope, Literals literals, Problems problems) {
        String text = phrase.text();
        if (text.isEmpty()) {
            return problems.fail(phrase.span(), "A length is missing here.", "Write one, as in 44.5 mm or 1 3/4 in.");
        }
        if (text.length() > LONGEST) {
            return problems.fail(
                    phrase.span(),
                    "%s is too long for a length.".formatted(Problems.quoted(text)),
                    "Give parts of it a name under \"lengths\".");
        }
        Optional<Length> plain =
                TAKES_AWAY.matcher(text).find() ? Optional.empty() : LengthReader.read(text, literals.unit());
        return plain.isPresent()
                ? Optional.of(literals.of(plain.get(), phrase))
                : Tokens.of(phrase, scope, problems)
                        .flatMap(tokens -> new Expression(tokens, scope, literals, problems).whole(phrase));
    }

    private Optional<Dim> whole(Phrase phrase) {
        try {
            Optional<Quantity> sum = sum();
            return sum.isPresent() && sign() != ' ' ? unexpected() : sum.map(this::size);
        } catch (ArithmeticException tooLarge) {
            return problems.fail(phrase.span(), "%s is far too large.".formatted(Problems.quoted(phrase.text())), "");
        }
    }

    private Optional<Quantity> sum() {
        Optional<Quantity> left = product();
        while (left.isPresent() && (sign() == '+' || sign() == '-')) {
            boolean plus = take().charAt(0) == '+';
            Optional<Quantity> right = product();
            if (right.isEmpty()) {
                return right;
            }
            left = Optional.of(added(left.get(), plus, right.get()));
        }
        return left;
    }

    private Quantity added(Quantity left, boolean plus, Quantity right) {
        if (left instanceof Quantity.Number a && right instanceof Quantity.Number b) {
            Rational value = a.value().plus(plus ? b.value() : b.value().negated());
            return new Quantity.Number(value, joined(a.phrase(), b.phrase()));
        }
        return new Quantity.Size(
                plus ? size(left).plus(size(right)) : size(left).minus(size(right)));
    }

    private Optional<Quantity> product() {
        Optional<Quantity> left = signed();
        while (left.isPresent() && (sign() == '*' || sign() == '/')) {
            boolean times = take().charAt(0) == '*';
            Phrase place = current().phrase();
            Optional<Quantity> right = signed();
            left = right.isEmpty() ? right : multiplied(left.get(), times, right.get(), place);
        }
        return left;
    }

    private Optional<Quantity> multiplied(Quantity left, boolean times, Quantity right, Phrase place) {
        if (right instanceof Quantity.Number b) {
            if (!times && b.value().isZero()) {
                return problems.fail(place.span(), "Nothing can be divided by zero.", "");
            }
            Rational factor = times ? b.value() : b.value().inverse();
            return Optional.of(
                    left instanceof Quantity.Number a
                            ? new Quantity.Number(a.value().times(factor), joined(a.phrase(), b.phrase()))
                            : new Quantity.Size(scaled(size(left), factor)));
        }
        if (times && left instanceof Quantity.Number a) {
            return Optional.of(new Quantity.Size(scaled(size(right), a.value())));
        }
        return problems.fail(
                place.span(),
                "A length cannot be %s %s, which is a length."
                        .formatted(times ? "multiplied by" : "divided by", Problems.quoted(place.text())),
                "Use a plain number there, as in leg / 4.");
    }

    private static Dim scaled(Dim dim, Rational factor) {
        long numerator = factor.numerator().longValueExact();
        long denominator = factor.denominator().longValueExact();
        return denominator == 1 ? dim.times(numerator) : dim.share(numerator, denominator);
    }

    private Optional<Quantity> signed() {
        if (sign() != '-') {
            return atom();
        }
        if (++depth > DEEPEST) {
            return tooDeep();
        }
        take();
        return signed().map(q -> q instanceof Quantity.Number number
                ? new Quantity.Number(number.value().negated(), number.phrase())
                : new Quantity.Size(size(q).times(-1)));
    }

    private Optional<Quantity> atom() {
        Tokens.Token token = current();
        if (token instanceof Tokens.Plain plain) {
            at++;
            return Optional.of(new Quantity.Number(plain.number(), plain.phrase()));
        }
        if (token instanceof Tokens.Literal literal) {
            at++;
            return Optional.of(new Quantity.Size(literals.of(literal.length(), literal.phrase())));
        }
        if (token instanceof Tokens.Name name) {
            at++;
            return scope.resolve(name.name(), name.phrase().span()).map(Quantity.Size::new);
        }
        return sign() == '(' ? bracket() : unexpected();
    }

    private Optional<Quantity> bracket() {
        if (++depth > DEEPEST) {
            return tooDeep();
        }
        Phrase opened = current().phrase();
        take();
        Optional<Quantity> inner = sum();
        if (inner.isPresent() && sign() != ')') {
            return problems.fail(opened.span(), "A bracket is opened and not closed.", "Close it with ).");
        }
        take();
        return inner;
    }

    private <T> Optional<T> tooDeep() {
        return problems.fail(current().phrase().span(), "There are too many brackets.", "Say it more simply.");
    }

    private <T> Optional<T> unexpected() {
        Phrase place = current().phrase();
        return problems.fail(
                place.span(),
                place.text().isEmpty()
                        ? "Something is missing at the end of %s."
                                .formatted(Problems.quoted(place.scalar().text()))
                        : "%s does not fit here.".formatted(Problems.quoted(place.text())),
                "Between two lengths stands + or -; before or behind a plain number * or /.");
    }

    private Dim size(Quantity quantity) {
        if (quantity instanceof Quantity.Size size) {
            return size.dim();
        }
        Quantity.Number number = (Quantity.Number) quantity;
        return literals.of(number.value().of(literals.unit()), number.phrase());
    }

    private static Phrase joined(Phrase first, Phrase last) {
        return new Phrase(first.scalar(), first.from(), last.to());
    }

    private Tokens.Token current() {
        return tokens.get(at);
    }

    private char sign() {
        return current() instanceof Tokens.Sign sign ? sign.sign() : 'n';
    }

    private String take() {
        String text = current() instanceof Tokens.Sign sign ? String.valueOf(sign.sign()) : "n";
        if (at < tokens.size() - 1) {
            at++;
        }
        return text;
    }
}
