package scantling.joinery;

import java.util.Optional;
import scantling.construct.Joint;
import scantling.measure.Dim;

/** What suits where the maker leaves it open: biscuits, else a loose tenon, else dowels, else screws. */
final class Choosing {
    private Choosing() {}

    /** What was picked and why. */
    record Pick(Joint.Kind kind, String why) {}

    static Pick pick(Meeting at, Bench bench) {
        if (Biscuits.largest(at, bench).isPresent()) {
            return new Pick(Joint.Kind.BISCUIT, "biscuits: quickest, and there is room for them.");
        }
        JointRules.Biscuit smallest = bench.rules().biscuits().get(0);
        Dim needs = Biscuits.needs(bench, smallest);
        String not = at.runSize().compareTo(needs) < 0
                ? "a %s slot %s long needs %s of width, this %s has %s"
                        .formatted(
                                bench.sayUnit(smallest.thickness()),
                                bench.say(smallest.length()),
                                bench.say(needs),
                                at.entering().path(),
                                bench.say(at.runSize()))
                : "the thinnest stock for one is %s, this is %s"
                        .formatted(bench.sayUnit(smallest.leastStock()), bench.say(at.thinSize()));
        return new Pick(next(at, bench), next(at, bench).words() + ", not biscuit: " + not + ".");
    }

    private static Joint.Kind next(Meeting at, Bench bench) {
        JointRules rules = bench.rules();
        Dim third = rules.share("tenon thickness").of(at.thinSize());
        Optional<Dim> bit =
                Bits.nearest(bench, third, rules.share("thickest tenon").of(at.thinSize()));
        double wide = Row.mm(at.runSize())
                - Row.mm(Tenoning.shoulder(at, bench, false))
                - Row.mm(Tenoning.shoulder(at, bench, true));
        return bit.isPresent() && wide >= 2 * Row.mm(bit.get()) ? Joint.Kind.LOOSE_TENON : Joint.Kind.DOWEL;
    }
}
