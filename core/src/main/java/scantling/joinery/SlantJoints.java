package scantling.joinery;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Finding;
import scantling.feature.Feature;
import scantling.feature.Setting;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Making;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/**
 * A mitre with biscuits or a spline across it, a third from the inside, square to the mitre. The slot slants, so its
 * feature is the box about it: in either part from the mitre outward and along.
 */
final class SlantJoints implements JointMaker {
    private static final double ROOT_HALF = Math.sqrt(0.5);
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
        Dim thick = at.shared().extent(a);
        Dim inward = bench.rules().share("spline from inside").of(thick);
        Axis run = a.third(b);
        Optional<Key> key = key(at, bench, thick, inward, run);
        if (key.isEmpty()) {
            tooThin(at, bench, thick);
            return;
        }
        List<Dim[]> places = places(at, bench, key.get(), run);
        for (int i = 0; i < places.size(); i++) {
            String what = key.get().name() + (places.size() == 1 ? "" : " " + (i + 1));
            for (boolean receiving : new boolean[] {false, true}) {
                slot(at, bench, receiving, what, places.get(i), inward, key.get());
            }
        }
        MITRE.make(at, bench);
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
                inward);
    }

    private Optional<Key> key(Meeting at, Bench bench, Dim thick, Dim inward, Axis run) {
        JointRules rules = bench.rules();
        double most = (Row.mm(thick) - Row.mm(inward)) / ROOT_HALF - Row.mm(rules.length("least behind a hole"));
        if (spline) {
            Dim deep = rules.length("spline depth");
            return Row.mm(deep) <= most
                    ? Optional.of(new Key(
                            "spline",
                            deep,
                            Optional.empty(),
                            rules.share("spline from inside").source()))
                    : Optional.empty();
        }
        return rules.biscuits().stream()
                .filter(each -> Row.mm(each.slot()) <= most
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
        return java.util.stream.IntStream.range(0, count)
                .mapToObj(i -> {
                    Dim middle = start.plus(whole.share(2L * i + 1, 2L * count));
                    return new Dim[] {middle.minus(length.half()), middle.plus(length.half())};
                })
                .toList();
    }

    private static void slot(
            Meeting at, Bench bench, boolean receiving, String what, Dim[] along, Dim inward, Key key) {
        Axis mine = at.part(receiving).lie().length();
        Axis its = at.part(!receiving).lie().length();
        Dim reach = Dim.worked(
                Length.ofMillimetres(Row.mm(key.deep()) * ROOT_HALF),
                "depth square to the mitre, seen along the part",
                new Making.Input(ROOT_HALF, key.deep()));
        Box box = at.shared()
                .with(Side.of(mine.third(its), false), along[0])
                .with(Side.of(mine.third(its), true), along[1]);
        box = toward(at, box, mine, inside(at, receiving), inward, reach);
        box = toward(
                at, box, its, inside(at, !receiving).opposite(), its == mine ? inward : rest(at, its, inward), reach);
        Map<String, Dim> sizes = new LinkedHashMap<>();
        sizes.put(
                "from the inner arris along the mitre",
                Dim.worked(
                        Length.ofMillimetres(Row.mm(inward) / ROOT_HALF),
                        "a third of the mitre",
                        new Making.Input(1 / ROOT_HALF, inward)));
        sizes.put("depth stop", key.deep());
        bench.cut(
                at,
                receiving,
                box,
                new Bench.Cut(
                        what,
                        key.biscuit().isPresent() ? Feature.Kind.SLOT : Feature.Kind.GROOVE,
                        Mitres.end(at, at.part(receiving)),
                        Optional.empty(),
                        new Setting(
                                key.biscuit().isPresent() ? "biscuit joiner" : "table saw",
                                key.biscuit().map(b -> "depth " + b.name()).orElse("blade at 45 degrees"),
                                sizes,
                                List.of("Square to the mitre, the fence on the mitred end."))));
    }

    /** The side of the corner, along a part, from which that part comes: its inside. */
    private static Side inside(Meeting at, boolean receiving) {
        Axis along = at.part(receiving).lie().length();
        boolean far = at.part(receiving)
                .box()
                .plane(Side.of(along, true))
                .equals(at.shared().plane(Side.of(along, true)));
        return Side.of(along, !far);
    }

    private static Dim rest(Meeting at, Axis axis, Dim inward) {
        return at.shared().extent(axis).minus(inward);
    }

    /** A stretch that starts some way in from a side of the corner and goes toward that side. */
    private static Box toward(Meeting at, Box box, Axis axis, Side side, Dim from, Dim reach) {
        Dim plane = at.shared().plane(side);
        Dim start = side.isFar() ? plane.minus(from) : plane.plus(from);
        Dim end = side.isFar() ? start.plus(reach) : start.minus(reach);
        return box.with(side.opposite(), start).with(side, end);
    }

    private static void tooThin(Meeting at, Bench bench, Dim thick) {
        bench.find(
                Finding.Severity.STOP,
                at,
                "%s are too thin or too low for a %s: %s thick."
                        .formatted(Bench.both(at), at.joint().kind().words(), bench.sayUnit(thick)),
                "common practice",
                "Use thicker stock, or glue blocks inside the corner.",
                thick);
    }
}
