package scantling.finishing;

import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import scantling.measure.Ledger;
import scantling.piece.FinishText;
import scantling.piece.Problem;
import scantling.piece.Spelling;

/** Finds the faces a group names: by words of part names, by material, by words for faces. */
final class Selection {
    private static final List<String> DIRECTIONS = List.of("left", "right", "front", "back", "bottom", "top");
    private static final List<String> FACE_WORDS = List.of(
            "all", "show", "inside", "hidden", "faces", "face", "edges", "edge", "ends", "end", "grain", "left",
            "right", "front", "back", "bottom", "top");

    private final List<Face> faces;
    private final List<Problem> problems;

    Selection(List<Face> faces, List<Problem> problems) {
        this.faces = faces;
        this.problems = problems;
    }

    /** What a group names; empty when something it says names nothing, which then is a problem. */
    Set<Face> of(FinishText.Group group) {
        Set<Face> found = those(face -> true);
        if (!group.on().isEmpty()) {
            found.retainAll(any(group.on(), this::onParts));
        }
        if (!group.of().isEmpty()) {
            found.retainAll(any(group.of(), this::ofMaterial));
        }
        if (!group.faces().isEmpty()) {
            found.retainAll(any(group.faces(), this::byWords));
        }
        return found;
    }

    private Set<Face> any(List<FinishText.Word> words, Function<FinishText.Word, Set<Face>> find) {
        Set<Face> all = those(face -> false);
        words.forEach(word -> all.addAll(find.apply(word)));
        return all;
    }

    /** Faces by what they are, not by what is equal to them. */
    private Set<Face> those(Predicate<Face> wanted) {
        Set<Face> found = Collections.newSetFromMap(new IdentityHashMap<>());
        faces.stream().filter(wanted).forEach(found::add);
        return found;
    }

    private Set<Face> onParts(FinishText.Word word) {
        List<String> wanted = words(word.text());
        Set<Face> found = those(face -> holds(words(face.part().path()), wanted));
        if (found.isEmpty()) {
            Set<String> known = new TreeSet<>();
            faces.forEach(
                    face -> Ledger.names(face.part().path()).forEach(name -> known.add(Ledger.withoutNumber(name))));
            problems.add(new Problem(
                    word.span(),
                    "No part of this piece is called \"%s\".".formatted(word.text()),
                    (Spelling.maybe(word.text(), known) + " There are: " + String.join(", ", known) + ".").strip()));
        }
        return found;
    }

    private Set<Face> ofMaterial(FinishText.Word word) {
        Set<Face> found = those(face -> face.part().material().name().equals(word.text()));
        if (found.isEmpty()) {
            Set<String> known = faces.stream()
                    .map(face -> face.part().material().name())
                    .collect(Collectors.toCollection(TreeSet::new));
            problems.add(new Problem(
                    word.span(),
                    "No part is of \"%s\".".formatted(word.text()),
                    (Spelling.maybe(word.text(), known) + " There are: " + String.join(", ", known) + ".").strip()));
        }
        return found;
    }

    private Set<Face> byWords(FinishText.Word word) {
        List<String> wanted = Arrays.asList(word.text().toLowerCase(Locale.ROOT).split("\\s+", -1));
        List<String> unknown =
                wanted.stream().filter(one -> !FACE_WORDS.contains(one)).toList();
        if (!unknown.isEmpty()) {
            problems.add(new Problem(
                    word.span(),
                    "\"%s\" names no faces: \"%s\" is not known.".formatted(word.text(), unknown.get(0)),
                    "Say all, show, inside, hidden, faces, edges, ends, or a side (top, front ...), or both:"
                            + " top edges."));
            return Set.of();
        }
        return those(face -> wanted.stream().allMatch(one -> is(face, one)));
    }

    private static boolean is(Face face, String word) {
        return switch (word) {
            case "all", "grain" -> true;
            case "show" -> face.show() > 0 && face.show() >= face.inside();
            case "inside" -> face.inside() > face.show();
            case "hidden" -> face.seen() == Seen.HIDDEN;
            case "faces", "face" -> !face.isEdge() && !face.isEnd();
            case "edges", "edge" -> face.isEdge();
            case "ends", "end" -> face.isEnd();
            default -> face.side().word().equals(word);
        };
    }

    /** Words of a name, in order, without numbers. */
    private static List<String> words(String name) {
        return Arrays.stream(name.toLowerCase(Locale.ROOT).split("[^\\p{L}]+", -1))
                .map(word -> word.length() > 3 && word.endsWith("s") && !word.endsWith("ss")
                        ? word.substring(0, word.length() - 1)
                        : word)
                .filter(word -> !word.isEmpty() && !word.equals("of") && !word.equals("the"))
                .toList();
    }

    /** Whether all wanted words stand in the name in their order. */
    private static boolean holds(List<String> name, List<String> wanted) {
        int at = 0;
        for (String word : name) {
            if (at < wanted.size() && word.equals(wanted.get(at))) {
                at++;
            }
        }
        return at == wanted.size() && !wanted.isEmpty();
    }
}
