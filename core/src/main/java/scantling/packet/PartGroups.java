package scantling.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Features;
import scantling.feature.Range;
import scantling.feature.WorkGroup;

/**
 * Marks parts with letters. Parts of one material, size and outline share a letter; where the work on them differs, as
 * between a left and a right end, the letter takes a number: A1, A2.
 */
public final class PartGroups {
    // I and O read as one and nought.
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    private PartGroups() {}

    /** The groups of an assembly, by material in the order the maker named them, then in building order. */
    public static List<PartGroup> of(Assembly assembly, Features features) {
        Map<String, List<Feature>> onParts = features.byPart();
        Map<String, Map<String, List<Part>>> families = new LinkedHashMap<>();
        for (String material : materials(assembly)) {
            assembly.parts().stream()
                    .filter(part -> part.material().name().equals(material))
                    .forEach(part -> families.computeIfAbsent(size(part), key -> new LinkedHashMap<>())
                            .computeIfAbsent(hand(part, work(part, onParts)), key -> new ArrayList<>())
                            .add(part));
        }
        List<PartGroup> groups = new ArrayList<>();
        int letter = 0;
        for (Map<String, List<Part>> family : families.values()) {
            groups.addAll(numbered(letter(letter++), List.copyOf(family.values()), onParts));
        }
        return List.copyOf(groups);
    }

    private static List<String> materials(Assembly assembly) {
        List<String> names = new ArrayList<>(assembly.piece().materials().keySet());
        assembly.parts().stream()
                .map(part -> part.material().name())
                .filter(name -> !names.contains(name))
                .distinct()
                .forEach(names::add);
        return names;
    }

    private static List<PartGroup> numbered(
            String letter, List<List<Part>> family, Map<String, List<Feature>> onParts) {
        List<PartGroup> groups = new ArrayList<>();
        Map<String, String> marks = new LinkedHashMap<>();
        for (int i = 0; i < family.size(); i++) {
            List<Part> parts = family.get(i);
            Part sample = parts.get(0);
            String mark = family.size() == 1 ? letter : letter + (i + 1);
            String first = marks.putIfAbsent(work(sample, onParts), mark);
            groups.add(new PartGroup(
                    mark,
                    sample,
                    parts.stream().map(Part::path).toList(),
                    WorkGroup.of(onParts.getOrDefault(sample.path(), List.of())),
                    Optional.ofNullable(first)));
        }
        return groups;
    }

    static String letter(int index) {
        int base = LETTERS.length();
        String last = String.valueOf(LETTERS.charAt(index % base));
        return index < base ? last : letter(index / base - 1) + last;
    }

    private static String size(Part part) {
        String outline = part.outline()
                .map(shape -> shape.corners().stream()
                        .map(corner ->
                                corner.along().value() + " " + corner.across().value())
                        .collect(Collectors.joining(";")))
                .orElse("");
        return String.join(
                "|",
                part.material().name(),
                part.length().value().toString(),
                part.width().value().toString(),
                part.thickness().value().toString(),
                outline,
                Boolean.toString(part.fitted()));
    }

    /** What is done to a part and where, the same for both hands of a pair. */
    private static String work(Part part, Map<String, List<Feature>> onParts) {
        return onParts.getOrDefault(part.path(), List.of()).stream()
                .map(feature -> String.join(
                        " ",
                        feature.kind().words(),
                        feature.surface().words(),
                        limits(feature.along()),
                        limits(feature.across()),
                        limits(feature.through())))
                .sorted()
                .collect(Collectors.joining(";"));
    }

    private static String limits(Range range) {
        return range.from().value() + " " + range.to().value();
    }

    /** A plain board is its own mirror image; one with work or a shape on it is not. */
    private static String hand(Part part, String work) {
        boolean plain = work.isEmpty() && part.outline().isEmpty();
        return plain ? "" : work + part.lie().hasNearEndRight();
    }
}
