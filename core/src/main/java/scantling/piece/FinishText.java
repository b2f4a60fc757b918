package scantling.piece;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import scantling.measure.Span;

/**
 * What the maker says of the finish: steps for the whole piece, groups that are finished otherwise, coats of the maker's
 * own, and how the shop works. Words only; what they mean is found out where coats are known.
 *
 * @param steps what goes on whatever no group names, in order
 * @param groups what is finished otherwise, in the order said; a later one wins where two name one face
 * @param coats the maker's own coats, or known ones with other figures
 * @param settings how the shop works, by key: by, air, sand, use
 */
public record FinishText(List<Step> steps, List<Group> groups, List<Own> coats, Map<String, Word> settings) {
    /** Nothing goes on it. */
    public static final FinishText NONE = new FinishText(List.of(), List.of(), List.of(), Map.of());

    private static final Span NOWHERE = new Span(1, 1, 0, 0);

    /** Takes its own copies. */
    public FinishText {
        steps = List.copyOf(steps);
        groups = List.copyOf(groups);
        coats = List.copyOf(coats);
        settings = Map.copyOf(settings);
    }

    /** A few words and where they stand. */
    public record Word(String text, Span span) {}

    /** One thing that goes on. @param key what it is for: stain, seal, top @param words what, how often, how @param span where */
    public record Step(String key, String words, Span span) {}

    /**
     * Faces that are finished otherwise than the rest.
     *
     * @param name what the maker calls them
     * @param on which parts, by name; all when nothing is said
     * @param of which materials, by the maker's name; all when nothing is said
     * @param faces which of their faces; all when nothing is said
     * @param before whether before assembly, where said: yes or no
     * @param by how it is put on, where said
     * @param sand the last grit before it, where said
     * @param steps what goes on; nothing leaves them bare
     * @param span where the name stands
     */
    public record Group(
            String name,
            List<Word> on,
            List<Word> of,
            List<Word> faces,
            Optional<Word> before,
            Optional<Word> by,
            Optional<Word> sand,
            List<Step> steps,
            Span span) {
        /** Takes its own copies. */
        public Group {
            on = List.copyOf(on);
            of = List.copyOf(of);
            faces = List.copyOf(faces);
            steps = List.copyOf(steps);
        }
    }

    /** A coat of the maker's own. @param name what it is called @param facts what is known of it, by key @param span where */
    public record Own(String name, Map<String, Word> facts, Span span) {
        /** Takes its own copy. */
        public Own {
            facts = Map.copyOf(facts);
        }
    }

    /** Steps for the whole piece that stand in no text. */
    static FinishText of(Map<String, String> steps) {
        List<Step> all = steps.entrySet().stream()
                .map(step -> new Step(step.getKey(), step.getValue(), NOWHERE))
                .toList();
        return new FinishText(all, List.of(), List.of(), Map.of());
    }

    /** The steps for the whole piece in the maker's words, by key, in order. */
    public Map<String, String> words() {
        return steps.stream()
                .collect(Collectors.toMap(
                        Step::key, Step::words, (first, second) -> first, java.util.LinkedHashMap::new));
    }
}
