package scantling.joinery;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import scantling.construct.Finding;
import scantling.feature.Aim;
import scantling.feature.Feature;
import scantling.feature.Setting;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Rounding;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/**
 * A mitre with biscuits or a spline across it, a third from the inside, square to the mitre. The slot slants, so its
 * feature is the box whose diagonal is the slot's middle: in either part from the mitre outward and along.
 */
final class SlantJoints implements JointMaker {
    private static final JointMaker MITRE = new Mitres();

    private final boolean spline;

    /** @param spline one spline all along in place of biscuits */
    SlantJoints(boolean spline) {
        this.spline = spline;
    }

    /** What goes across. @param name as the maker calls it @param deep how far into each part @param source who says so */
    private record Key(String name, Dim deep, Optional<JointRules.Biscuit> biscuit, String source) {}

    @Override
    public void make(Meeting at, Bench bench) {
        Axis a = at.entering().lie().length();
        Axis b = at.receiving().lie().length();
        if (at.shared().isEmpty() || a == b) {
            return;
        }
        Slant slant = Slant.of(at, bench.rules().share("spline from inside"));
        Axis run = a.third(b);
        Optional<Key> key = key(at, bench, slant, run);
        if (key.isEmpty()) {
            tooThin(at, bench, slant, run);
            return;
        }
        List<Dim[]> places = places(at, bench, key.get(), run);
        for (int i = 0; i < places.size(); i++) {
            String what = key.get().name() + (places.size() == 1 ? "" : " " + (i + 1));
            for (boolean receiving : new boolean[] {false, true}) {
                slot(at, bench, receiving, what, places.get(i), slant, key.get());
            }
        }
        MITRE.make(at, bench);
        hold(at, bench, key.get(), places.size(), run);
        bench.choose(
                at,
                key.get().source(),
                "mitre with %d %s, a third of the way from the inside, %s into each.%s"
                        .formatted(
                                places.size(),
                                key.get().name(),
                                bench.sayUnit(key.get().deep()),
                                Strengths.UNKNOWN),
                key.get().deep(),
                slant.fromInside());
    }

    private static void hold(Meeting at, Bench bench, Key key, int count, Axis run) {
        String thick = bench.say(bench.rules().length("spline"));
        String deep = bench.say(key.deep().times(2));
        String size = key.biscuit()
                .map(JointRules.Biscuit::name)
                .orElseGet(() -> "%s x %s x %s"
                        .formatted(thick, deep, bench.sayUnit(at.shared().extent(run))));
        bench.hold(at, key.biscuit().isPresent() ? "biscuit" : "spline", size, count);
    }

    private Optional<Key> key(Meeting at, Bench bench, Slant slant, Axis run) {
        JointRules rules = bench.rules();
        Dim behind = rules.length("least behind a hole");
        if (spline) {
            Dim most = Dim.worked(
                            Length.ofMillimetres(Math.max(0, slant.deepest(rules.length("spline"), behind))),
                            "as deep as the corner lets a spline be")
                    .rounded(rules.length("round").value(), Rounding.DOWN);
            Dim deep = Dim.smallerOf(rules.length("spline depth"), most);
            return Optional.of(deep)
                    .filter(each -> each.compareTo(rules.length("least spline depth")) >= 0)
                    .map(each -> new Key(
                            "spline",
                            each,
                            Optional.empty(),
                            rules.share("spline from inside").source()));
        }
        return rules.biscuits().stream()
                .filter(each -> Row.mm(each.slot()) <= slant.deepest(each.thickness(), behind)
                        && Biscuits.needs(bench, each).compareTo(at.shared().extent(run)) <= 0)
                .reduce((smaller, larger) -> larger)
                .map(each -> new Key("biscuit " + each.name(), each.slot(), Optional.of(each), each.source()));
    }

