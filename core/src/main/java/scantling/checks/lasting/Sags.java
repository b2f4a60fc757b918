package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.stream.DoubleStream;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.measure.Dim;

/** How far each board that spans sags, how its ends are held, and what would just do: every board, failing or not. */
public final class Sags {
    private Sags() {}

    /**
     * Boards that sag alike, under the woodwork limit and its planned load, and after years as the eye sees it.
     *
     * @param boards which
     * @param ends how they are held, in words
     * @param span clear
     * @param load what is planned to lie there, in words
     * @param free sag with the ends lying free, which is what counts, mm
     * @param held sag as its joints hold it, mm
     * @param fast sag with ends that cannot turn, mm
     * @param allowed by the woodwork limit, mm
     * @param years sag after years under what a cabinet is tested with, mm
     * @param seen what the eye does not see, mm
     * @param thin the least thickness that keeps every rule, mm
     * @param wide the greatest span that does, mm
     * @param lipping the least depth of a hardwood lipping that does, mm
     */
    public record Row(
            List<Part> boards,
            String ends,
            Dim span,
            String load,
            double free,
            double held,
            double fast,
            double allowed,
            double years,
            double seen,
            OptionalDouble thin,
            OptionalDouble wide,
            OptionalDouble lipping) {
        /** Takes its own copy. */
        public Row {
            boards = List.copyOf(boards);
        }
    }

    /** Every board that spans, those that sag alike together, in building order. */
    public static List<Row> of(Assembly assembly) {
        List<Row> rows = new ArrayList<>();
        new SpannedBoards(assembly, Woods.standard()).alike().forEach(alike -> rows.add(row(assembly, alike)));
        return rows;
    }

    private static Row row(Assembly assembly, List<Spanned> alike) {
        Spanned one = alike.get(0);
        PlannedLoad load = PlannedLoad.of(assembly, one.part().path());
        List<SagRule> rules = SagRule.all().stream().map(load::under).toList();
        SagRule woodwork = rules.get(0);
        SagRule eye = rules.get(rules.size() - 1);
        double planned = load.pascal();
        double span = one.shelf().span();
        return new Row(
                alike.stream().map(Spanned::part).toList(),
                ends(one),
                one.span(),
                "%.0f lb/ft2, %s".formatted(load.psf(), load.use()),
                one.shelf().sag(woodwork, planned),
                one.held().sag(woodwork, planned),
                one.fast().sag(woodwork, planned),
                woodwork.allowed(span),
                one.shelf().sag(eye, planned),
                eye.allowed(span),
                every(rules, (rule, shelf) -> shelf.leastThickness(rule, planned), one.shelf(), true),
                every(rules, (rule, shelf) -> shelf.greatestSpan(rule, planned), one.shelf(), false),
                every(rules, (rule, shelf) -> shelf.lippingDepth(rule, planned), one.shelf(), true));
    }

    private static String ends(Spanned one) {
        if (!one.shelf().pins().equals(Pins.NONE)) {
            return "on pins";
        }
        return one.isHeld() ? "held by its joints" : "lying free";
    }

    /** What keeps every rule: the greatest of the least, or the least of the greatest; empty where one rule cannot be kept. */
    private static OptionalDouble every(
            List<SagRule> rules, BiFunction<SagRule, Shelf, OptionalDouble> solve, Shelf shelf, boolean greatest) {
        List<OptionalDouble> each =
                rules.stream().map(rule -> solve.apply(rule, shelf)).toList();
        if (each.stream().anyMatch(OptionalDouble::isEmpty)) {
            return OptionalDouble.empty();
        }
        DoubleStream numbers = each.stream().mapToDouble(OptionalDouble::getAsDouble);
        return greatest ? numbers.max() : numbers.min();
    }
}
