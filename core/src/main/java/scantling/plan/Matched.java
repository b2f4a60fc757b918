package scantling.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.piece.Material;
import scantling.piece.Piece;
import scantling.piece.Problem;
import scantling.piece.Spelling;

/** Which parts are cut in a row, one after the other along the grain, as the maker says under {@code matched}. */
final class Matched {
    private final Map<String, String> rows = new LinkedHashMap<>();
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

    /** The name of the row that a part is cut in; empty for none. */
    String row(String path) {
        return rows.getOrDefault(path, "");
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }

    private void row(Piece.Row row, String name) {
        List<Part> found = new ArrayList<>();
        for (String said : row.parts()) {
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
        check(row, found);
        found.forEach(part -> rows.put(part.path(), name));
    }

    /** A star stands for any one name of a path. */
    private static Pattern pattern(String said) {
        return Pattern.compile(
                Arrays.stream(said.split("\\*", -1)).map(Pattern::quote).collect(Collectors.joining("[^/]+?")));
    }

    private void check(Piece.Row row, List<Part> found) {
        List<String> taken =
                found.stream().map(Part::path).filter(rows::containsKey).toList();
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