    private static List<Dim[]> places(Meeting at, Bench bench, Key key, Axis run) {
        Dim start = at.start(run);
        Dim whole = at.shared().extent(run);
        if (key.biscuit().isEmpty()) {
            return List.<Dim[]>of(new Dim[] {start, at.end(run)});
        }
        Dim length = key.biscuit().get().length();
        int count = Math.max(1, (int)
                Math.floor(Row.mm(whole) / (Row.mm(bench.rules().length("biscuit spacing")) / 2 + Row.mm(length))));
        return IntStream.range(0, count)
                .mapToObj(i -> {
                    Dim middle = start.plus(whole.share(2L * i + 1, 2L * count));
                    return new Dim[] {middle.minus(length.half()), middle.plus(length.half())};
                })
                .toList();
    }

    private static void slot(
            Meeting at, Bench bench, boolean receiving, String what, Dim[] along, Slant slant, Key key) {
        Axis run = at.entering().lie().length().third(at.receiving().lie().length());
        Box box = slant.slot(at, receiving, key.deep())
                .with(Side.of(run, false), along[0])
                .with(Side.of(run, true), along[1]);
        Map<String, Dim> sizes = new LinkedHashMap<>();
        sizes.put("from the inner arris along the mitre", slant.fromInside());
        sizes.put("depth stop", key.deep());
        boolean biscuit = key.biscuit().isPresent();
        Map<String, Double> angles = biscuit ? Map.of() : Map.of("blade tilt", slant.tilt(receiving));
        bench.cut(
                at,
                receiving,
                box,
                new Bench.Cut(
                                what,
                                biscuit ? Feature.Kind.SLOT : Feature.Kind.GROOVE,
                                Mitres.end(at, at.part(receiving)),
                                Optional.empty(),
                                new Setting(
                                        biscuit ? "biscuit joiner" : "table saw",
                                        key.biscuit()
                                                .map(b -> "depth " + b.name())
                                                .orElse("flat-topped blade "
                                                        + bench.say(
                                                                bench.rules().length("spline"))),
                                        sizes,
                                        angles,
                                        List.of("Square to the mitre, the fence on the mitred end.")))
                        .leaning(aim(at, bench, receiving, along, slant, key)));
    }

    /** From the mitre square into the part, the longer side along the corner. */
    private static Aim aim(Meeting at, Bench bench, boolean receiving, Dim[] along, Slant slant, Key key) {
        Axis run = at.entering().lie().length().third(at.receiving().lie().length());
        Dim thick = key.biscuit()
                .map(JointRules.Biscuit::thickness)
                .orElseGet(() -> bench.rules().length("spline"));
        return new Frame(at.part(receiving))
                .aim(
                        slant.mouth(at, run, Row.mm(along[0].plus(along[1]).half())),
                        slant.way(at, receiving),
                        Leaning.unit(run, 1),
                        key.deep(),
                        along[1].minus(along[0]),
                        thick);
    }

    private void tooThin(Meeting at, Bench bench, Slant slant, Axis run) {
        JointRules rules = bench.rules();
        JointRules.Biscuit smallest = rules.biscuits().get(0);
        Dim deep = spline ? rules.length("least spline depth") : smallest.slot();
        Dim thick = spline ? rules.length("spline") : smallest.thickness();
        Dim needs = Slant.leastStock(
                thick, deep, rules.length("least behind a hole"), rules.share("spline from inside"), rules);
        String high = spline ? "" : " and %s of height".formatted(bench.sayUnit(Biscuits.needs(bench, smallest)));
        bench.find(
                Finding.Severity.STOP,
                at,
                "%s are too thin or too low for a %s: they meet %s by %s thick and %s high, and the smallest needs stock of %s%s."
                        .formatted(
                                Bench.both(at),
                                at.joint().kind().words(),
                                bench.say(slant.first()),
                                bench.say(slant.second()),
                                bench.sayUnit(at.shared().extent(run)),
                                bench.sayUnit(needs),
                                high),
                "common practice",
                spline
                        ? "Make both %s thick, or glue blocks inside the corner.".formatted(bench.sayUnit(needs))
                        : "Use a mitre with spline, or make both %s thick.".formatted(bench.sayUnit(needs)),
                slant.first(),
                slant.second(),
                needs);
    }
}
