package scantling.joinery;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.feature.Aim;
import scantling.feature.Feature;
import scantling.feature.Features;
import scantling.feature.Fixing;
import scantling.feature.Range;
import scantling.feature.Setting;
import scantling.feature.Surface;
import scantling.feature.Taper;
import scantling.measure.Dim;
import scantling.measure.Ledger;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Extent;
import scantling.space.Lie;
import scantling.space.Side;

/** What joinery has made so far. Lives for one derivation, used by one thread. */
final class Bench {
    private final JointRules rules;
    private final LengthFormat format;
    private final List<Feature> features = new ArrayList<>();
    private final List<Features.Choice> choices = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final List<Fixing> fixings = new ArrayList<>();
    private final Map<Length, String> said = new HashMap<>();
    private final Map<Length, String> saidWithUnit = new HashMap<>();
    private final Map<String, List<Taken>> taken = new HashMap<>();

    /** Wood of a part that some feature has already. @param joint path of the joint that took it */
    record Taken(String joint, Feature feature, Extent extent) {}

    private final Swing swing;

    Bench(Assembly assembly, JointRules rules, Swing swing) {
        this.swing = swing;
        format = LengthFormat.of(assembly.piece().unit());
        this.rules = rules.in(LengthFormat.of(assembly.piece().written()).inches());
    }

    /** The rules in the unit of the piece. */
    JointRules rules() {
        return rules;
    }

    /** Between what moistures its wood lives. */
    Swing swing() {
        return swing;
    }

    /** A number as the maker reads it. */
    String say(Dim dim) {
        return said.computeIfAbsent(dim.value(), format::format);
    }

    /** The same with its unit. */
    String sayUnit(Dim dim) {
        return saidWithUnit.computeIfAbsent(dim.value(), format::formatWithUnit);
    }

    /** Wood that is already taken from a part. */
    List<Taken> taken(Part part) {
        return taken.getOrDefault(part.path(), List.of());
    }

    Features finished() {
        return new Features(features, choices, findings, fixings);
    }

    /** Says why a joint is as it is. */
    void choose(Meeting at, String source, String sentence, Dim... numbers) {
        choices.add(new Features.Choice(at.joint().path(), sentence, List.of(numbers), source));
    }

    /** Says what holds a joint that nothing is cut for here. */
    void choose(Joint joint, String sentence, String source) {
        choices.add(new Features.Choice(joint.path(), sentence, List.of(), source));
    }

    /** Counts what is bought to hold a joint. */
    void hold(Meeting at, String what, String size, int count) {
        fixings.add(new Fixing(at.joint().path(), what, size, count));
    }

    /** Says what is wrong. */
    void find(Finding.Severity severity, Meeting at, String sentence, String source, String remedy, Dim... numbers) {
        findings.add(new Finding(severity, at.joint().path(), sentence, List.of(numbers), source, remedy));
    }

    /** Takes a finding as it is. */
    void find(Finding finding) {
        findings.add(finding);
    }

    /** One thing to cut. @param what what it is called in the joint: dowel 2 @param radius none where corners are square @param taper none where sides are straight @param aim none where the tool goes in square */
    record Cut(
            String what,
            Feature.Kind kind,
            Surface surface,
            Optional<Dim> radius,
            Optional<Taper> taper,
            Optional<Aim> aim,
            Setting setting) {
        Cut(
                String what,
                Feature.Kind kind,
                Surface surface,
                Optional<Dim> radius,
                Optional<Taper> taper,
                Setting setting) {
            this(what, kind, surface, radius, taper, Optional.empty(), setting);
        }

        /** The same by a tool that leans. */
        Cut leaning(Aim how) {
            return new Cut(what, kind, surface, radius, taper, Optional.of(how), setting);
        }

        Cut(String what, Feature.Kind kind, Surface surface, Optional<Dim> radius, Setting setting) {
            this(what, kind, surface, radius, Optional.empty(), Optional.empty(), setting);
        }
    }

    /** Cuts a box of space out of one of the two parts, or leaves it standing there. */
    void cut(Meeting at, boolean receiving, Box box, Cut cut) {
        cut(at, receiving, box, box, cut);
    }

