package scantling.timber;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Finds things by the names makers give them: case, hyphens, commas and the order of the words do not matter, so that
 * {@code Cherry, black} is {@code black cherry}.
 *
 * @param <T> what is named
 */
public final class Names<T> {
    private static final int SUGGESTIONS = 3;
    private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}./&]+");

    private final Map<String, T> byName = new HashMap<>();
    private final Map<String, T> byKey = new TreeMap<>();
    private final Map<String, String> spelling = new TreeMap<>();

    private Names() {}

    /** All names of all things. @throws IllegalStateException if two things share a name */
    public static <T> Names<T> of(List<T> things, Function<T, Stream<String>> names) {
        Names<T> result = new Names<>();
        things.forEach(thing -> names.apply(thing).forEach(name -> result.add(name, thing)));
        return result;
    }

    private void add(String name, T thing) {
        String key = key(name);
        T other = byKey.putIfAbsent(key, thing);
        if (other != null && !Objects.equals(other, thing)) {
            throw new IllegalStateException("The name (%s) stands for two things.".formatted(name));
        }
        spelling.putIfAbsent(key, name);
        byName.put(name, thing);
    }

    /** The words of a name, lower case, in alphabetical order. */
    static String key(String name) {
        return words(name).sorted().collect(Collectors.joining(" "));
    }

    static Stream<String> words(String name) {
        return BETWEEN.splitAsStream(name.toLowerCase(Locale.ROOT)).filter(word -> !word.isEmpty());
    }

    /** What goes by this name. */
    public Optional<T> find(String name) {
        return Optional.ofNullable(byName.get(name)).or(() -> Optional.ofNullable(byKey.get(key(name))));
    }

    /** Up to three names that come nearest: those that share a word first, then by the letters that differ. */
    public List<String> nearest(String name) {
        String key = key(name);
        Comparator<Map.Entry<String, String>> order = Comparator.comparingInt(
                        (Map.Entry<String, String> entry) -> distance(key, entry.getKey()))
                .thenComparing(Map.Entry::getKey);
        return spelling.entrySet().stream()
                .filter(entry -> sharesWord(key, entry.getKey())
                        || distance(key, entry.getKey()) <= Math.max(2, key.length() / 3))
                .sorted(Comparator.comparing((Map.Entry<String, String> entry) -> !sharesWord(key, entry.getKey()))
                        .thenComparing(order))
                .map(Map.Entry::getValue)
                .limit(SUGGESTIONS)
                .toList();
    }

    static boolean sharesWord(String one, String other) {
        List<String> words = words(other).toList();
        return words(one).anyMatch(words::contains);
    }

    /** The least number of letters to add, drop or change. */
    static int distance(String from, String to) {
        int[] row = new int[to.length() + 1];
        Arrays.setAll(row, i -> i);
        for (int i = 1; i <= from.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int change = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[to.length()];
    }
}
