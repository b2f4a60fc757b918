package scantling.joinery;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Finding;
import scantling.feature.Feature;
import scantling.feature.Setting;
import scantling.feature.Surface;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Making;
import scantling.space.Box;
import scantling.space.Side;

/** Screws at a slant out of pockets in the back of the entering part; the screw comes out in the middle of its thickness. */
final class Pockets implements JointMaker {
    /** The usual slant of a pocket jig, from memory: 15 degrees. */
    private static final double SLANT = 15;

    @Override
    public void make(Meeting at, Bench bench) {
        JointRules rules = bench.rules();
        Optional<JointRules.Pocket> pocket = rules.pockets().stream()
                .filter(each -> each.thickness().compareTo(at.thinSize().plus(rules.length("near enough"))) <= 0)
                .max(Comparator.comparing(JointRules.Pocket::thickness));
        if (pocket.isEmpty() || at.thin() != at.entering().lie().thickness()) {
            tooThin(at, bench);
            return;
        }
        Dim bit = rules.length("pocket bit");
        Side back = at.entering().lie().faceSide().opposite();
        Dim reach = reach(at, bit);
        Box whole = pocket(at, back, at.start(at.run()), at.end(at.run()), reach);
        Row row = Row.clearOf(at, bench, whole, whole, rules.length("clear of another"));
        double length = Row.mm(at.runSize());
        double end = Math.min(length / 2, Math.max(Row.mm(rules.length("screw narrow")), length / 5));
        int count = length < 2 * Row.mm(bit) * 1.5
                ? 1
                : 1 + Math.max(1, (int) Math.ceil((length - 2 * end) / Row.mm(rules.length("pocket spacing")) - 1e-9));
        List<Dim> places = row.spread(count, Row.mm(bit), end, end);
        for (int i = 0; i < places.size(); i++) {
            Dim middle = at.start(at.run()).plus(places.get(i));
            Box box = pocket(at, back, middle.minus(bit.half()), middle.plus(bit.half()), reach);
            cut(at, bench, i + 1, box, back, bit);
        }
        bench.choose(
                at,
                pocket.get().source(),
                "%d pocket screws of %s for stock of %s, from the back of %s; the other part needs no hole.%s"
                        .formatted(
                                places.size(),
                                bench.say(pocket.get().screw()),
                                bench.say(at.thinSize()),
                                at.entering().path(),
                                Strengths.UNKNOWN),
                pocket.get().screw(),
                at.thinSize());
    }

    /** How far from the end the pocket opens: half of the thickness and of the bit, seen along the slant. */
    private static Dim reach(Meeting at, Dim bit) {
        double slope = Math.tan(Math.toRadians(SLANT));
        double along = Row.mm(at.thinSize()) / 2 / slope + Row.mm(bit) / 2 / Math.sin(Math.toRadians(SLANT));
        return Dim.worked(
                Length.ofMillimetres(Math.ceil(along)),
                "half of the thickness and of the bit, seen along the slant",
                new Making.Input(1 / (2 * slope), at.thinSize()));
    }

    private static Box pocket(Meeting at, Side back, Dim from, Dim to, Dim reach) {
        Box across = at.across(from, to, at.start(at.thin()), at.end(at.thin()))
                .with(back, at.entering().box().plane(back))
                .with(back.opposite(), at.middle());
        Dim room = at.room(false);
        return at.pocket(across, reach.compareTo(room) <= 0 ? reach : room, false);
    }

    private static void cut(Meeting at, Bench bench, int number, Box box, Side back, Dim bit) {
        Map<String, Dim> sizes = new LinkedHashMap<>();
        sizes.put("jig set to", at.thinSize());
        sizes.put("stop collar set to", at.thinSize());
        bench.cut(
                at,
                false,
                box,
                new Bench.Cut(
                        "pocket " + number,
                        Feature.Kind.RECESS,
                        Surface.of(back, at.entering().lie()),
                        Optional.of(bit.half()),
                        new Setting(
                                "drill with pocket jig",
                                "step drill " + bench.say(bit),
                                sizes,
                                List.of("Clamp the joint flush before driving the screw."))));
    }

    private static void tooThin(Meeting at, Bench bench) {
        Dim least = bench.rules().pockets().get(0).thickness();
        bench.find(
                Finding.Severity.STOP,
                at,
                "No pocket screw suits where %s meet: %s thick, and the thinnest stock is %s."
                        .formatted(Bench.both(at), bench.sayUnit(at.thinSize()), bench.sayUnit(least)),
                "common practice",
                "Use dowels, or make %s at least %s thick."
                        .formatted(at.entering().path(), bench.sayUnit(least)),
                at.thinSize(),
                least);
    }
}
