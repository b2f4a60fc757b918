package scantling.joinery;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import scantling.construct.Assembly;
import scantling.construct.Fitting;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Features;
import scantling.feature.Fixing;

/** Turns the joints of an assembly into features on both parts of each. */
public final class Joinery {
    private Joinery() {}

    /**
     * Every feature that the joints ask for, in the order of the joints, why each is as it is, and what will not hold. What
     * hardware fastens is left to hardware; what is carried loose has no features.
     */
    public static Features of(Assembly assembly, JointRules rules) {
        return of(assembly, rules, Swing.usual());
    }

    /** The same for a home whose air is known. @param swing between what moistures the wood lives there */
    public static Features of(Assembly assembly, JointRules rules, Swing swing) {
        Bench bench = new Bench(assembly, rules, swing);
        Map<String, Part> parts = byPath(assembly);
        List<Meeting> meetings = new ArrayList<>();
        List<Joint> leaning = new ArrayList<>();
        for (Joint joint : assembly.joints()) {
            Optional<Fitting> by = fitted(joint, assembly.fittings());
            by.ifPresent(fitting -> bench.choose(
                    joint,
                    "held by %s; its holes stand under hardware.".formatted(fitting.what()),
                    "the fitting's own holes"));
            if (by.isEmpty() && leans(joint, parts)) {
                leaning.add(joint);
            } else if (by.isEmpty()) {
                decided(joint, parts, bench).ifPresentOrElse(meetings::add, () -> Apart.tell(joint, parts, bench));
            }
        }
        meetings.stream()
                .sorted(Comparator.comparing(at -> rank(at.joint().kind())))
                .forEach(at -> maker(at.joint().kind()).ifPresent(maker -> maker.make(at, bench)));
        LeaningJoints slanting = new LeaningJoints(bench);
        leaning.forEach(joint -> slanting.make(joint, part(parts, joint.entering()), part(parts, joint.receiving())));
        Weakness weakness = new Weakness(meetings, bench);
        meetings.forEach(weakness::tell);
        Crossings.tell(assembly.parts(), bench);
        Features sawn = new Features(SawnEnds.of(assembly.parts()), List.of(), List.of());
        return inOrder(bench.finished(), assembly.joints()).and(sawn);
    }

    /** The assembly with every joint that the maker left open decided. */
    public static Assembly settled(Assembly assembly, JointRules rules) {
        if (assembly.joints().stream().noneMatch(joint -> joint.kind() == Joint.Kind.AUTO)) {
            return assembly;
        }
        Bench bench = new Bench(assembly, rules, Swing.usual());
        Map<String, Part> parts = byPath(assembly);
        List<Joint> joints = assembly.joints().stream()
                .map(joint -> settled(joint, parts, bench))
                .toList();
        return new Assembly(
                assembly.piece(),
                assembly.parts(),
                joints,
                assembly.openings(),
                assembly.fittings(),
                assembly.names(),
                assembly.problems(),
                assembly.findings());
    }

    private static Map<String, Part> byPath(Assembly assembly) {
        Map<String, Part> parts = new HashMap<>();
        assembly.parts().forEach(part -> parts.put(part.path(), part));
        return parts;
    }

    /** Whether the boxes of both parts do not tell where they meet, since one of them leans. */
    private static boolean leans(Joint joint, Map<String, Part> parts) {
        return parts.containsKey(joint.entering())
                && parts.containsKey(joint.receiving())
                && Leaning.is(part(parts, joint.entering()), part(parts, joint.receiving()));
    }

    private static Part part(Map<String, Part> parts, String path) {
        return Objects.requireNonNull(parts.get(path), path);
    }

    private static Joint settled(Joint joint, Map<String, Part> parts, Bench bench) {
        if (joint.kind() == Joint.Kind.AUTO && leans(joint, parts)) {
            return of(joint, Joint.Kind.LOOSE_TENON);
        }
        return joint.kind() == Joint.Kind.AUTO
                ? meeting(joint, parts, bench)
                        .map(at -> of(joint, Choosing.pick(at, bench).kind()))
                        .orElse(joint)
                : joint;
    }

