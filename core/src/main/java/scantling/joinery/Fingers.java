package scantling.joinery;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Finding;
import scantling.feature.Feature;
import scantling.feature.Setting;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/** Straight fingers as wide as the wood is thick, an odd number, so that one part ends with fingers above and below. */
final class Fingers implements JointMaker {
    @Override
    public void make(Meeting at, Bench bench) {
        Axis run = run(at);
        Dim thinner = thinner(at);
        if (at.shared().isEmpty() || at.shared().extent(run).compareTo(thinner.times(3)) < 0) {
            tooNarrow(at, bench, at.shared().extent(run), thinner);
            return;
        }
        Dim whole = at.shared().extent(run);
        int count = 2 * (int) Math.floor((Row.mm(whole) / Row.mm(thinner) + 1e-9 - 1) / 2) + 1;
        for (int i = 0; i < count; i++) {
            pair(at, bench, i, finger(at, run, i, count), whole.share(1, count));
        }
        bench.choose(
                at,
                bench.rules().share("finger").source(),
                "box joint: %d fingers of %s over %s, about as wide as the wood is thick, %s.%s"
                        .formatted(
                                count,
                                bench.say(whole.share(1, count)),
                                bench.say(whole),
                                bench.sayUnit(thinner),
                                Strengths.UNKNOWN),
                whole.share(1, count),
                thinner);
    }

    /** The direction along a corner: across the grain of both. */
    static Axis run(Meeting at) {
        Axis one = at.entering().lie().length();
        Axis other = at.receiving().lie().length();
        return one == other ? at.run() : one.third(other);
    }

    private static Dim thinner(Meeting at) {
        Dim a = at.entering().thickness();
        Dim b = at.receiving().thickness();
        return a.compareTo(b) <= 0 ? a : b;
    }

    private static Box finger(Meeting at, Axis run, int i, int count) {
        Dim whole = at.shared().extent(run);
        Dim start = at.start(run);
        return at.shared()
                .with(Side.of(run, false), start.plus(whole.share(i, count)))
                .with(Side.of(run, true), start.plus(whole.share(i + 1L, count)));
    }

    private static void pair(Meeting at, Bench bench, int i, Box box, Dim wide) {
        for (boolean receiving : new boolean[] {false, true}) {
            boolean stands = receiving == (i % 2 == 1);
            Dim deep = box.extent(at.part(receiving).lie().length());
            Map<String, Dim> sizes = new LinkedHashMap<>();
            sizes.put("finger and slot", wide);
            sizes.put("blade height", deep);
            bench.cut(
                    at,
                    receiving,
                    box,
                    new Bench.Cut(
                            "finger " + (i + 1),
                            stands ? Feature.Kind.PIN : Feature.Kind.SOCKET,
                            Mitres.end(at, at.part(receiving)),
                            Optional.empty(),
                            new Setting(
                                    "table saw",
                                    "box joint jig",
                                    sizes,
                                    List.of("Cut a test corner; tap it together by hand."))));
        }
    }

    private static void tooNarrow(Meeting at, Bench bench, Dim run, Dim thinner) {
        bench.find(
                Finding.Severity.STOP,
                at,
                "A box joint of %s needs three fingers of %s at least, and the corner is %s high."
                        .formatted(Bench.both(at), bench.sayUnit(thinner), bench.sayUnit(run)),
                "common practice",
                "Make it %s high, or use dowels.".formatted(bench.sayUnit(thinner.times(3))),
                run,
                thinner);
    }
}
