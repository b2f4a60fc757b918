package scantling.joinery;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.feature.Feature;
import scantling.feature.Setting;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/** A tongue along the end or edge of the entering part, a third of it thick, in a groove of the other. */
final class Tongues implements JointMaker {
    @Override
    public void make(Meeting at, Bench bench) {
        Axis wide = Channel.width(at);
        JointRules.Share share = bench.rules().share("tenon thickness");
        Dim whole = at.shared().extent(wide);
        Optional<Dim> bit = Bits.nearest(
                bench, share.of(whole), bench.rules().share("thickest tenon").of(whole));
        if (bit.isEmpty() || !at.depth().value().isPositive()) {
            Tenons.tooThin(at, bench, "tongue");
            return;
        }
        Dim thick = bit.get();
        Dim low = at.start(wide).plus(whole.minus(thick).half());
        Box middle = at.shared().with(Side.of(wide, false), low).with(Side.of(wide, true), low.plus(thick));
        Dim deep = Tenons.deep(at, bench);
        Box groove = at.pocket(middle, deep, true);
        boolean across = wide.third(at.side().axis()) != at.receiving().lie().length();
        bench.cut(
                at,
                true,
                groove,
                new Bench.Cut(
                        "tongue",
                        across ? Feature.Kind.DADO : Feature.Kind.GROOVE,
                        at.surface(true),
                        Channel.ends(at, groove, wide.third(at.side().axis()), thick),
                        Fences.router(bench, thick, Channel.fence(at, groove, wide), deep, List.of())));
        Map<String, Dim> sizes = new LinkedHashMap<>();
        sizes.put("length of the tongue", at.depth());
        sizes.put("off each face", whole.minus(thick).half());
        bench.cut(
                at,
                false,
                middle,
                new Bench.Cut(
                        "tongue",
                        Feature.Kind.TONGUE,
                        at.surface(false),
                        Optional.empty(),
                        new Setting(
                                "router",
                                "rabbeting bit",
                                sizes,
                                List.of(
                                        "One cut from each face.",
                                        Fences.passes(bench, whole.minus(thick).half())))));
        Weakness.channel(at, bench, deep);
        bench.choose(
                at,
                share.source(),
                "tongue %s thick and %s long: a third of %s is %s, the nearest bit is %s.%s"
                        .formatted(
                                bench.say(thick),
                                bench.say(at.depth()),
                                bench.say(whole),
                                bench.say(share.of(whole)),
                                bench.sayUnit(thick),
                                Strengths.UNKNOWN),
                thick,
                at.depth());
    }
}
