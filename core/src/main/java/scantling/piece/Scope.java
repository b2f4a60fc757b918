package scantling.piece;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import scantling.measure.Dim;
import scantling.measure.Span;

/**
 * The names that stand for lengths. Each is worked out when first asked for, so that they may be given in any order; a
 * name that needs itself is reported once.
 */
final class Scope {
    private static final int LONGEST_CHAIN = 100;

    private final Map<String, Supplier<Optional<Dim>>> sums = new LinkedHashMap<>();
    private final Map<String, Optional<Dim>> known = new LinkedHashMap<>();
    private final Map<Character, List<String>> byFirst = new TreeMap<>();
    private final Set<String> open = new LinkedHashSet<>();
    private final Problems problems;

    Scope(Problems problems) {
        this.problems = problems;
    }

    /** Gives a name to a sum; false when the name is taken. */
    boolean define(String name, Supplier<Optional<Dim>> sum) {
        if (sums.putIfAbsent(name, sum) != null) {
            return false;
        }
        List<String> alike = byFirst.computeIfAbsent(name.charAt(0), first -> new ArrayList<>());
        alike.add(name);
        alike.sort(Comparator.comparingInt(String::length).reversed());
        return true;
    }

    /** All names, in the order given. */
    Set<String> names() {
        return sums.keySet();
    }

    /** The longest name that stands in a text at a place and ends there as a word. */
    Optional<String> longestNameAt(String text, int at) {
        return byFirst.getOrDefault(text.charAt(at), List.of()).stream()
                .filter(name -> text.startsWith(name, at) && endsAsWord(text, at + name.length()))
                .findFirst();
    }

    static boolean endsAsWord(String text, int end) {
        return end >= text.length() || !(Character.isLetterOrDigit(text.charAt(end)) || text.charAt(end) == '_');
    }

    /** What a name stands for; empty when its own sum is wrong, which is then among the problems. */
    Optional<Dim> resolve(String name, Span use) {
        Optional<Dim> value = known.get(name);
        if (value != null) {
            return value;
        }
        if (open.contains(name)) {
            return circle(name, use);
        }
        if (open.size() >= LONGEST_CHAIN) {
            return problems.fail(use, "%s hangs on too many other names.".formatted(Problems.quoted(name)), "");
        }
        open.add(name);
        Optional<Dim> worked = Optional.ofNullable(sums.get(name)).flatMap(Supplier::get);
        open.remove(name);
        known.put(name, worked);
        return worked;
    }

    private Optional<Dim> circle(String name, Span use) {
        List<String> chain = new ArrayList<>(open);
        List<String> loop = new ArrayList<>(chain.subList(chain.indexOf(name), chain.size()));
        loop.add(name);
        return problems.fail(
                use,
                "%s goes in a circle: %s.".formatted(Problems.quoted(name), String.join(" needs ", loop)),
                "Give one of them as a plain length.");
    }
}
