package scantling.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.cutting.CutPart;
import scantling.piece.Material;
import scantling.piece.Piece;
import scantling.piece.Problem;
import scantling.piece.Spelling;

/**
 * Which parts are cut next to each other, so that the grain runs through them, as the maker says under {@code matched}: in a
 * row, one after the other along the grain, or side by side across it.
 */
final class Matched {
    private final Map<String, String> rows = new LinkedHashMap<>();
    private final Map<String, String> sides = new LinkedHashMap<>();
    private final Map<String, String> sets = new LinkedHashMap<>();
    private final Map<String, Integer> places = new LinkedHashMap<>();
    private final List<Problem> problems = new ArrayList<>();
    private final Map<String, Part> parts = new LinkedHashMap<>();

    private Matched(Assembly assembly) {
        assembly.parts().forEach(part -> parts.put(part.path(), part));
        int number = 0;
        for (Piece.Row row : assembly.piece().matched()) {
            row(row, "row %d".formatted(++number));
        }
    }

    static Matched of(Assembly assembly) {
        return new Matched(assembly);
    }

    /** A blank's part with what it is matched with. */
    CutPart in(CutPart part) {
        return part.inRow(rows.getOrDefault(part.name(), "")).lyingBeside(sides.getOrDefault(part.name(), ""));
    }

    /** Parts in the order in which they are matched, each set where the first of it stood. */
    List<CutPart> ordered(List<CutPart> found) {
        Map<String, Integer> first = new HashMap<>();
        for (CutPart part : found) {
            first.putIfAbsent(set(part), first.size());
        }
        return found.stream()
                .sorted(Comparator.<CutPart>comparingInt(part -> first.getOrDefault(set(part), 0))
                        .thenComparingInt(part -> places.getOrDefault(part.name(), 0)))
                .toList();
    }

    private String set(CutPart part) {
        return sets.getOrDefault(part.name(), part.name());
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }

    private void row(Piece.Row row, String name) {
        List<List<Part>> lines = new ArrayList<>();
        for (Piece.Line line : row.lines()) {
            List<Part> found = found(line, row);
            if (line.endToEnd()) {
                lines.add(found);
            } else {
                found.forEach(part -> lines.add(List.of(part)));
            }
        }
        List<Part> all = lines.stream().flatMap(List::stream).toList();
        check(row, all);
        all.forEach(part -> {
            places.put(part.path(), places.size());
            sets.put(part.path(), "matched: " + name);
        });
        boolean alone = lines.size() == 1;
        for (List<Part> line : lines) {
            String called = alone ? name : "%s, %d".formatted(name, lines.indexOf(line) + 1);
            line.forEach(part -> {
                if (alone || line.size() > 1) {
                    rows.put(part.path(), called);
                }
                if (!alone) {
                    sides.put(part.path(), name);
                }
            });
        }
    }

    private List<Part> found(Piece.Line line, Piece.Row row) {
        List<Part> found = new ArrayList<>();
        for (String said : line.parts()) {
            List<Part> these = parts.values().stream()
                    .filter(part -> pattern(said).matcher(part.path()).matches())
                    .toList();
            if (these.isEmpty()) {
                problem(
                        row,
                        "No part of this piece is called \"%s\".".formatted(said),
                        Spelling.maybe(said, new TreeSet<>(parts.keySet())).strip());
            }
            found.addAll(these);
        }
        return found;
    }

    /** A star stands for any one name of a path. */
    private static Pattern pattern(String said) {
        return Pattern.compile(
                Arrays.stream(said.split("\\*", -1)).map(Pattern::quote).collect(Collectors.joining("[^/]+?")));
    }

    private void check(Piece.Row row, List<Part> found) {
        List<String> taken =
                found.stream().map(Part::path).filter(sets::containsKey).toList();
        if (!taken.isEmpty()) {
            problem(row, "%s is in a row already.".formatted(taken.get(0)), "Name each part in one row.");
        }
        List<String> materials = found.stream()
                .map(Part::material)
                .map(Material::name)
                .distinct()
                .toList();
        boolean thick =
                found.stream().map(part -> part.thickness().value()).distinct().count() > 1;
        if (materials.size() > 1 || thick) {
            problem(
                    row,
                    "Parts in a row are cut from one piece; these are of %s."
                            .formatted(thick ? "several thicknesses" : String.join(", ", materials)),
                    "Make a row for each.");
        }
    }

    private void problem(Piece.Row row, String message, String remedy) {
        problems.add(new Problem(row.span(), message, remedy));
    }
}
