package scantling.feature;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * All features of a piece that are made without touching the machine in between.
 *
 * @param setting how it stands
 * @param features made so, in building order
 */
public record SettingGroup(Setting setting, List<Feature> features) {
    /** Takes its own copy. */
    public SettingGroup {
        features = List.copyOf(features);
    }

    /** Groups by setting, machine by machine and tool by tool, so that as little as possible is changed between two. */
    public static List<SettingGroup> of(List<Feature> features) {
        Map<String, List<Feature>> same = new LinkedHashMap<>();
        features.forEach(feature -> same.computeIfAbsent(feature.setting().key(), key -> new ArrayList<>())
                .add(feature));
        return same.values().stream()
                .map(group -> new SettingGroup(group.get(0).setting(), group))
                .sorted(Comparator.comparing(
                                (SettingGroup group) -> group.setting().machine())
                        .thenComparing(group -> group.setting().tool())
                        .thenComparing(group -> group.setting().key()))
                .toList();
    }
}
