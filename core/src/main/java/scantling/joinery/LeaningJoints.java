package scantling.joinery;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Finding;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.feature.Aim;
import scantling.feature.Feature;
import scantling.feature.Setting;
import scantling.feature.Surface;
import scantling.measure.Dim;
import scantling.space.Point;
import scantling.space.Side;

/**
 * Joints of a straight part with one that leans: tenons along the straight part in slanting mortises, loose tenons and
 * dowels square to the leaning face, and the slanting shoulder all round.
 */
final class LeaningJoints {
    private final Bench bench;

    LeaningJoints(Bench bench) {
        this.bench = bench;
    }

    /** Whether features are worked out for a kind where one part leans. */
    static boolean suits(Joint.Kind kind) {
        return kind == Joint.Kind.MORTISE_AND_TENON || kind == Joint.Kind.LOOSE_TENON || kind == Joint.Kind.DOWEL;
    }

    /** Whether a kind takes nothing from either part. */
    private static boolean isPlain(Joint.Kind kind) {
        return kind == Joint.Kind.GLUED || kind == Joint.Kind.CARRIED || kind == Joint.Kind.AUTO;
    }

    void make(Joint joint, Part entering, Part receiving) {
        Optional<Leaning> found = Leaning.find(joint, entering, receiving);
        if (found.isEmpty() || !suits(joint.kind())) {
            if (!isPlain(joint.kind())) {
                unsuited(joint, found.isPresent());
            }
            return;
        }
        switch (joint.kind()) {
            case MORTISE_AND_TENON -> tenon(found.get());
            case LOOSE_TENON -> new LeaningPins(bench, found.get()).looseTenon();
            default -> new LeaningPins(bench, found.get()).dowels();
        }
    }

    private void unsuited(Joint joint, boolean met) {
        bench.find(new Finding(
                Finding.Severity.NOTE,
                joint.path(),
                "%s meets %s, and one of them leans: for %s no places are worked out there."
                        .formatted(
                                joint.entering(),
                                joint.receiving(),
                                joint.kind().words()),
                List.of(),
                "worked out from the parts",
                met
                        ? "Say joint: mortise and tenon, loose tenon or dowel, which are; or mark one from the other."
                        : "Mark one from the other with the parts put together dry."));
    }

    private void tenon(Leaning at) {
        Meeting meeting = at.at();
        JointRules rules = bench.rules();
        Dim third = rules.share("tenon thickness").of(meeting.thinSize());
        Optional<Dim> bit =
                Bits.nearest(bench, third, rules.share("thickest tenon").of(meeting.thinSize()));
        Dim from = Tenoning.shoulder(meeting, bench, false);
        Dim wide = meeting.runSize().minus(from).minus(Tenoning.shoulder(meeting, bench, true));
        if (bit.isEmpty() || !meeting.depth().value().isPositive() || wide.compareTo(bit.get()) < 0) {
            Tenons.tooThin(meeting, bench, "mortise and tenon");
            return;
        }
        Dim thick = bit.get();
        mortise(at, from.plus(wide.half()), wide, thick);
        standing(at, from, wide, thick, from.plus(wide.half()));
        shoulder(at);
        explain(at, third, thick, wide);
    }

    private void mortise(Leaning at, Dim middle, Dim wide, Dim thick) {
        Dim deep = Tenons.deep(at.at(), bench);
        Point mouth = at.met(at.wide(middle), at.middle());
        Aim aim =
                new Frame(at.at().receiving()).aim(mouth, at.forward(), Leaning.unit(at.width(), 1), deep, wide, thick);
        List<String> notes = new ArrayList<>(List.of(Fences.passes(bench, deep)));
        notes.add(covers(at));
        bench.aimed(
                at.at(),
                true,
                aim,
                new Bench.Cut(
                        "tenon",
                        Feature.Kind.MORTISE,
                        at.surface(),
                        Optional.of(thick.half()),
                        setting("router or mortiser", "straight bit " + bench.say(thick), aim, at.surface(), notes)));
    }

    /** Where the straight part's shoulder lies on the leaning one, for both edges in the middle of its thickness. */
    private String covers(Leaning at) {
        Frame frame = new Frame(at.at().receiving());
        double one = frame.marks(at.met(at.start(), at.middle())).along();
        double other =
                frame.marks(at.met(at.wide(at.at().runSize()), at.middle())).along();
        return "The shoulder of %s lies from %s to %s along it."
                .formatted(
                        at.at().entering().path(),
                        bench.say(Leaning.worked(Math.min(one, other), "where the shoulder begins")),
                        bench.sayUnit(Leaning.worked(Math.max(one, other), "where the shoulder ends")));
    }

