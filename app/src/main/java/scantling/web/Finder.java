package scantling.web;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.cutting.CutPiece;
import scantling.cutting.PlacedPart;
import scantling.measure.Dim;
import scantling.measure.LengthFormat;
import scantling.packet.Packet;
import scantling.packet.PartGroup;
import scantling.plan.Plan;

/** Answers "where is rail 3": which part it is, its mark, its size, where it goes and what it is cut from. */
public final class Finder {
    private static final int MOST = 12;
    /** Words of a question that say nothing of what is looked for. */
    private static final Set<String> SMALL =
            Set.of("where", "is", "are", "the", "a", "an", "my", "of", "in", "what", "how");

    private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\d]+");

    private final Plan plan;
    private final LengthFormat format;
    private final List<PartGroup> groups;

    private Finder(Plan plan, LengthFormat format) {
        this.plan = plan;
        this.format = format;
        this.groups = Packet.of(plan, format).content().groups();
    }

    static Finder of(Plan plan, LengthFormat format) {
        return new Finder(plan, format);
    }

    /**
     * Something found.
     *
     * @param name what it is called
     * @param anchor where on the sheet it stands; empty for a number, which opens its sum
     * @param told what there is to say of it
     */
    public record Found(String name, String anchor, String told) {
        /** The name as it stands in an address. */
        public String address() {
            return Html.coded(name);
        }
    }

    /** What a question asks for, the closest first; nothing for a question that says nothing. */
    List<Found> find(String question) {
        return find(words(question));
    }

    /** What is called so but for its number: a piece may have rails and no rail 3. */
    List<Found> nearest(String question) {
        Set<String> asked = words(question);
        boolean numbered = asked.removeIf(word -> Character.isDigit(word.charAt(0)));
        return numbered ? find(asked) : List.of();
    }

    private List<Found> find(Set<String> asked) {
        asked.removeAll(SMALL);
        if (asked.isEmpty()) {
            return List.of();
        }
        List<Found> all = new ArrayList<>(parts(asked));
        if (all.size() < MOST) {
            all.addAll(numbers(asked));
        }
        return all.stream().limit(MOST).toList();
    }

    private List<Found> parts(Set<String> asked) {
        List<Found> found = new ArrayList<>();
        for (PartGroup group : groups) {
            for (String path : group.paths()) {
                Set<String> own = words(path);
                own.add(group.mark().toLowerCase(Locale.ROOT));
                if (holds(own, asked)) {
                    found.add(new Found(path, "part-" + group.mark(), told(group, path)));
                }
            }
        }
        found.sort(Comparator.comparingInt(each -> each.name().length()));
        return found;
    }

    private List<Found> numbers(Set<String> asked) {
        return plan.assembly().names().entrySet().stream()
                .filter(name -> holds(words(name.getKey()), asked))
                .sorted(Comparator.comparingInt(
                        (Map.Entry<String, Dim> name) -> name.getKey().length()))
                .limit(MOST)
                .map(name -> new Found(
                        name.getKey(), "", format.formatWithUnit(name.getValue().value())))
                .toList();
    }

    /** Whether every word that is asked for begins one of its own; numbers must be the same. */
    private static boolean holds(Set<String> own, Set<String> asked) {
        return asked.stream()
                .allMatch(word -> own.stream()
                        .anyMatch(
                                each -> Character.isDigit(word.charAt(0)) ? each.equals(word) : each.startsWith(word)));
    }

    private static Set<String> words(String text) {
        return Arrays.stream(BETWEEN.split(text.toLowerCase(Locale.ROOT)))
                .filter(word -> !word.isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private String told(PartGroup group, String path) {
        Part part = group.sample();
        String size = "mark %s, %s × %s × %s of %s"
                .formatted(
                        group.mark(),
                        figure(part.length()),
                        figure(part.width()),
                        figure(part.thickness()),
                        part.material().of());
        return size + meets(plan.assembly(), path) + cutFrom(path);
    }

    private static String meets(Assembly assembly, String path) {
        String others = assembly.joints().stream()
                .filter(joint ->
                        joint.entering().equals(path) || joint.receiving().equals(path))
                .map(joint -> joint.entering().equals(path) ? joint.receiving() : joint.entering())
                .distinct()
                .collect(Collectors.joining(", "));
        return others.isEmpty() ? "" : "; meets " + others;
    }

    private String cutFrom(String path) {
        return plan.cuts().stream()
                .flatMap(group -> group.plan().used().stream()
                        .filter(piece -> piece.parts().stream().anyMatch(part -> isFor(part, path)))
                        .map(piece -> "; cut from " + name(group.title(), piece)))
                .findFirst()
                .orElse("");
    }

    private static boolean isFor(PlacedPart part, String path) {
        return part.part().name().equals(path);
    }

    private static String name(String title, CutPiece piece) {
        return "%s, %s, no. %d".formatted(title, piece.stock().name(), piece.number());
    }

    private String figure(Dim dim) {
        return format.format(dim.value());
    }
}
