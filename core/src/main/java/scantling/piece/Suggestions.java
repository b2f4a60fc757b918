package scantling.piece;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Finds the word that was probably meant. */
final class Suggestions {
    private static final int MOST_LISTED = 24;
    private static final int LONGEST = 60;

    private Suggestions() {}

    /** A remedy: the nearest right spelling, and what is allowed. */
    static String remedy(String written, Collection<String> allowed) {
        String maybe = nearest(written, allowed).map("Maybe \"%s\"?"::formatted).orElse("");
        return (maybe + " " + allowedHere(allowed)).strip();
    }

    private static String allowedHere(Collection<String> allowed) {
        if (allowed.isEmpty()) {
            return "";
        }
        String listed = allowed.stream().limit(MOST_LISTED).collect(Collectors.joining(", "));
        return "Allowed here: " + listed + (allowed.size() > MOST_LISTED ? " and others." : ".");
    }

    /** The word with the fewest slips of the pen between it and what was written; none when all are far off. */
    static Optional<String> nearest(String written, Collection<String> allowed) {
        String word = written.strip().toLowerCase(Locale.ROOT);
        if (word.isEmpty() || word.length() > LONGEST) {
            return Optional.empty();
        }
        int limit = Math.max(1, (word.length() + 1) / 3);
        List<String> close = allowed.stream()
                .filter(candidate -> Math.abs(candidate.length() - word.length()) <= limit)
                .toList();
        return close.stream()
                .min(Comparator.comparingInt(candidate -> distance(word, candidate.toLowerCase(Locale.ROOT))))
                .filter(best -> distance(word, best.toLowerCase(Locale.ROOT)) <= limit)
                .or(() -> allowed.stream()
                        .filter(candidate -> word.length() > 2
                                && candidate.toLowerCase(Locale.ROOT).contains(word))
                        .findFirst());
    }

    /**
     * How many letters must be added, dropped, changed or swapped with their neighbour to turn one word into the other
     * (optimal string alignment distance).
     */
    static int distance(String a, String b) {
        int[][] steps = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                steps[i][j] = i == 0 || j == 0 ? i + j : fewest(steps, a, b, i, j);
            }
        }
        return steps[a.length()][b.length()];
    }

    private static int fewest(int[][] steps, String a, String b, int i, int j) {
        boolean same = a.charAt(i - 1) == b.charAt(j - 1);
        int best = Math.min(Math.min(steps[i - 1][j], steps[i][j - 1]) + 1, steps[i - 1][j - 1] + (same ? 0 : 1));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, steps[i - 2][j - 2] + 1) : best;
    }
}
