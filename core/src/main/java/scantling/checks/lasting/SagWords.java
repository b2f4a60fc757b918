package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import scantling.construct.Assembly;
import scantling.construct.Change;
import scantling.construct.Changes;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Making;
import scantling.space.Axis;

/** What is said of a board that sags too far, and what would keep it: solved the other way round. */
final class SagWords {
    private static final int MOST_NAMED = 3;

    private final Assembly assembly;
    private final Say say;

    SagWords(Assembly assembly) {
        this.assembly = assembly;
        this.say = Say.of(assembly);
    }

    String sentence(List<Spanned> alike, SagRule rule, PlannedLoad load) {
        Spanned one = alike.get(0);
        return "%s %s over %s under %s lb/ft2%s; %s allows %s.%s"
                .formatted(
                        named(alike),
                        say.near(one.shelf().sag(rule, load.pascal())),
                        say.near(one.span().value()),
                        load.psfUnder(rule),
                        years(one, rule, load),
                        rule.name(),
                        say.near(rule.allowed(one.shelf().span())),
                        held(one, rule, load));
    }

    static String named(List<Spanned> alike) {
        List<String> paths =
                alike.stream().map(each -> each.part().path()).limit(MOST_NAMED).toList();
        boolean all = paths.size() == alike.size();
        return String.join(", ", all ? paths : paths.subList(0, 1))
                + (all ? "" : Say.alike(alike.size()))
                + (alike.size() == 1 ? " sags" : all ? " sag" : " sags");
    }

    private static String years(Spanned one, SagRule rule, PlannedLoad load) {
        String use = rule.load().isPresent() ? "" : " (" + load.use() + ")";
        return rule.creeps()
                ? use + " after years, " + Say.one(one.shelf().creep()) + " times the first sag"
                : use + " when new";
    }

    /** What ends held in dadoes or tenons make of it; no published number stands behind how well they hold. */
    private String held(Spanned one, SagRule rule, PlannedLoad load) {
        double sag = one.held().sag(rule, load.pascal());
        if (!one.isHeld() || sag >= 0.9 * one.shelf().sag(rule, load.pascal())) {
            return "";
        }
        return one.held().keeps(rule, load.pascal())
                ? " Counted with its ends lying free; held by its joints about %s, within it, as long as the glue holds."
                        .formatted(say.near(sag))
                : " Counted with its ends lying free; held as they are it may be about %s.".formatted(say.near(sag));
    }

    // Bending is nearly all of it: the sag goes with the fourth power of the span and the inverse cube of thickness.
    static Dim sag(Spanned one, double sag) {
        return Dim.worked(
                Length.ofMillimetres(sag),
                "sag of a board on two supports, Wood Handbook Eq. 9-1",
                new Making.Input(4 * sag / one.shelf().span(), one.span()),
                new Making.Input(-3 * sag / one.shelf().thickness(), one.part().thickness()));
    }

    String remedy(Shelf shelf, SagRule rule, double planned) {
        List<String> ways = new ArrayList<>();
        shelf.leastThickness(rule, planned).ifPresent(mm -> ways.add("make it %s thick".formatted(say.atLeast(mm))));
        shelf.greatestSpan(rule, planned)
                .ifPresent(mm -> ways.add("hold it every %s with a divider or a post".formatted(say.atMost(mm))));
        shelf.lippingDepth(rule, planned)
                .ifPresent(mm -> ways.add("glue a hardwood lipping %s by %s deep along an edge"
                        .formatted(say.near(Figures.of("lipping thickness")), say.atLeast(mm))));
        String all = ways.isEmpty() ? "set a post under its middle" : String.join(", or ", ways);
        return all.substring(0, 1).toUpperCase(Locale.ROOT) + all.substring(1) + ".";
    }

    /** The remedies as changes to the text: thicker stock for all of the material, a lesser span, a deeper lipping. */
    List<Change> changes(Spanned one, SagRule rule, double planned) {
        Stream<Change> narrower = one.shelf().greatestSpan(rule, planned).stream()
                .mapToObj(say::size)
                .filter(span -> span.compareTo(one.span().value()) < 0)
                .flatMap(span -> Changes.bring(one.span(), span, assembly.piece()).stream());
        return Stream.of(thicker(one, rule, planned), narrower, deeper(one, rule, planned))
                .flatMap(each -> each)
                .toList();
    }

    /** Where the maker typed the thickness of the material: for this rule, then for all. */
    private Stream<Change> thicker(Spanned one, SagRule rule, double planned) {
        return Stream.concat(Stream.of(rule), SagRule.all().stream())
                .flatMap(each ->
                        one.shelf().leastThickness(each, planned).stream().boxed())
                .map(say::stock)
                .sorted()
                .distinct()
                .filter(thick -> thick.compareTo(one.part().thickness().value()) > 0)
                .filter(thick -> one.shelf().thick(thick.toMillimetres()).keeps(rule, planned))
                .flatMap(thick -> Changes.bring(one.part().thickness(), thick, assembly.piece()).stream());
    }

    /** Where it is lipped already, with a depth the maker typed. */
    private Stream<Change> deeper(Spanned one, SagRule rule, double planned) {
        return one.shelf().lippingDepth(rule, planned).stream()
                .mapToObj(say::stock)
                .flatMap(deep -> assembly.parts().stream()
                        .filter(other -> Parts.isLipping(other)
                                && Parts.joinedTo(assembly, one.part()).contains(other.path())
                                && other.lie().length() == one.part().lie().length())
                        .map(other -> other.box().extent(Axis.UP))
                        .filter(now -> deep.compareTo(now.value()) > 0)
                        .flatMap(now -> Changes.bring(now, deep, assembly.piece()).stream())
                        .limit(1));
    }
}
