package scantling.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import scantling.drawing.Origin;
import scantling.measure.Dim;
import scantling.measure.Explain;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.measure.Making;
import scantling.measure.Sensitivity;

/**
 * How one number came about, as a page shows it.
 *
 * @param name the number
 * @param figure its value
 * @param style given, worked or measured
 * @param lines what it is made of, one below the other
 * @param before the value by its sum, where a measurement or a setting stands in its place
 * @param spread how exact it comes out
 */
public record SumView(
        String name, String figure, String style, List<Line> lines, Optional<String> before, String spread) {
    /**
     * One line of a sum.
     *
     * @param sign before it: empty, +, -, 2 ×
     * @param figure the value
     * @param style given, worked or measured
     * @param what its name in words
     * @param path its name as a number of the piece, which opens its own sum; empty when it has none
     * @param given where the text gives it
     * @param source where it comes from
     */
    public record Line(
            String sign, String figure, String style, String what, String path, OptionalInt given, String source) {
        /** Its name as it stands in an address. */
        public String address() {
            return Html.coded(path);
        }

        /** Where the text gives it, or nothing. */
        public String at() {
            return given.isPresent() ? Integer.toString(given.getAsInt()) : "";
        }
    }

    static SumView of(String name, Dim dim, LengthFormat format) {
        return new Writer(format).view(name, dim);
    }

    /** Whether a measurement stands in place of the sum. */
    public boolean isMeasured() {
        return style.equals(Origin.MEASURED.style());
    }

    /** Takes sums apart. */
    private record Writer(LengthFormat format) {
        SumView view(String name, Dim dim) {
            return new SumView(
                    name,
                    format.formatWithUnit(dim.value()),
                    Origin.of(dim).style(),
                    lines(dim.making()),
                    before(dim.making()),
                    spread(dim));
        }

        private Optional<String> before(Making making) {
            if (making instanceof Making.Measured measured) {
                return Optional.of(figure(measured.planned()));
            }
            return making instanceof Making.Set set ? Optional.of(figure(set.planned())) : Optional.empty();
        }

        private String spread(Dim dim) {
            Sensitivity.Spread spread = Sensitivity.tolerance(dim);
            return spread.worstCase().isZero() ? "" : spread.words(format);
        }

        private List<Line> lines(Making making) {
            if (making instanceof Making.Named named) {
                return named.planned().findPath().isPresent()
                        ? List.of(line("", named.planned()))
                        : lines(named.planned().making());
            }
            if (making instanceof Making.Measured measured) {
                return lines(measured.planned().making());
            }
            if (making instanceof Making.Set set) {
                return List.of(line("", set.set()));
            }
            if (making instanceof Making.Sum sum) {
                return sum(sum);
            }
            return other(making);
        }

        private List<Line> sum(Making.Sum sum) {
            List<Line> lines = new ArrayList<>();
            for (Making.Sum.Term term : sum.terms()) {
                String sign = term.times() < 0 ? "-" : lines.isEmpty() ? "" : "+";
                long times = Math.abs(term.times());
                lines.add(line(sign + (times == 1 ? "" : times + " ×"), term.dim()));
            }
            return lines.isEmpty() ? List.of(words("the corner that the piece is measured from")) : List.copyOf(lines);
        }

        private List<Line> other(Making making) {
            if (making instanceof Making.Share share) {
                return List.of(line(share.numerator() + "/" + share.denominator() + " of", share.whole()));
            }
            if (making instanceof Making.Rounded rounded) {
                String way = switch (rounded.rounding()) {
                    case NEAREST -> "to the nearest ";
                    case UP -> "up to whole ";
                    case DOWN -> "down to whole ";
                };
                return List.of(line("", rounded.exact()), words("rounded " + way + figure(rounded.step())));
            }
            if (making instanceof Making.Extreme extreme) {
                return inputs(extreme.larger() ? "the larger of" : "the smaller of", extreme.candidates());
            }
            if (making instanceof Making.Worked worked) {
                return inputs(
                        worked.rule(),
                        worked.inputs().stream().map(Making.Input::dim).toList());
            }
            return List.of(source(making));
        }

        private List<Line> inputs(String rule, List<Dim> dims) {
            List<Line> lines = new ArrayList<>(List.of(words(rule)));
            dims.forEach(dim -> lines.add(line("", dim)));
            return lines;
        }

        private Line source(Making making) {
            if (making instanceof Making.Given given) {
                return new Line("", given.text(), "given", given.label(), "", at(making), "given, " + given.span());
            }
            return making instanceof Making.LookedUp row
                    ? words("from %s, %s (%s)".formatted(row.table(), row.key(), row.source()))
                    : words("");
        }

        private static Line words(String words) {
            return new Line("", "", "", words, "", OptionalInt.empty(), "");
        }

        private Line line(String sign, Dim dim) {
            String path = dim.findPath().orElse("");
            return new Line(
                    sign, figure(dim), Origin.of(dim).style(), what(dim, path), path, at(dim.making()), told(dim));
        }

        /** Its name, or how it is made where it has none. */
        private String what(Dim dim, String path) {
            Making making = dim.making();
            if (making instanceof Making.Given given) {
                return given.label();
            }
            if (making instanceof Making.LookedUp row) {
                return row.key();
            }
            return path.isEmpty() ? new Explain(format).making(dim).replaceFirst("^= ", "") : path;
        }

        private static String told(Dim dim) {
            Making making = opened(dim.making());
            if (making instanceof Making.Given given) {
                return "given, " + given.span();
            }
            if (making instanceof Making.LookedUp row) {
                return row.source();
            }
            return making instanceof Making.Measured ? "measured at the bench" : "";
        }

        private static Making opened(Making making) {
            return making instanceof Making.Named named ? opened(named.planned().making()) : making;
        }

        private static OptionalInt at(Making making) {
            Making open = opened(making);
            if (open instanceof Making.Set set) {
                return at(set.set().making());
            }
            return open instanceof Making.Given given
                    ? OptionalInt.of(given.span().start())
                    : OptionalInt.empty();
        }

        private String figure(Dim dim) {
            return format.format(dim.value());
        }

        private String figure(Length length) {
            return format.formatWithUnit(length);
        }
    }
}