    /** How the tool is held: its depth, and wedges under the part for what it leans. */
    static Setting setting(String machine, String tool, Aim aim, Surface surface, List<String> notes) {
        Map<String, Dim> sizes = new LinkedHashMap<>();
        sizes.put("depth stop along the tool", aim.depth());
        Map<String, Double> angles = new LinkedHashMap<>();
        double[] leans = aim.leans(surface);
        String[] first =
                isEnd(surface) ? new String[] {"face edge", "back edge"} : new String[] {"near end", "far end"};
        String[] second = surface == Surface.FACE_SIDE || surface == Surface.BACK_SIDE
                ? new String[] {"face edge", "back edge"}
                : new String[] {"face side", "back side"};
        add(angles, "leaning to the " + (leans[0] < 0 ? first[0] : first[1]), leans[0]);
        add(angles, "leaning to the " + (leans[1] < 0 ? second[0] : second[1]), leans[1]);
        if (!aim.length().equals(aim.width())) {
            double turned = aim.turned(surface);
            add(angles, "turned to the " + (turned < 0 ? second[0] : second[1]), turned);
        }
        List<String> all = new ArrayList<>(notes);
        if (!angles.isEmpty()) {
            all.add(
                    "Wedges of these angles under the part, or the table tilted, hold it so; the mouth is turned at its %s."
                            .formatted(first[1]));
        }
        return new Setting(machine, tool, sizes, angles, all);
    }

    private static boolean isEnd(Surface surface) {
        return surface == Surface.NEAR_END || surface == Surface.FAR_END;
    }

    private static void add(Map<String, Double> angles, String name, double degrees) {
        if (Math.abs(degrees) >= SawnEnds.NOTHING) {
            angles.put(name, Math.abs(degrees));
        }
    }

    private void standing(Leaning at, Dim from, Dim wide, Dim thick, Dim middle) {
        Meeting meeting = at.at();
        Dim start = meeting.entering().box().plane(Side.of(at.width(), false));
        Dim low = meeting.middle().minus(thick.half());
        Map<String, Dim> sizes = new LinkedHashMap<>();
        sizes.put("shoulder back", meeting.depth());
        sizes.put("cheek depth", meeting.thinSize().minus(thick).half());
        bench.cut(
                meeting,
                false,
                meeting.shared()
                        .with(Side.of(at.width(), false), start.plus(from))
                        .with(Side.of(at.width(), true), start.plus(from).plus(wide))
                        .with(Side.of(meeting.thin(), false), low)
                        .with(Side.of(meeting.thin(), true), low.plus(thick)),
                new Bench.Cut(
                                "tenon",
                                Feature.Kind.TENON,
                                at.endSurface(),
                                Optional.empty(),
                                new Setting(
                                        "table saw",
                                        "tenon jig or dado head",
                                        sizes,
                                        at.angles(),
                                        List.of("Its cheeks run along the part; its end and its shoulders slant"
                                                + " alike.")))
                        .leaning(new Frame(meeting.entering())
                                .aim(
                                        at.met(at.wide(middle), at.middle()),
                                        at.forward(),
                                        Leaning.unit(at.width(), 1),
                                        meeting.depth(),
                                        wide,
                                        thick)));
    }

    /** The line of the shoulder round all four sides, by its four corners. */
    private void shoulder(Leaning at) {
        List<Dim> corners =
                List.of(at.corner(false, false), at.corner(false, true), at.corner(true, true), at.corner(true, false));
        bench.shoulder(
                at.at(),
                corners,
                new Bench.Cut(
                        "shoulder",
                        Feature.Kind.SHOULDER,
                        at.endSurface(),
                        Optional.empty(),
                        new Setting("table saw", "crosscut blade", Map.of(), at.angles(), List.of(line(at, corners)))));
    }

    private String line(Leaning at, List<Dim> corners) {
        return "Shoulder of %s, knifed round it from the near end: %s at face edge and face side, %s at face edge and back side, %s at back edge and back side, %s at back edge and face side; sawn to the cheeks."
                .formatted(
                        at.at().entering().path(),
                        bench.say(corners.get(0)),
                        bench.say(corners.get(1)),
                        bench.say(corners.get(2)),
                        bench.sayUnit(corners.get(3)));
    }

    private void explain(Leaning at, Dim third, Dim thick, Dim wide) {
        Meeting meeting = at.at();
        bench.choose(
                meeting,
                bench.rules().share("tenon thickness").source(),
                "tenon %s x %s x %s long, along %s: a third of %s is %s, the nearest bit is %s; its shoulders are sawn %s, and its mortise leans as much in %s.%s"
                        .formatted(
                                bench.say(thick),
                                bench.say(wide),
                                bench.say(meeting.depth()),
                                meeting.entering().path(),
                                bench.say(meeting.thinSize()),
                                bench.say(third),
                                bench.sayUnit(thick),
                                said(at.angles()),
                                meeting.receiving().path(),
                                Strengths.tenon(meeting, thick, wide, meeting.depth())),
                thick,
                wide,
                meeting.depth());
    }

    /** {@code with mitre gauge 8.1° and with blade tilt 0.8°}. */
    static String said(Map<String, Double> angles) {
        return angles.isEmpty()
                ? "square"
                : String.join(
                        " and ",
                        angles.entrySet().stream()
                                .map(each -> "with %s %s".formatted(each.getKey(), Setting.degrees(each.getValue())))
                                .toList());
    }
}
