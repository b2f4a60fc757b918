package scantling.joinery;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Finding;
import scantling.feature.Aim;
import scantling.feature.Feature;
import scantling.feature.Setting;
import scantling.feature.Surface;
import scantling.feature.WoodScrew;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Making;
import scantling.piece.Material;
import scantling.space.Box;
import scantling.space.Point;
import scantling.space.Side;

/**
 * Screws at a slant out of pockets in the back of the entering part; the screw comes out in the middle of its thickness
 * and, in hardwood, finds a pilot hole there.
 */
final class Pockets implements JointMaker {
    /** What is driven. @param deep how far square into the other part @param aside how far the point wanders toward the face */
    private record Driven(JointRules.Pocket pocket, WoodScrew screw, Dim deep, Dim aside) {}

    @Override
    public void make(Meeting at, Bench bench) {
        JointRules rules = bench.rules();
        List<Driven> suit = rules.pockets().stream()
                .filter(each -> each.thickness().compareTo(at.thinSize().plus(rules.length("near enough"))) <= 0)
                .map(each -> driven(each, rules))
                .toList();
        if (suit.isEmpty() || at.thin() != at.entering().lie().thickness()) {
            tooThin(at, bench);
            return;
        }
        Optional<Driven> driven = suit.stream()
                .filter(each ->
                        each.deep().plus(rules.length("least behind a hole")).compareTo(at.room(true)) <= 0)
                .max(Comparator.comparing(each -> each.pocket().thickness()));
        if (driven.isEmpty()) {
            comesOut(at, bench, suit.get(0));
            return;
        }
        place(at, bench, driven.get());
    }

    private static Driven driven(JointRules.Pocket pocket, JointRules rules) {
        Dim bite = rules.share("pocket bite").of(pocket.screw());
        double slant = slant(rules);
        return new Driven(
                pocket, rules.screw(pocket.gauge()), seen(bite, Math.cos(slant)), seen(bite, Math.sin(slant)));
    }

    private static Dim seen(Dim bite, double effect) {
        return Dim.worked(
                Length.ofMillimetres(Math.round(Row.mm(bite) * effect * 10) / 10.0),
                "what bites, seen along the slant of the pocket",
                new Making.Input(effect, bite));
    }

    private static double slant(JointRules rules) {
        JointRules.Share degrees = rules.share("pocket slant");
        return Math.toRadians((double) degrees.numerator() / degrees.denominator());
    }

    private static void place(Meeting at, Bench bench, Driven driven) {
        JointRules rules = bench.rules();
        Dim bit = rules.length("pocket bit");
        Side back = at.entering().lie().faceSide().opposite();
        Dim reach = reach(at, bit, slant(rules));
        Box whole = pocket(at, back, at.start(at.run()), at.end(at.run()), reach);
        Row row = Row.clearOf(
                at,
                bench,
                whole,
                way(at, driven, back, at.start(at.run()), at.end(at.run())),
                rules.length("clear of another"));
        double length = Row.mm(at.runSize());
        double end = Math.min(length / 2, Math.max(Row.mm(rules.length("screw narrow")), length / 5));
        int count = length < 2 * Row.mm(bit) * 1.5
                ? 1
                : 1 + Math.max(1, (int) Math.ceil((length - 2 * end) / Row.mm(rules.length("pocket spacing")) - 1e-9));
        List<Dim> places = row.spread(count, Row.mm(bit), end, end);
        for (int i = 0; i < places.size(); i++) {
            Dim middle = at.start(at.run()).plus(places.get(i));
            cut(
                    at,
                    bench,
                    i + 1,
                    pocket(at, back, middle.minus(bit.half()), middle.plus(bit.half()), reach),
                    back,
                    bit);
            if (needsPilot(at)) {
                pilot(at, bench, i + 1, middle, driven);
            }
        }
        explain(at, bench, driven, places.size());
    }

    /** Hardwood splits or breaks the screw; softwood and sheets take its own point. */
    private static boolean needsPilot(Meeting at) {
        Material into = at.receiving().material();
        return into.kind() == Material.Kind.SOLID && !WoodScrew.isSoft(into);
    }

