package scantling.piece;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Unit;

/** What is known while one text is read: the language, the unit, the names, the materials, the problems so far. */
final class Reading {
    /** Longer than any room a piece of furniture stands in. */
    private static final Length ABSURD = Length.mm(30_000);

    private final Language language;
    private final Problems problems;
    private final Unit unit;
    private final Scope scope;
    private final Map<String, Material> materials = new LinkedHashMap<>();
    private final Set<String> declared = new LinkedHashSet<>();

    Reading(Language language, Problems problems, Unit unit) {
        this.language = language;
        this.problems = problems;
        this.unit = unit;
        this.scope = new Scope(problems);
    }

    /** Which lengths make sense in a place. */
    enum Sign {
        /** Greater than zero. */
        POSITIVE,
        /** Zero too: an overhang, a gap. */
        ZERO_TOO,
        /** Any: a place, measured from somewhere. */
        ANY
    }

    Language language() {
        return language;
    }

    Problems problems() {
        return problems;
    }

    Unit unit() {
        return unit;
    }

    Scope scope() {
        return scope;
    }

    /** Materials that were read, in the order given. */
    Map<String, Material> materials() {
        return materials;
    }

    /** Names of all materials, also of those that could not be read. */
    Set<String> declared() {
        return declared;
    }

    /** What the maker typed at a path. */
    Literals written(String label) {
        return new Literals.Written(label, unit);
    }

    /** A length that makes sense; empty and reported otherwise. */
    Optional<Dim> length(Phrase phrase, Literals literals, Sign sign) {
        return Expression.read(phrase, scope, literals, problems).flatMap(dim -> sensible(dim, phrase, literals, sign));
    }

    /** A length in one value. */
    Optional<Dim> length(Node node, Literals literals, Sign sign) {
        return scalar(node, literals.label(), "a length").flatMap(scalar -> length(Phrase.of(scalar), literals, sign));
    }

    private Optional<Dim> sensible(Dim dim, Phrase phrase, Literals literals, Sign sign) {
        boolean tooSmall = sign == Sign.POSITIVE && !dim.value().isPositive()
                || sign == Sign.ZERO_TOO && dim.value().isNegative();
        boolean absurd = dim.value().abs().compareTo(ABSURD) > 0;
        if (!tooSmall && !absurd) {
            return Optional.of(dim);
        }
        String result = phrase.text().equals(dim.value().toString())
                ? Problems.quoted(phrase.text())
                : "%s (%s)".formatted(Problems.quoted(phrase.text()), dim.value());
        return problems.fail(
                phrase.span(),
                tooSmall
                        ? "%s is %s for %s."
                                .formatted(result, dim.value().isZero() ? "nothing" : "negative", literals.label())
                        : "%s is absurdly long for %s.".formatted(result, literals.label()),
                tooSmall
                        ? "It must be %s.".formatted(sign == Sign.POSITIVE ? "greater than zero" : "zero or more")
                        : "At most 30 m; is the unit (%s) right?".formatted(unit.symbol()));
    }

    /** One value; reported when something else stands there or nothing. */
    Optional<Node.Scalar> scalar(Node node, String label, String wanted) {
        if (node instanceof Node.Scalar scalar && !scalar.text().isBlank()) {
            return Optional.of(scalar);
        }
        return refuse(node, label, wanted);
    }

    /** Keys with values; reported when something else stands there. */
    Optional<Node.Fields> fields(Node node, String label, String wanted) {
        return node instanceof Node.Fields fields ? Optional.of(fields) : refuse(node, label, wanted);
    }

    /** A list; reported when something else stands there. */
    Optional<List<Node>> items(Node node, String label, String wanted) {
        return node instanceof Node.Items list ? Optional.of(list.items()) : refuse(node, label, wanted);
    }

    /** Reports that something else was wanted, unless what stands there was refused already. */
    <T> Optional<T> refuse(Node node, String label, String wanted) {
        return node instanceof Node.Refused
                ? Optional.empty()
                : problems.fail(
                        node.span(),
                        "%s needs %s; here stands %s.".formatted(Problems.quoted(label), wanted, node.word()),
                        "");
    }

    /** Reports a key that is not allowed there. */
    void unknownKey(Node.Scalar key, String label, List<String> allowed) {
        problems.add(
                key.span(),
                "%s cannot be said about %s.".formatted(Problems.quoted(key.text()), label),
                Suggestions.remedy(key.text(), allowed));
    }
}
