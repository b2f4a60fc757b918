package scantling.cutting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import scantling.measure.Length;

/**
 * Parts that are cut one next to the other so that the grain, or the figure, runs through them: each row is planned as one
 * large part and taken apart when the plan is written. A row runs along the grain, its parts end to end; or across it, its
 * parts side by side. What lies side by side may be rows itself, which are then taken together first and apart last.
 */
final class Rows {
    private final CutJob job;
    private final boolean endToEnd;
    private final Map<String, List<CutPart>> members;
    private final Map<CutPart, List<CutPart>> byRow = new HashMap<>();
    private final CutJob merged;
    private final Map<CutPart, Integer> copies = new HashMap<>();

    private Rows(CutJob job, boolean endToEnd) {
        this.job = job;
        this.endToEnd = endToEnd;
        this.members = job.parts().stream()
                .filter(part -> !key(part).isEmpty())
                .collect(Collectors.groupingBy(this::key, LinkedHashMap::new, Collectors.toList()));
        List<CutPart> parts = new ArrayList<>(
                job.parts().stream().filter(part -> key(part).isEmpty()).toList());
        members.forEach((row, list) -> {
            CutPart whole = whole(row, list);
            byRow.put(whole, list);
            parts.add(whole);
        });
        this.merged = members.isEmpty() ? job : new CutJob(job.saw(), job.keep(), job.stock(), parts, job.wishes());
    }

    /** Rows along the grain. */
    static Rows endToEnd(CutJob job) {
        return new Rows(job, true);
    }

    /** Rows across the grain. */
    static Rows sideBySide(CutJob job) {
        return new Rows(job, false);
    }

    private String key(CutPart part) {
        return endToEnd ? part.row() : part.beside();
    }

    boolean isEmpty() {
        return members.isEmpty();
    }

    /** The job with every row as one part. */
    CutJob merged() {
        return merged;
    }

    /** The row that a part is in, as one part; the part itself when it is in none. */
    CutPart whole(CutPart part) {
        return byRow.entrySet().stream()
                .filter(entry -> entry.getValue().contains(part))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(part);
    }

    /** The job with those rows as one part whose parts fill it, and the parts of others by themselves. */
    CutJob evenMerged() {
        List<CutPart> parts = merged.parts().stream()
                .flatMap(part -> isEven(part) ? List.of(part).stream() : byRow.getOrDefault(part, List.of()).stream())
                .toList();
        return new CutJob(job.saw(), job.keep(), job.stock(), parts, job.wishes());
    }

    /** Whether nothing is left over when a row is taken apart. */
    private boolean isEven(CutPart whole) {
        return byRow.getOrDefault(whole, List.of()).stream()
                .allMatch(part -> level(part).equals(level(whole)));
    }

    boolean areEven() {
        return byRow.keySet().stream().allMatch(this::isEven);
    }

    /** The size of a part in the direction of its row. */
    private Length onward(CutPart part) {
        return endToEnd ? part.length() : part.width();
    }

    /** The size of a part square to its row. */
    private Length level(CutPart part) {
        return endToEnd ? part.width() : part.length();
    }

    private CutPart whole(String row, List<CutPart> list) {
        Length kerfs = job.saw().kerf().times(list.size() - 1);
        Length onward = list.stream().map(this::onward).reduce(kerfs, Length::plus);
        Length level = list.stream().map(this::level).reduce(Length.ZERO, Length::max);
        boolean turn = list.stream().allMatch(CutPart::turn);
        CutPart first = list.get(0);
        return endToEnd
                ? new CutPart("row " + row, onward, level, first.count(), turn, "", first.beside(), false)
                : new CutPart("side by side " + row, level, onward, first.count(), turn);
    }

    /** A plan of the merged job as a plan of the job itself. */
    CutPlan apart(CutPlan plan) {
        if (isEmpty()) {
            return plan;
        }
        List<CutPiece> used = plan.used().stream().map(this::apart).toList();
        List<CutPlan.LeftOut> leftOut =
                plan.leftOut().stream().flatMap(left -> leftOut(left).stream()).toList();
        return new CutPlan(plan.status(), plan.cost(), plan.lowerBound(), used, leftOut, plan.byMoney());
    }

    private List<CutPlan.LeftOut> leftOut(CutPlan.LeftOut left) {
        List<CutPart> row = byRow.getOrDefault(left.part(), List.of());
        if (row.isEmpty()) {
            return List.of(left);
        }
        CutPlan.LeftOut told = left.because(
                endToEnd
                        ? "It is cut in a row, %s long in all."
                        : "It is cut side by side with others, %s wide in all.",
                onward(left.part()));
        return row.stream().map(told::of).toList();
    }