    /** The same where what goes in takes up more wood than the cut tells. @param whole all of that wood */
    void cut(Meeting at, boolean receiving, Box box, Box whole, Cut cut) {
        Part part = at.part(receiving);
        Feature feature = new Feature(
                path(at, cut.what(), part),
                part.path(),
                at.joint().path(),
                cut.kind(),
                cut.surface(),
                range(box, part, part.lie().nearEnd()),
                range(box, part, part.lie().faceEdge()),
                range(box, part, part.lie().faceSide()),
                cut.radius(),
                cut.taper(),
                cut.aim(),
                cut.setting());
        features.add(feature);
        taken.computeIfAbsent(part.path(), path -> new ArrayList<>())
                .add(new Taken(at.joint().path(), feature, Extent.of(whole)));
    }

    /** Cuts what a tool makes that leans; its box is the one around that. */
    void aimed(Meeting at, boolean receiving, Aim aim, Cut cut) {
        Part part = at.part(receiving);
        Frame frame = new Frame(part);
        Feature feature = new Feature(
                path(at, cut.what(), part),
                part.path(),
                at.joint().path(),
                cut.kind(),
                cut.surface(),
                frame.around(aim, cut.surface(), Aim.Way::along, part.length()),
                frame.around(aim, cut.surface(), Aim.Way::across, part.width()),
                frame.around(aim, cut.surface(), Aim.Way::through, part.thickness()),
                cut.radius(),
                cut.taper(),
                Optional.of(aim),
                cut.setting());
        features.add(feature);
        taken.computeIfAbsent(part.path(), path -> new ArrayList<>())
                .add(new Taken(at.joint().path(), feature, Extent.of(feature.inSpace(part))));
    }

    /** A slanting line round the entering part, from its least distance to its greatest; it takes no wood by itself. */
    void shoulder(Meeting at, List<Dim> around, Cut cut) {
        Part part = at.entering();
        List<Dim> corners = around.stream().sorted().toList();
        features.add(new Feature(
                path(at, cut.what(), part),
                part.path(),
                at.joint().path(),
                cut.kind(),
                cut.surface(),
                new Range(corners.get(0), corners.get(corners.size() - 1)),
                new Range(Dim.ZERO, part.width()),
                new Range(Dim.ZERO, part.thickness()),
                cut.radius(),
                cut.setting()));
    }

    private static String path(Meeting at, String what, Part part) {
        String last = last(part.path());
        boolean same = last(at.entering().path()).equals(last(at.receiving().path()));
        return Ledger.path(at.joint().path(), what + " in " + (same ? part.path() : last));
    }

    private static String last(String path) {
        int cut = path.lastIndexOf(Ledger.SEPARATOR);
        return cut < 0 ? path : path.substring(cut + Ledger.SEPARATOR.length());
    }

    private static Range range(Box box, Part part, Side mark) {
        return new Range(
                Meeting.from(mark, part, box.plane(mark)), Meeting.from(mark, part, box.plane(mark.opposite())));
    }

    /** What a surface of a part is called. */
    static String words(Side side, Lie lie) {
        return Surface.of(side, lie).words();
    }

    /** Both parts of a joint, for sentences. */
    static String both(Meeting at) {
        return "%s and %s".formatted(at.entering().path(), at.receiving().path());
    }

    /** Whether some wood of a part outside a joint lies within a box, closer than a distance. */
    static boolean near(Extent one, Extent other, double distance) {
        return Arrays.stream(Axis.values()).allMatch(axis -> near(one, other, axis, distance));
    }

    private static boolean near(Extent one, Extent other, Axis axis, double distance) {
        return low(one, axis) < high(other, axis) + distance && low(other, axis) < high(one, axis) + distance;
    }

    static double low(Extent extent, Axis axis) {
        return switch (axis) {
            case ACROSS -> extent.left();
            case DEEP -> extent.front();
            case UP -> extent.bottom();
        };
    }

    static double high(Extent extent, Axis axis) {
        return switch (axis) {
            case ACROSS -> extent.right();
            case DEEP -> extent.back();
            case UP -> extent.top();
        };
    }
}
