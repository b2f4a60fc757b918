package scantling.packet;

import java.util.List;
import java.util.stream.Collectors;
import scantling.measure.Dim;
import scantling.measure.LengthFormat;
import scantling.measure.Making;

/** Writes the last step of how a number was made, in one line: {@code width 900.0 - 2 × end thickness 18.0}. */
final class SumText {
    private final LengthFormat format;

    SumText(LengthFormat format) {
        this.format = format;
    }

    String of(Dim dim) {
        Making making = dim.making();
        if (making instanceof Making.Named named) {
            return of(named.planned());
        }
        if (making instanceof Making.Given given) {
            return "given as %s, %s".formatted(given.text(), given.span());
        }
        if (making instanceof Making.LookedUp row) {
            return "from %s, %s (%s)".formatted(row.table(), row.key(), row.source());
        }
        if (making instanceof Making.Set set) {
            return "set to %s; by its sum %s".formatted(operand(set.set()), figure(set.planned()));
        }
        return making instanceof Making.Measured measured
                ? "measured at the bench; by the plan %s".formatted(figure(measured.planned()))
                : worked(making);
    }

    private String worked(Making making) {
        if (making instanceof Making.Sum sum) {
            return sum(sum.terms());
        }
        if (making instanceof Making.Share share) {
            return "%d/%d of %s".formatted(share.numerator(), share.denominator(), operand(share.whole()));
        }
        if (making instanceof Making.Extreme extreme) {
            return "the %s of %s".formatted(extreme.larger() ? "larger" : "smaller", operands(extreme.candidates()));
        }
        if (making instanceof Making.Rounded rounded) {
            return "%s rounded %s to %s"
                    .formatted(operand(rounded.exact()), way(rounded), format.formatWithUnit(rounded.step()));
        }
        if (making instanceof Making.Worked worked) {
            return "%s of %s"
                    .formatted(
                            worked.rule(),
                            operands(worked.inputs().stream()
                                    .map(Making.Input::dim)
                                    .toList()));
        }
        return "";
    }

    private static String way(Making.Rounded rounded) {
        return switch (rounded.rounding()) {
            case NEAREST -> "to the nearest, ";
            case UP -> "up";
            case DOWN -> "down";
        };
    }

    private String sum(List<Making.Sum.Term> terms) {
        if (terms.isEmpty()) {
            return "the corner the piece is measured from";
        }
        StringBuilder out = new StringBuilder();
        for (Making.Sum.Term term : terms) {
            boolean first = out.length() == 0;
            out.append(term.times() < 0 ? (first ? "-" : " - ") : (first ? "" : " + "));
            long times = Math.abs(term.times());
            out.append(times == 1 ? "" : times + " × ").append(operand(term.dim()));
        }
        return out.toString();
    }

    private String operands(List<Dim> dims) {
        return dims.stream().map(this::operand).collect(Collectors.joining(", "));
    }

    /** A number inside a sum: its name where it has one, and its figure. */
    private String operand(Dim dim) {
        Making making = dim.making();
        String name = dim.findPath().orElse("");
        if (making instanceof Making.Given given) {
            name = given.label();
        } else if (making instanceof Making.LookedUp row) {
            name = row.key();
        }
        if (name.isEmpty()) {
            return making.inputs().isEmpty() ? figure(dim) : "(" + worked(making) + ")";
        }
        return name + " " + figure(dim);
    }

    private String figure(Dim dim) {
        return format.format(dim.value());
    }
}
