package scantling.joinery;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Finding;
import scantling.feature.Feature;
import scantling.feature.Setting;
import scantling.measure.Dim;
import scantling.space.Box;

/** A tenon of the entering part in a mortise of the other: a third of the stock thick, as the nearest bit cuts it. */
final class Tenons implements JointMaker {
    private final boolean haunched;

    Tenons(boolean haunched) {
        this.haunched = haunched;
    }

    @Override
    public void make(Meeting at, Bench bench) {
        JointRules rules = bench.rules();
        Dim third = rules.share("tenon thickness").of(at.thinSize());
        Optional<Dim> bit =
                Bits.nearest(bench, third, rules.share("thickest tenon").of(at.thinSize()));
        if (bit.isEmpty() || !at.depth().value().isPositive()) {
            tooThin(at, bench, "mortise and tenon");
            return;
        }
        Dim thick = bit.get();
        Dim deep = deep(at, bench);
        Optional<Dim[]> wide = Tenoning.width(at, bench, thick, Dim.ZERO, deep);
        if (wide.isEmpty()) {
            InTheWay.tell(at, bench, thick, deep, false);
            return;
        }
        if (haunched) {
            wide = Optional.of(Haunch.cut(at, bench, thick, wide.get()));
        }
        int count = divided(wide.get()[1].minus(wide.get()[0]), rules);
        boolean moves = count > 1 && CrossGrain.is(at);
        List<Dim[]> tenons = Division.of(wide.get(), moves ? CrossGrain.odd(count) : count);
        for (int i = 0; i < tenons.size(); i++) {
            String what = count == 1 ? "tenon" : "tenon " + (i + 1);
            Optional<Dim> travel = moves ? Optional.of(CrossGrain.travel(at, bench, tenons, i)) : Optional.empty();
            pair(at, bench, what, tenons.get(i), thick, at.depth(), deep, travel);
        }
        if (moves) {
            tongue(at, bench, wide.get(), thick);
        }
        explain(at, bench, third, thick, tenons);
    }

    private static int divided(Dim width, JointRules rules) {
        double most = Row.mm(rules.length("widest tenon"));
        double have = Row.mm(width);
        return have <= most ? 1 : (int) Math.ceil((have + most) / (2 * most));
    }

    static Dim deep(Meeting at, Bench bench) {
        Dim more = at.depth().plus(bench.rules().length("glue room"));
        Dim most = at.room(true).minus(bench.rules().length("least behind a hole"));
        return more.compareTo(most) <= 0 ? more : at.depth();
    }

    /** A tenon and its mortise. @param offsets from where to where along the joint @param deep of the mortise */
    static void pair(Meeting at, Bench bench, String what, Dim[] offsets, Dim thick, Dim longer, Dim deep) {
        pair(at, bench, what, offsets, thick, longer, deep, Optional.empty());
    }

    /** The short tongue between and beside divided tenons, which keeps the board flat; its groove leaves room to move. */
    private static void tongue(Meeting at, Bench bench, Dim[] wide, Dim thick) {
        Dim usual = bench.rules().length("haunch depth");
        Dim deep = usual.compareTo(at.depth().half()) <= 0 ? usual : at.depth().half();
        Dim travel = CrossGrain.travel(at, bench, wide[1].minus(wide[0]).half());
        pair(at, bench, "tongue", wide, thick, deep, deep, Optional.of(travel));
    }

    private static void pair(
            Meeting at,
            Bench bench,
            String what,
            Dim[] offsets,
            Dim thick,
            Dim longer,
            Dim deep,
            Optional<Dim> travel) {
        Dim from = at.start(at.run()).plus(offsets[0]);
        Dim to = at.start(at.run()).plus(offsets[1]);
        Dim low = at.middle().minus(thick.half());
        Dim high = at.middle().plus(thick.half());
        Box across = at.across(from, to, low, high);
        Dim more = travel.orElse(Dim.ZERO);
        List<String> notes = new ArrayList<>(List.of(Fences.passes(bench, deep)));
        travel.ifPresent(each -> notes.add(CrossGrain.note(bench, each)));
        bench.cut(
                at,
                true,
                at.pocket(at.across(from.minus(more), to.plus(more), low, high), deep, true),
                new Bench.Cut(
                        what,
                        Feature.Kind.MORTISE,
                        at.surface(true),
                        Optional.of(thick.half()),
                        Fences.across(
                                at,
                                bench,
                                true,
                                at.middle(),
                                deep,
                                "router",
                                "straight bit " + bench.say(thick),
                                notes.toArray(String[]::new))));
        bench.cut(
                at,
                false,
                at.pocket(across, longer, true),
                new Bench.Cut(what, Feature.Kind.TENON, at.surface(false), Optional.empty(), sawn(at, longer, thick)));
    }

    private static Setting sawn(Meeting at, Dim longer, Dim thick) {
        Map<String, Dim> sizes = new LinkedHashMap<>();
        sizes.put("shoulder from the end", longer);
        sizes.put("cheek depth", at.thinSize().minus(thick).half());
        return new Setting(
                "table saw",
                "tenon jig or dado head",
                sizes,
                List.of("Round the edges of the tenon to the mortise's ends, or square the mortise with a chisel."));
    }

    private static void explain(Meeting at, Bench bench, Dim third, Dim thick, List<Dim[]> tenons) {
        Dim width = tenons.get(0)[1].minus(tenons.get(0)[0]);
        String number = tenons.size() == 1 ? "tenon" : tenons.size() + " tenons";
        bench.choose(
                at,
                bench.rules().share("tenon thickness").source(),
                "%s %s x %s x %s long: a third of %s is %s, the nearest bit is %s.%s"
                        .formatted(
                                number,
                                bench.say(thick),
                                bench.say(width),
                                bench.say(at.depth()),
                                bench.say(at.thinSize()),
                                bench.say(third),
                                bench.sayUnit(thick),
                                tenons.size() == 1
                                        ? Strengths.tenon(at, thick, width, at.depth())
                                        : CrossGrain.is(at)
                                                ? " Glue the middle one only: the mortises of the others are longer at"
                                                        + " both ends by what the wood travels there (Wood Handbook Eq."
                                                        + " 13-2)."
                                                : Strengths.UNKNOWN),
                thick,
                width,
                at.depth());
    }

    /** Tells that no bit is thin enough. */
    static void tooThin(Meeting at, Bench bench, String what) {
        Dim least = bench.rules().bits().get(0).diameter().times(2);
        bench.find(
                Finding.Severity.STOP,
                at,
                "%s are too thin for a %s where they meet: %s, and the thinnest bit needs %s."
                        .formatted(Bench.both(at), what, bench.sayUnit(at.thinSize()), bench.sayUnit(least)),
                "common practice",
                "Make the stock at least %s thick.".formatted(bench.sayUnit(least)),
                at.thinSize(),
                least);
    }
}
