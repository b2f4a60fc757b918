package scantling.route;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import scantling.construct.Assembly;
import scantling.construct.Fitting;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Setting;
import scantling.measure.Dim;
import scantling.measure.LengthFormat;

/** Joints and holes, one machine setting after the other: what is set the same is cut in one go, so set-up is paid once. */
final class JointSteps {
    private final Draft draft;
    private final Assembly assembly;
    private final List<Feature> features;
    private final LengthFormat format;

    JointSteps(Draft draft, RouteInput input) {
        this.draft = draft;
        assembly = input.assembly();
        features = input.features().features();
        format = LengthFormat.of(assembly.piece().unit());
    }

    void write() {
        told();
        settings(false);
        settings(true);
        List<String> shaped = assembly.parts().stream()
                .filter(part -> part.outline().isPresent())
                .map(Part::path)
                .toList();
        draft.entry(Step.SHAPE, "outlines", shaped)
                .takes("shape", shaped.size())
                .add();
    }

    /** Joints that no feature tells more of: by their kind and sizes. */
    private void told() {
        Set<String> known = features.stream().map(Feature::owner).collect(Collectors.toSet());
        Map<String, List<Joint>> alike = new LinkedHashMap<>();
        for (Joint joint : assembly.joints()) {
            boolean cut = joint.kind() != Joint.Kind.CARRIED && !joint.kind().isScrewed();
            if (cut && !known.contains(joint.path())) {
                alike.computeIfAbsent(joint.kind().words() + sizes(joint.sizes()), k -> new ArrayList<>())
                        .add(joint);
            }
        }
        alike.forEach((name, joints) -> {
            List<String> parts = joints.stream()
                    .flatMap(joint -> List.of(joint.receiving(), joint.entering()).stream())
                    .toList();
            String sizes = sizes(joints.get(0).sizes()).strip();
            draft.entry(Step.JOINTS, name, parts)
                    .takes(joints.get(0).kind().words(), joints.size())
                    .set(sizes.isEmpty() ? List.of() : List.of(sizes))
                    .add();
        });
    }

    private String sizes(Map<String, Dim> sizes) {
        return new TreeMap<>(sizes)
                .entrySet().stream()
                        .map(size -> " %s %s"
                                .formatted(
                                        size.getKey(),
                                        format.format(size.getValue().value())))
                        .collect(Collectors.joining());
    }

    /** @param drilled whether holes for fittings are meant, or what joints ask for */
    private void settings(boolean drilled) {
        Set<String> fittings = assembly.fittings().stream().map(Fitting::path).collect(Collectors.toSet());
        Map<Setting, List<Feature>> alike = new LinkedHashMap<>();
        for (Feature feature : features) {
            boolean late = LateJoint.is(feature.setting());
            if (!late && fittings.contains(feature.owner()) == drilled) {
                alike.computeIfAbsent(feature.setting(), k -> new ArrayList<>()).add(feature);
            }
        }
        alike.forEach((setting, cut) -> {
            boolean holes = cut.stream().allMatch(feature -> feature.kind() == Feature.Kind.HOLE);
            draft.entry(
                            holes ? Step.DRILL : Step.JOINTS,
                            name(setting),
                            cut.stream().map(Feature::part).toList())
                    .takes(holes ? "drill" : "one setting", cut.size())
                    .set(words(setting, format))
                    .add();
        });
    }

    static String name(Setting setting) {
        return setting.tool().isEmpty() ? setting.machine() : setting.machine() + ", " + setting.tool();
    }

    static List<String> words(Setting setting, LengthFormat format) {
        List<String> words = new ArrayList<>();
        setting.sizes()
                .forEach((name, size) -> words.add("%s %s".formatted(name, format.formatWithUnit(size.value()))));
        setting.angles().forEach((name, angle) -> words.add("%s %s".formatted(name, Setting.degrees(angle))));
        words.addAll(setting.notes());
        return words;
    }
}
