package scantling.checks;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Making;
import scantling.space.Box;
import scantling.space.Extent;
import scantling.space.Side;
import scantling.space.Solid;

/**
 * That nothing leaves the overall size but what stands over because the maker said so. A plane of a part may lie
 * outside when a number it was made from, however deep, speaks of an overhang: a given number in its label, a looked-up
 * one in its table or key, a named one in its path. A plane that never heard of an overhang is a mistake.
 */
final class Bounds {
    private static final String OVERHANG = "overhang";

    private final Words words;
    private final Box whole;

    Bounds(Assembly assembly, Box whole) {
        this.words = Words.of(assembly);
        this.whole = whole;
    }

    List<Finding> check(List<PlacedPart> parts) {
        List<Finding> findings = new ArrayList<>();
        for (PlacedPart part : parts) {
            for (Side side : Side.values()) {
                Length past = past(part, side);
                if (past.isPositive() && !speaksOfOverhang(part.box().plane(side))) {
                    findings.add(finding(part, side, past));
                }
            }
        }
        return findings;
    }

    /** How far a part leaves the whole on one side; zero or less when it does not. */
    private Length past(PlacedPart part, Side side) {
        if (part.isPlain()) {
            Length further =
                    part.box().plane(side).value().minus(whole.plane(side).value());
            return side.isFar() ? further : further.negated();
        }
        double further = part.solid().extent().past(Extent.of(whole), side);
        return further > Solid.TOLERANCE ? Words.millimetres(further) : Length.ZERO;
    }

    private Finding finding(PlacedPart part, Side side, Length past) {
        return Words.stop(
                part.path(),
                "%s leaves the overall size at the %s by %s.".formatted(part.path(), side.word(), words.length(past)),
                List.of(part.box().plane(side), whole.plane(side)),
                "Make it smaller, or give it an overhang.");
    }

    static boolean speaksOfOverhang(Dim dim) {
        return speaks(dim, Collections.newSetFromMap(new IdentityHashMap<>()));
    }

    private static boolean speaks(Dim dim, Set<Dim> seen) {
        if (!seen.add(dim)) {
            return false;
        }
        if (isOverhang(dim)) {
            return true;
        }
        // A measured number has no inputs, but the plan it was made to still says why it is where it is.
        return dim.isMeasured()
                ? speaks(dim.planned(), seen)
                : dim.making().inputs().stream().anyMatch(input -> speaks(input.dim(), seen));
    }

    private static boolean isOverhang(Dim dim) {
        if (dim.making() instanceof Making.Given given) {
            return mentions(given.label());
        }
        if (dim.making() instanceof Making.LookedUp row) {
            return mentions(row.table()) || mentions(row.key());
        }
        return dim.findPath().filter(Bounds::mentions).isPresent();
    }

    private static boolean mentions(String text) {
        return text.toLowerCase(Locale.ROOT).contains(OVERHANG);
    }
}
