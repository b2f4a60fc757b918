package scantling.joinery;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Setting;
import scantling.feature.Surface;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/** Joints of two parts that both reach through the corner: half of each taken away, or a fork and its tongue. */
final class Laps implements JointMaker {
    private final boolean bridle;

    /** @param bridle a fork and its tongue in place of two halves */
    Laps(boolean bridle) {
        this.bridle = bridle;
    }

    @Override
    public void make(Meeting at, Bench bench) {
        Axis thick = at.entering().lie().thickness();
        if (at.shared().isEmpty() || thick != at.receiving().lie().thickness()) {
            notFlat(at, bench);
            return;
        }
        if (bridle) {
            bridle(at, bench, thick);
        } else {
            halves(at, bench, thick);
        }
    }

    private static void halves(Meeting at, Bench bench, Axis thick) {
        Side face = at.receiving().lie().faceSide();
        Dim middle = at.shared()
                .plane(Side.of(thick, false))
                .plus(at.shared().extent(thick).half());
        for (boolean receiving : new boolean[] {false, true}) {
            Part part = at.part(receiving);
            Side open = receiving ? face.opposite() : face;
            Box box = at.shared().with(open, part.box().plane(open)).with(open.opposite(), middle);
            Dim deep = box.extent(thick);
            bench.cut(
                    at,
                    receiving,
                    box,
                    new Bench.Cut(
                            "half-lap",
                            Feature.Kind.NOTCH,
                            Surface.of(open, part.lie()),
                            Optional.empty(),
                            sawn(
                                    deep,
                                    box.extent(part.lie().length()),
                                    "Cut to the line, then test on scrap: both faces come out flush.")));
        }
        Dim half = at.shared().extent(thick).half();
        bench.choose(
                at,
                "common practice",
                "half-lap: %s of the %s of each taken away over %s by %s.%s"
                        .formatted(
                                bench.say(half),
                                bench.say(at.shared().extent(thick)),
                                bench.say(at.depth()),
                                bench.sayUnit(at.runSize()),
                                Strengths.UNKNOWN),
                half);
    }

    private static void bridle(Meeting at, Bench bench, Axis thick) {
        Dim whole = at.shared().extent(thick);
        Dim third = bench.rules().share("tenon thickness").of(whole);
        Dim low =
                at.shared().plane(Side.of(thick, false)).plus(whole.minus(third).half());
        Box middle = at.shared().with(Side.of(thick, false), low).with(Side.of(thick, true), low.plus(third));
        boolean corner = endsThere(at, at.receiving());
        for (boolean receiving : new boolean[] {false, true}) {
            boolean stands = receiving != corner;
            bench.cut(
                    at,
                    receiving,
                    middle,
                    new Bench.Cut(
                            "bridle",
                            stands ? Feature.Kind.TENON : Feature.Kind.MORTISE,
                            end(at, receiving, stands),
                            Optional.empty(),
                            sawn(
                                    whole.minus(third).half(),
                                    middle.extent(at.part(receiving).lie().length()),
                                    stands ? "Both cheeks away." : "Open: saw both walls, chop out the middle.")));
        }
        bench.choose(
                at,
                bench.rules().share("tenon thickness").source(),
                "bridle: the tongue is a third of %s, %s, through the whole %s.%s"
                        .formatted(bench.say(whole), bench.say(third), bench.sayUnit(at.depth()), Strengths.UNKNOWN),
                third,
                whole);
    }

    private static boolean endsThere(Meeting at, Part part) {
        Axis length = part.lie().length();
        return part.box().plane(Side.of(length, false)).equals(at.shared().plane(Side.of(length, false)))
                || part.box().plane(Side.of(length, true)).equals(at.shared().plane(Side.of(length, true)));
    }

    private static Surface end(Meeting at, boolean receiving, boolean stands) {
        return receiving && stands ? at.surface(true) : Mitres.end(at, at.part(receiving));
    }

    private static Setting sawn(Dim deep, Dim wide, String note) {
        Map<String, Dim> sizes = new LinkedHashMap<>();
        sizes.put("blade height", deep);
        sizes.put("width along the part", wide);
        return new Setting("table saw", "dado head", sizes, List.of(note));
    }

    private static void notFlat(Meeting at, Bench bench) {
        bench.find(
                Finding.Severity.STOP,
                at,
                "%s do not cross flat, so a %s cannot be cut there."
                        .formatted(Bench.both(at), at.joint().kind().words()),
                "the planes of the parts",
                "Lay both with their faces the same way, or use a loose tenon.",
                at.thinSize());
    }
}