    private static Joint of(Joint joint, Joint.Kind kind) {
        return new Joint(joint.path(), kind, joint.entering(), joint.receiving(), joint.overlap(), joint.sizes());
    }

    private static Optional<Meeting> meeting(Joint joint, Map<String, Part> parts, Bench bench) {
        Part entering = parts.get(joint.entering());
        Part receiving = parts.get(joint.receiving());
        return entering == null || receiving == null
                ? Optional.empty()
                : Meeting.find(joint, entering, receiving, bench.rules().length("near enough"));
    }

    /** Where a joint is, with what was picked for it where the maker left that open. */
    private static Optional<Meeting> decided(Joint joint, Map<String, Part> parts, Bench bench) {
        Optional<Meeting> at = meeting(joint, parts, bench);
        if (joint.kind() != Joint.Kind.AUTO || at.isEmpty()) {
            return at;
        }
        Choosing.Pick pick = Choosing.pick(at.get(), bench);
        bench.choose(
                at.get(),
                "common practice",
                pick.why(),
                at.get().runSize(),
                at.get().thinSize());
        return meeting(of(joint, pick.kind()), parts, bench);
    }

    /** What hardware holds it, where that is so. */
    private static Optional<Fitting> fitted(Joint joint, List<Fitting> fittings) {
        return fittings.stream()
                .filter(fitting -> joint.kind() == Joint.Kind.SCREW)
                .filter(fitting ->
                        fitting.on().contains(joint.entering()) && fitting.on().contains(joint.receiving()))
                .findFirst();
    }

    /** What cannot be elsewhere is cut first; what can move keeps clear of it. */
    private static int rank(Joint.Kind kind) {
        return switch (kind) {
            case DADO, STOPPED_DADO, GROOVE, RABBET, TONGUE, MITRE, HALF_LAP, BRIDLE, BOX_JOINT, DOVETAIL, HALF_BLIND ->
                0;
            case MORTISE_AND_TENON, HAUNCHED -> 1;
            case DOWEL -> 2;
            case LOOSE_TENON -> 3;
            case BISCUIT, MITRE_BISCUIT, MITRE_SPLINE -> 4;
            case SCREW, POCKET_SCREW, GLUED, CARRIED, AUTO -> 5;
        };
    }

    private static Optional<JointMaker> maker(Joint.Kind kind) {
        return switch (kind) {
            case DADO, GROOVE -> Optional.of(new Channels(false));
            case STOPPED_DADO -> Optional.of(new Channels(true));
            case RABBET -> Optional.of(new Rabbets());
            case TONGUE -> Optional.of(new Tongues());
            case MITRE -> Optional.of(new Mitres());
            case MITRE_BISCUIT -> Optional.of(new SlantJoints(false));
            case MITRE_SPLINE -> Optional.of(new SlantJoints(true));
            case HALF_LAP -> Optional.of(new Laps(false));
            case BRIDLE -> Optional.of(new Laps(true));
            case BOX_JOINT -> Optional.of(new Fingers());
            case DOVETAIL -> Optional.of(new Dovetails(false));
            case HALF_BLIND -> Optional.of(new Dovetails(true));
            case MORTISE_AND_TENON -> Optional.of(new Tenons(false));
            case HAUNCHED -> Optional.of(new Tenons(true));
            case LOOSE_TENON -> Optional.of(new LooseTenons());
            case DOWEL -> Optional.of(new Dowels());
            case BISCUIT -> Optional.of(new Biscuits());
            case SCREW -> Optional.of(new Screws());
            case POCKET_SCREW -> Optional.of(new Pockets());
            case GLUED, CARRIED, AUTO -> Optional.empty();
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
                made.findings(),
                made.fixings().stream()
                        .sorted(Comparator.comparing(Fixing::owner, byJoint))
                        .toList());
    }
}
