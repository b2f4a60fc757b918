package scantling.joinery;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Assembly;
import scantling.construct.Fitting;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Features;

/** Turns the joints of an assembly into features on both parts of each. */
public final class Joinery {
    private Joinery() {}

    /**
     * Every feature that the joints ask for, in the order of the joints, why each is as it is, and what will not hold. What
     * hardware fastens is left to hardware; what is carried loose has no features.
     */
    public static Features of(Assembly assembly, JointRules rules) {
        Bench bench = new Bench(assembly, rules);
        Map<String, Part> parts = new HashMap<>();
        assembly.parts().forEach(part -> parts.put(part.path(), part));
        List<Meeting> meetings = new ArrayList<>();
        for (Joint joint : assembly.joints()) {
            if (!isFitted(joint, assembly.fittings())) {
                meeting(joint, parts, bench.rules()).ifPresent(meetings::add);
            }
        }
        meetings.stream()
                .sorted(Comparator.comparing(at -> rank(at.joint().kind())))
                .forEach(at -> maker(at.joint().kind()).ifPresent(maker -> maker.make(at, bench)));
        return inOrder(bench.finished(), assembly.joints());
    }

    private static Optional<Meeting> meeting(Joint joint, Map<String, Part> parts, JointRules rules) {
        Part entering = parts.get(joint.entering());
        Part receiving = parts.get(joint.receiving());
        return entering == null || receiving == null
                ? Optional.empty()
                : Meeting.find(joint, entering, receiving, rules.length("near enough"));
    }

    private static boolean isFitted(Joint joint, List<Fitting> fittings) {
        return joint.kind() == Joint.Kind.SCREW
                && fittings.stream()
                        .anyMatch(fitting -> fitting.on().contains(joint.entering())
                                && fitting.on().contains(joint.receiving()));
    }

    /** What cannot be elsewhere is cut first; what can move keeps clear of it. */
    private static int rank(Joint.Kind kind) {
        return switch (kind) {
            case DADO, GROOVE, RABBET, TONGUE, MITRE -> 0;
            case MORTISE_AND_TENON -> 1;
            case DOWEL -> 2;
            case LOOSE_TENON -> 3;
            case BISCUIT -> 4;
            case SCREW, GLUED, CARRIED -> 5;
        };
    }

    private static Optional<JointMaker> maker(Joint.Kind kind) {
        return switch (kind) {
            case DADO, GROOVE -> Optional.of(new Channels());
            case RABBET -> Optional.of(new Rabbets());
            case MITRE -> Optional.of(new Mitres());
            case MORTISE_AND_TENON -> Optional.of(new Tenons(false));
            case LOOSE_TENON -> Optional.of(new LooseTenons());
            case DOWEL -> Optional.of(new Dowels());
            case BISCUIT -> Optional.of(new Biscuits());
            case SCREW -> Optional.of(new Screws());
            case TONGUE, GLUED, CARRIED -> Optional.empty();
        };
    }

    private static Features inOrder(Features made, List<Joint> joints) {
        Map<String, Integer> order = new HashMap<>();
        joints.forEach(joint -> order.put(joint.path(), order.size()));
        Comparator<String> byJoint = Comparator.comparing(path -> order.getOrDefault(path, Integer.MAX_VALUE));
        return new Features(
                made.features().stream()
                        .sorted(Comparator.comparing(Feature::owner, byJoint))
                        .toList(),
                made.choices().stream()
                        .sorted(Comparator.comparing(Features.Choice::owner, byJoint))
                        .toList(),
                made.findings());
    }
}