    private CutPiece apart(CutPiece piece) {
        CutTree tree = apart(piece.tree());
        List<PlacedPart> parts = new ArrayList<>();
        List<CutTree.Offcut> offcuts = new ArrayList<>();
        gather(tree, parts, offcuts);
        return new CutPiece(piece.stock(), piece.number(), tree, parts, Steps.of(job, piece.stock(), tree), offcuts);
    }

    private static void gather(CutTree tree, List<PlacedPart> parts, List<CutTree.Offcut> offcuts) {
        if (tree instanceof CutTree.Cut cut) {
            gather(cut.first(), parts, offcuts);
            gather(cut.second(), parts, offcuts);
        } else if (tree instanceof CutTree.Part part) {
            parts.add(part.placed());
        } else if (tree instanceof CutTree.Offcut offcut && offcut.keep()) {
            offcuts.add(offcut);
        }
    }

    private CutTree apart(CutTree tree) {
        if (tree instanceof CutTree.Cut cut) {
            return new CutTree.Cut(cut.direction(), cut.position(), apart(cut.first()), apart(cut.second()));
        }
        if (tree instanceof CutTree.Part part && byRow.containsKey(part.placed().part())) {
            PlacedPart whole = part.placed();
            List<CutPart> row = byRow.getOrDefault(whole.part(), List.of());
            return row(row, whole, whole.x(), whole.y());
        }
        return tree;
    }

    /** Whether a row runs along the length of the stock as it lies there. */
    private boolean alongStock(PlacedPart whole) {
        return endToEnd != whole.turned();
    }

    private CutTree row(List<CutPart> row, PlacedPart whole, Length x, Length y) {
        CutPart part = row.get(0);
        CutTree one = member(part, whole, x, y);
        if (row.size() == 1) {
            return one;
        }
        Length next = onward(part).plus(job.saw().kerf());
        boolean along = alongStock(whole);
        CutTree rest = row(row.subList(1, row.size()), whole, along ? x.plus(next) : x, along ? y : y.plus(next));
        return new CutTree.Cut(along ? CutDirection.ACROSS : CutDirection.ALONG, onward(part), one, rest);
    }

    /** One of a row; one that does not reach as far as the others is cut to its size at the end. */
    private CutTree member(CutPart part, PlacedPart whole, Length x, Length y) {
        int copy = copies.merge(part, 1, Integer::sum);
        boolean turned = whole.turned();
        boolean along = alongStock(whole);
        CutTree.Part one = new CutTree.Part(new PlacedPart(
                part,
                copy,
                x,
                y,
                turned ? part.width() : part.length(),
                turned ? part.length() : part.width(),
                turned));
        Length reach = along ? whole.width() : whole.length();
        if (level(part).equals(reach)) {
            return one;
        }
        Length gone = level(part).plus(job.saw().kerf());
        Length left = reach.minus(gone);
        CutTree rest = left.isPositive() ? strip(part, along, x, y, gone, left) : new CutTree.Nothing();
        return new CutTree.Cut(along ? CutDirection.ALONG : CutDirection.ACROSS, level(part), one, rest);
    }

    private CutTree strip(CutPart part, boolean along, Length x, Length y, Length gone, Length left) {
        Length length = along ? onward(part) : left;
        Length width = along ? left : onward(part);
        return new CutTree.Offcut(
                along ? x : x.plus(gone),
                along ? y.plus(gone) : y,
                length,
                width,
                job.keep().worth(length, width));
    }

    /** What is wrong with the rows of a job, in words. */
    static List<String> problems(CutJob job) {
        Rows rows = endToEnd(job);
        List<String> problems = new ArrayList<>(rows.problems("row"));
        rows.members.forEach((row, list) -> {
            if (list.stream().map(CutPart::beside).distinct().count() > 1) {
                problems.add("row %s: all of it lies beside the same others, or none of it.".formatted(row));
            }
        });
        problems.addAll(sideBySide(rows.merged()).problems("beside"));
        return problems;
    }

    private List<String> problems(String field) {
        List<String> problems = new ArrayList<>();
        members.forEach((row, list) -> {
            if (list.stream().mapToInt(CutPart::count).distinct().count() > 1) {
                problems.add(
                        "%s %s: its parts have different counts; each row takes one of each.".formatted(field, row));
            }
            if (list.stream().map(CutPart::name).distinct().count() < list.size()) {
                problems.add(
                        "%s %s: two of its parts have one name; give each its own, so that their order can be told."
                                .formatted(field, row));
            }
        });
        return problems;
    }
}
