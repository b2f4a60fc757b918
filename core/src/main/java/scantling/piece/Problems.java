package scantling.piece;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import scantling.measure.Span;

/** Collects what is wrong while reading goes on, so that the maker hears everything at once. */
final class Problems {
    private static final int MOST = 200;
    private static final int LONGEST_QUOTE = 60;

    private final Set<Problem> found = new LinkedHashSet<>();
    private int more;

    /** Adds one; beyond two hundred they are only counted. */
    void add(Span span, String message, String remedy) {
        if (found.size() < MOST) {
            found.add(new Problem(span, message, remedy));
        } else {
            more++;
        }
    }

    /** Adds one and gives nothing, for a method that has no result because of it. */
    <T> Optional<T> fail(Span span, String message, String remedy) {
        add(span, message, remedy);
        return Optional.empty();
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    /** All of them, in the order of the text. */
    List<Problem> list() {
        List<Problem> sorted = new ArrayList<>(found);
        sorted.sort(Comparator.comparingInt(problem -> problem.span().start()));
        if (more > 0) {
            Span last = sorted.get(sorted.size() - 1).span();
            sorted.add(new Problem(last, "There are (%d) more problems.".formatted(more), "Mend these first."));
        }
        return List.copyOf(sorted);
    }

    /** A text as it is quoted in a message: on one line, cut short. */
    static String quoted(String text) {
        String line = text.replaceAll("\\p{Cntrl}+", " ");
        return '"' + (line.length() > LONGEST_QUOTE ? line.substring(0, LONGEST_QUOTE) + "..." : line) + '"';
    }
}