    /** How far from the end the pocket opens: half of the thickness and of the bit, seen along the slant. */
    private static Dim reach(Meeting at, Dim bit, double slant) {
        double slope = Math.tan(slant);
        double along = Row.mm(at.thinSize()) / 2 / slope + Row.mm(bit) / 2 / Math.sin(slant);
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

    /** The wood of the other part that the slanting screw goes through: from the middle of the thickness toward the face. */
    private static Box way(Meeting at, Driven driven, Side back, Dim from, Dim to) {
        Dim half = driven.screw().shank().half();
        Dim near = back.isFar() ? at.middle().plus(half) : at.middle().minus(half);
        Dim far = back.isFar()
                ? at.middle().minus(half).minus(driven.aside())
                : at.middle().plus(half).plus(driven.aside());
        Box across = at.across(from, to, at.start(at.thin()), at.end(at.thin()))
                .with(back, near)
                .with(back.opposite(), far);
        return at.pocket(across, driven.deep(), true);
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

    /** Told where it enters the wood and how deep it goes square to the surface; it is drilled through the pocket. */
    private static void pilot(Meeting at, Bench bench, int number, Dim middle, Driven driven) {
        Dim across = driven.screw().hard();
        Dim half = across.half();
        Box round = at.across(
                middle.minus(half),
                middle.plus(half),
                at.middle().minus(half),
                at.middle().plus(half));
        Map<String, Dim> sizes = new LinkedHashMap<>();
        sizes.put(
                "past the pocket",
                bench.rules().share("pocket bite").of(driven.pocket().screw()));
        Side back = at.entering().lie().faceSide().opposite();
        bench.cut(
                at,
                true,
                at.pocket(round, driven.deep(), true),
                way(at, driven, back, middle.minus(half), middle.plus(half)),
                new Bench.Cut(
                                "pilot " + number,
                                Feature.Kind.HOLE,
                                at.surface(true),
                                Optional.of(half),
                                new Setting(
                                        "drill",
                                        "long twist bit " + bench.say(across),
                                        sizes,
                                        Map.of("off square", Math.toDegrees(slant(bench.rules()))),
                                        List.of(
                                                "Through the pocket, with the joint clamped: the point wanders %s toward the face."
                                                        .formatted(bench.sayUnit(driven.aside())))))
                        .leaning(aim(at, bench, middle, driven)));
    }

    /** From where the slant comes out of the end, in the middle of its thickness, on toward the face. */
    private static Aim aim(Meeting at, Bench bench, Dim middle, Driven driven) {
        double slant = slant(bench.rules());
        Side back = at.entering().lie().faceSide().opposite();
        Dim across = driven.screw().hard();
        Point mouth = new Point(0, 0, 0)
                .with(at.side().axis(), Row.mm(at.plane()))
                .with(at.run(), Row.mm(middle))
                .with(at.thin(), Row.mm(at.middle()));
        Point way = new Point(0, 0, 0)
                .with(at.side().axis(), at.side().isFar() ? Math.cos(slant) : -Math.cos(slant))
                .with(back.axis(), back.isFar() ? -Math.sin(slant) : Math.sin(slant));
        return new Frame(at.receiving())
                .aim(
                        mouth,
                        way,
                        Leaning.unit(at.run(), 1),
                        bench.rules().share("pocket bite").of(driven.pocket().screw()),
                        across,
                        across);
    }

    private static void explain(Meeting at, Bench bench, Driven driven, int count) {
        bench.hold(
                at,
                "pocket screw",
                "no. %d x %s"
                        .formatted(
                                driven.pocket().gauge(),
                                bench.sayUnit(driven.pocket().screw())),
                count);
        bench.choose(
                at,
                driven.pocket().source(),
                "%d pocket screws no. %d x %s for stock of %s, from the back of %s, about %s deep in %s; %s.%s"
                        .formatted(
                                count,
                                driven.pocket().gauge(),
                                bench.say(driven.pocket().screw()),
                                bench.say(at.thinSize()),
                                at.entering().path(),
                                bench.say(driven.deep()),
                                at.receiving().path(),
                                needsPilot(at)
                                        ? "that is hardwood and gets pilot holes of "
                                                + bench.sayUnit(driven.screw().hard())
                                        : "the screw cuts its own way there",
                                Strengths.UNKNOWN),
                driven.pocket().screw(),
                at.thinSize());
    }

    private static void comesOut(Meeting at, Bench bench, Driven shortest) {
        Dim needs = shortest.deep().plus(bench.rules().length("least behind a hole"));
        bench.find(
                Finding.Severity.STOP,
                at,
                "Pocket screws from %s would come out of %s: it is %s there, and the shortest, %s, wants %s."
                        .formatted(
                                at.entering().path(),
                                at.receiving().path(),
                                bench.sayUnit(at.room(true)),
                                bench.sayUnit(shortest.pocket().screw()),
                                bench.sayUnit(needs)),
                bench.rules().share("pocket bite").source(),
                "Use dowels, or make %s at least %s thick there."
                        .formatted(at.receiving().path(), bench.sayUnit(needs)),
                at.room(true),
                needs);
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
