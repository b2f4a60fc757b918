package scantling.measure;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Says where a number comes from: in one line, or down to what the maker typed, a table gave or the bench measured.
 *
 * @param format how lengths are written
 */
public record Explain(LengthFormat format) {
    /** Beyond this depth a sum is no longer for reading; no piece comes near it. */
    private static final int DEEPEST = 60;

    /** One line: {@code inside width 403.0 = opening / width 445.0 - 2 x slide 21.0}. */
    public String line(Dim dim) {
        String what = name(dim).map(name -> name + " ").orElse("") + figure(dim);
        return what + " " + making(dim);
    }

    /** The line and, indented below it, the lines of all that it is made from; what was told once is not told again. */
    public String tree(Dim dim) {
        List<String> lines = new ArrayList<>();
        tell(dim, 0, lines, new HashSet<>());
        return String.join("\n", lines);
    }

    private void tell(Dim dim, int depth, List<String> lines, Set<String> told) {
        String line = line(dim);
        boolean known = !told.add(line);
        lines.add("  ".repeat(depth) + line + (known && hasMore(dim) ? " (as above)" : ""));
        if (!known && depth < DEEPEST) {
            below(dim).forEach(input -> tell(input, depth + 1, lines, told));
        }
    }

    private static boolean hasMore(Dim dim) {
        return !below(dim).isEmpty();
    }

    /** What is told one level down; a name and its sum are told in one line, so the sum's terms come next. */
    private static List<Dim> below(Dim dim) {
        Dim sum = opened(dim);
        return sum.making().inputs().stream().map(Making.Input::dim).toList();
    }

    /** Behind the names that only pass a number on: the sum itself. */
    private static Dim opened(Dim dim) {
        Dim open = dim;
        while (open.making() instanceof Making.Named named) {
            if (named.planned().findPath().isPresent()) {
                return open;
            }
            open = named.planned();
        }
        return open.making() instanceof Making.Set set ? set.set() : open;
    }

    /** How the number was made, beginning with {@code =}, {@code given}, {@code from} or {@code measured}. */
    public String making(Dim dim) {
        Making making = opened(dim).making();
        if (dim.making() instanceof Making.Measured measured) {
            return "measured (by the plan %s)".formatted(figure(measured.planned()));
        }
        if (dim.making() instanceof Making.Set set) {
            return "set to %s on %s (by its sum %s)"
                    .formatted(figure(set.set()), where(set.set()), figure(set.planned()));
        }
        if (making instanceof Making.Given given) {
            return "given on %s, \"%s\"".formatted(given.span(), given.text());
        }
        if (making instanceof Making.LookedUp row) {
            return "from %s, %s (%s)".formatted(row.table(), row.key(), row.source());
        }
        return "= " + formula(opened(dim).making(), true);
    }

    private static String where(Dim dim) {
        return dim.making() instanceof Making.Given given ? given.span().toString() : "its own sum";
    }

    /** @param open whether numbers without a name are opened in their turn, once */
    private String formula(Making making, boolean open) {
        if (making instanceof Making.Sum sum) {
            return sum(sum, open);
        }
        if (making instanceof Making.Share share) {
            return "%d/%d of %s".formatted(share.numerator(), share.denominator(), term(share.whole(), open));
        }
        if (making instanceof Making.Extreme extreme) {
            return (extreme.larger() ? "the larger of " : "the smaller of ") + terms(extreme.candidates(), open);
        }
        if (making instanceof Making.Rounded rounded) {
            return "%s rounded %s to %s"
                    .formatted(
                            term(rounded.exact(), open),
                            way(rounded.rounding()),
                            format.formatWithUnit(rounded.step()));
        }
        if (making instanceof Making.Worked worked) {
            return worked.rule() + " of "
                    + terms(worked.inputs().stream().map(Making.Input::dim).toList(), open);
        }
        return making instanceof Making.Named named ? term(named.planned(), open) : "itself";
    }

    private String sum(Making.Sum sum, boolean open) {
        if (sum.terms().isEmpty()) {
            return "the corner that the piece is measured from";
        }
        StringBuilder text = new StringBuilder();
        for (Making.Sum.Term term : sum.terms()) {
            boolean first = text.length() == 0;
            String sign = term.times() < 0 ? "- " : first ? "" : "+ ";
            long times = Math.abs(term.times());
            text.append(first ? "" : " ")
                    .append(sign)
                    .append(times == 1 ? "" : times + " x ")
                    .append(term(term.dim(), open));
        }
        return text.toString();
    }

    private String terms(List<Dim> dims, boolean open) {
        return String.join(", ", dims.stream().map(dim -> term(dim, open)).toList());
    }

    private String term(Dim dim, boolean open) {
        return name(dim)
                .map(name -> name + " " + figure(dim))
                .orElseGet(() -> open ? "(" + formula(dim.making(), false) + ")" : figure(dim));
    }

    /** What people call a number: its path, what the maker called it, or its row in a table. */
    private static Optional<String> name(Dim dim) {
        if (dim.making() instanceof Making.Given given) {
            return Optional.of(given.label());
        }
        return dim.making() instanceof Making.LookedUp row ? Optional.of(row.key()) : dim.findPath();
    }

    private String figure(Dim dim) {
        return format.format(dim.value());
    }

    private static String way(Rounding rounding) {
        return switch (rounding) {
            case NEAREST -> "to the nearest,";
            case UP -> "up";
            case DOWN -> "down";
        };
    }
}
