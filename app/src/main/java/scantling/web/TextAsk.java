package scantling.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import scantling.construct.Construction;
import scantling.piece.PieceEditor;

/** Writes new items into lists of a text and leaves every other character as it is. */
public final class TextAsk {
    private static final Pattern ROW = Pattern.compile("(.*/ )?rows / \\d+");
    private static final Pattern BUILD = Pattern.compile("(?m)^( *)(?:- )?(?:build|each):[ \\t]*(?:#.*)?$");

    private static final Pattern BARE = Pattern.compile("(?m)^( *)- name: *([^#{}\\n]*?) *(?:#.*)?$");

    private TextAsk() {}

    /** A list of elements that one can be added to. @param at where it begins in the text @param words what it is */
    public record Place(int at, String words) {}

    /** The banks of drawers, by the path of their rows. */
    static List<String> banks(List<PieceEditor.Given> givens) {
        return givens.stream()
                .map(PieceEditor.Given::path)
                .filter(path -> ROW.matcher(path).matches())
                .map(path -> path.substring(0, path.lastIndexOf(" / ")))
                .distinct()
                .toList();
    }

    /** The maker's names of materials. */
    static List<String> materials(List<PieceEditor.Given> givens) {
        return givens.stream()
                .map(PieceEditor.Given::path)
                .filter(path -> path.startsWith("materials / "))
                .map(path -> path.split(" / ")[1])
                .distinct()
                .toList();
    }

    /** One more drawer at the top of a bank. */
    static Optional<String> withDrawer(String text, String bank, String height) {
        return PieceEditor.findSpan(text, Construction.language(), bank + " / 1")
                .map(first -> {
                    int start = first.start();
                    int line = text.lastIndexOf('\n', Math.max(0, start - 1)) + 1;
                    String before = text.substring(line, start);
                    String more = before.strip().equals("-") ? height + "\n" + before : height + ", ";
                    return text.substring(0, start) + more + text.substring(start);
                });
    }

    /** The lists of elements and the spaces that hold none yet, in the order of the text. */
    static List<Place> places(String text) {
        List<Place> places = new ArrayList<>();
        Matcher build = BUILD.matcher(text);
        while (build.find()) {
            String name = build.group(1).isEmpty() ? "the whole piece" : nameBefore(text, build.start());
            places.add(new Place(build.start(), name));
        }
        Matcher space = BARE.matcher(text);
        while (space.find()) {
            if (isBare(text, space)) {
                places.add(new Place(space.start(), space.group(2).strip()));
            }
        }
        places.sort(Comparator.comparingInt(Place::at));
        return places;
    }

    /** Whether nothing more is said of a named space than its name. */
    private static boolean isBare(String text, Matcher space) {
        int indent = space.group(1).length();
        return text.substring(space.end())
                .lines()
                .filter(line -> !line.isBlank() && !line.strip().startsWith("#"))
                .findFirst()
                .filter(line -> indentOf(line) > indent)
                .isEmpty();
    }

    private static int indentOf(String line) {
        return line.length() - line.stripLeading().length();
    }

    /** What the space is called whose list begins there. */
    private static String nameBefore(String text, int at) {
        Matcher name = Pattern.compile("(?m)^ *- name: *([^#\n]*)").matcher(text.substring(0, at));
        String found = "a space";
        while (name.find()) {
            found = name.group(1).strip();
        }
        String kind = text.startsWith("each:", at + indentOf(text.substring(at))) ? "every space like " : "";
        return kind + found;
    }

    /** A step at the end of a list of elements, for the space that is left there; empty where there is no such list. */
    static Optional<String> withStep(String text, int place, String step) {
        if (place > text.length()) {
            return Optional.empty();
        }
        Matcher bare = BARE.matcher(text);
        if (bare.find(place) && bare.start() == place && isBare(text, bare)) {
            String in = " ".repeat(bare.group(1).length() + 2);
            int end = Math.min(text.length(), bare.end() + 1);
            String air = text.charAt(end - 1) == '\n' ? "" : "\n";
            return Optional.of(
                    text.substring(0, end) + air + in + "build:\n" + in + "  - " + step + "\n" + text.substring(end));
        }
        Matcher build = BUILD.matcher(text);
        return build.find(place) && build.start() == place ? inList(text, build, step) : Optional.empty();
    }

    private static Optional<String> inList(String text, Matcher build, String step) {
        List<String> lines = text.substring(build.end()).lines().toList();
        int indent = build.group(1).length() + (build.group().contains("- ") ? 2 : 0);
        int end = Math.min(text.length(), build.end() + 1);
        int item = -1;
        int at = end;
        for (String line : lines.subList(Math.min(1, lines.size()), lines.size())) {
            at += line.length() + 1;
            String clean = line.strip();
            int here = indentOf(line);
            boolean said = !clean.isEmpty() && !clean.startsWith("#");
            if (said && here <= indent && !(here == indent && clean.startsWith("- "))) {
                break;
            }
            if (!clean.isEmpty()) {
                item = item < 0 && clean.startsWith("- ") ? here : item;
                end = Math.min(at, text.length());
            }
        }
        String air = end > 0 && text.charAt(end - 1) == '\n' ? "" : "\n";
        return item < 0
                ? Optional.empty()
                : Optional.of(
                        text.substring(0, end) + air + " ".repeat(item) + "- " + step + "\n" + text.substring(end));
    }
}
