package scantling.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import scantling.measure.Length;

/**
 * The part of {@link SawCheck} that judges matched parts, by where they lie alone: each of a row one kerf beyond the one
 * before it, along the grain and flush with it; each of those side by side one kerf beside the one before it, across the
 * grain and flush with it. Where rows lie side by side, the first of each stands for the row, as wide as its widest part.
 */
final class MatchCheck {
    private final CutJob job;
    private final List<String> problems = new ArrayList<>();

    private MatchCheck(CutJob job) {
        this.job = job;
    }

    static List<String> problems(CutJob job, CutPlan plan) {
        MatchCheck check = new MatchCheck(job);
        plan.used().forEach(check::rows);
        plan.used().forEach(check::sides);
        return check.problems;
    }

    private void rows(CutPiece piece) {
        Map<String, CutPart> before = new LinkedHashMap<>();
        for (CutPart part : job.parts()) {
            if (!part.row().isEmpty()) {
                CutPart last = before.put(part.row(), part);
                if (last != null) {
                    next(piece, part, last, last.length().plus(job.saw().kerf()), true);
                }
            }
        }
    }

    private void sides(CutPiece piece) {
        Map<String, List<List<CutPart>>> sets = new LinkedHashMap<>();
        Map<String, List<CutPart>> rows = new LinkedHashMap<>();
        for (CutPart part : job.parts()) {
            if (!part.beside().isEmpty()) {
                List<CutPart> line = part.row().isEmpty()
                        ? new ArrayList<>()
                        : rows.computeIfAbsent(part.row(), row -> new ArrayList<>());
                if (line.isEmpty()) {
                    sets.computeIfAbsent(part.beside(), set -> new ArrayList<>())
                            .add(line);
                }
                line.add(part);
            }
        }
        sets.values().forEach(lines -> {
            for (int i = 1; i < lines.size(); i++) {
                Length wide = lines.get(i - 1).stream().map(CutPart::width).reduce(Length.ZERO, Length::max);
                CutPart first = lines.get(i).get(0);
                next(piece, first, lines.get(i - 1).get(0), wide.plus(job.saw().kerf()), false);
            }
        });
    }

    /** @param along whether a part lies beyond the last along its grain, else across it */
    private void next(CutPiece piece, CutPart part, CutPart last, Length onward, boolean along) {
        piece.parts().stream()
                .filter(placed -> placed.part().equals(part))
                .filter(placed -> piece.parts().stream()
                        .filter(other -> other.part().equals(last))
                        .noneMatch(other -> lies(placed, other, onward, along)))
                .forEach(placed -> problems.add("%s %d: %s does not lie %s %s."
                        .formatted(
                                piece.stock().name(),
                                piece.number(),
                                part.name(),
                                along ? "in its row after" : "beside",
                                last.name())));
    }

    private static boolean lies(PlacedPart placed, PlacedPart other, Length onward, boolean along) {
        boolean inX = along != placed.turned();
        boolean beyond = inX
                ? placed.y().equals(other.y()) && placed.x().equals(other.x().plus(onward))
                : placed.x().equals(other.x()) && placed.y().equals(other.y().plus(onward));
        return other.turned() == placed.turned() && beyond;
    }

    /** Whether a tree holds parts of one set only, each once: cuts that take a set apart are not counted as a stage. */
    static boolean isOneSet(CutTree tree) {
        List<CutPart> parts = new ArrayList<>();
        gather(tree, parts);
        return !parts.isEmpty()
                && parts.stream().allMatch(Matches::isMatched)
                && parts.stream().map(MatchCheck::set).distinct().count() == 1
                && parts.stream().distinct().count() == parts.size();
    }

    private static List<String> set(CutPart part) {
        return part.beside().isEmpty() ? List.of("row", part.row()) : List.of("beside", part.beside());
    }

    private static void gather(CutTree tree, List<CutPart> parts) {
        if (tree instanceof CutTree.Cut cut) {
            gather(cut.first(), parts);
            gather(cut.second(), parts);
        } else if (tree instanceof CutTree.Part part) {
            parts.add(part.placed().part());
        }
    }
}
