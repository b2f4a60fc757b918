package scantling.route;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import scantling.feature.Feature;
import scantling.feature.Setting;
import scantling.measure.LengthFormat;

/** A feature that is cut only when its frame is glued: a rabbet routed from inside it. */
final class LateJoint {
    private static final String GLUED = "glued frame";

    private final Setting setting;
    private final List<Feature> left;
    private final LengthFormat format;

    private LateJoint(Setting setting, List<Feature> features, LengthFormat format) {
        this.setting = setting;
        this.format = format;
        left = new ArrayList<>(features);
    }

    static boolean is(Setting setting) {
        return setting.notes().stream().anyMatch(note -> note.contains(GLUED));
    }

    static List<LateJoint> all(RouteInput input) {
        Map<Setting, List<Feature>> bySetting = new LinkedHashMap<>();
        for (Feature feature : input.features().features()) {
            if (is(feature.setting())) {
                bySetting
                        .computeIfAbsent(feature.setting(), k -> new ArrayList<>())
                        .add(feature);
            }
        }
        LengthFormat format = LengthFormat.of(input.assembly().piece().unit());
        return bySetting.entrySet().stream()
                .map(entry -> new LateJoint(entry.getKey(), entry.getValue(), format))
                .toList();
    }

    /** Cuts what is now glued together. */
    void write(Draft draft, Set<String> glued) {
        List<Feature> now =
                left.stream().filter(feature -> glued.contains(feature.part())).toList();
        left.removeAll(now);
        draft.entry(
                        Step.JOINTS,
                        JointSteps.name(setting),
                        now.stream().map(Feature::part).toList())
                .takes("one setting", now.size())
                .set(JointSteps.words(setting, format))
                .add();
    }
}
