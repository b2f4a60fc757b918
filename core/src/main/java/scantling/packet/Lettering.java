package scantling.packet;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import scantling.construct.Joint;
import scantling.measure.Ledger;

/** Marks and letters in place of the names of parts. */
final class Lettering {
    private final Map<String, String> marks;
    private final List<String> named;

    /** @param marks by the name of a part */
    Lettering(Map<String, String> marks) {
        this.marks = marks;
        this.named = longNames(marks.keySet().stream());
    }

    /** The mark of a part; its name when it has none. */
    String mark(String path) {
        return marks.getOrDefault(path, path);
    }

    /** The mark without its number. */
    String letter(String path) {
        String mark = mark(path);
        return marks.containsKey(path) ? mark.replaceAll("\\d+$", "") : mark;
    }

    /** A sentence with the letters of both parts of a joint; a name of one word may be any word, and stays. */
    String of(String sentence, Joint joint) {
        return of(sentence, longNames(Stream.of(joint.entering(), joint.receiving())), this::letter);
    }

    /** A sentence with marks in place of the names of parts. @param called how a part is called there */
    String of(String sentence, UnaryOperator<String> called) {
        return of(sentence, named, called);
    }

    private static String of(String sentence, List<String> names, UnaryOperator<String> called) {
        String lettered = sentence;
        for (String path : names) {
            if (lettered.contains(path)) {
                lettered = lettered.replace(path, called.apply(path));
            }
        }
        return lettered;
    }

    /** The longest first, for one may begin another. */
    private static List<String> longNames(Stream<String> paths) {
        return paths.filter(each -> each.contains(Ledger.SEPARATOR))
                .sorted(Comparator.comparing(String::length).reversed())
                .toList();
    }
}
