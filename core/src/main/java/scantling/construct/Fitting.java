package scantling.construct;

import java.util.List;
import java.util.Map;
import scantling.measure.Dim;

/**
 * Hardware.
 *
 * @param path its name: {@code drawer 2 / slides}
 * @param what what it is in trade words: concealed undermount slide 350
 * @param count how many to buy for this place (a pair of slides is one pair)
 * @param per what one is: pair, piece, set
 * @param on paths of the parts it is fixed to
 * @param sizes what it needs, each named
 * @param words what else decides how it is fixed, each named: profile, hung, set
 */
public record Fitting(
        String path,
        String what,
        int count,
        String per,
        List<String> on,
        Map<String, Dim> sizes,
        Map<String, String> words) {
    /** Takes its own copies. */
    public Fitting {
        on = List.copyOf(on);
        sizes = Map.copyOf(sizes);
        words = Map.copyOf(words);
    }

    /** One of which nothing else is to be said. */
    public Fitting(String path, String what, int count, String per, List<String> on, Map<String, Dim> sizes) {
        this(path, what, count, per, on, sizes, Map.of());
    }

    /** Whether one of its words is this. */
    public boolean is(String name, String word) {
        return word.equals(words.get(name));
    }
}
