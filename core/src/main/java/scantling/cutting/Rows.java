package scantling.cutting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import scantling.measure.Length;

/**
 * Parts that are cut in a row, one after the other along the grain, so that the grain runs through them: each row is planned
 * as one long part and taken apart when the plan is written.
 */
final class Rows {
    private final CutJob job;
    private final Map<String, List<CutPart>> members;
    private final Map<CutPart, List<CutPart>> byRow = new HashMap<>();
    private final CutJob merged;
    private final Map<CutPart, Integer> copies = new HashMap<>();

    private Rows(CutJob job) {
        this.job = job;
        this.members = job.parts().stream()
                .filter(part -> !part.row().isEmpty())
                .collect(Collectors.groupingBy(CutPart::row, LinkedHashMap::new, Collectors.toList()));
        List<CutPart> parts = new ArrayList<>(
                job.parts().stream().filter(part -> part.row().isEmpty()).toList());
        members.forEach((row, list) -> {
            CutPart whole = whole(row, list);
            byRow.put(whole, list);
            parts.add(whole);
        });
        this.merged = new CutJob(job.saw(), job.keep(), job.stock(), parts, job.wishes());
    }

    static Rows of(CutJob job) {
        return new Rows(job);
    }

    boolean isEmpty() {
        return members.isEmpty();
    }

    /** The job with every row as one part. */
    CutJob merged() {
        return merged;
    }

    private CutPart whole(String row, List<CutPart> list) {
        Length length = list.stream().map(CutPart::length).reduce(Length.ZERO, Length::plus);
        Length kerfs = job.saw().kerf().times(list.size() - 1);
        Length width = list.stream().map(CutPart::width).reduce(Length.ZERO, Length::max);
        boolean turn = list.stream().allMatch(CutPart::turn);
        return new CutPart("row " + row, length.plus(kerfs), width, list.get(0).count(), turn);
    }

    /** A plan of the merged job as a plan of the job itself. */
    CutPlan apart(CutPlan plan) {
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
        String reason =
                "It is cut in a row, %s long in all. %s".formatted(left.part().length(), left.reason());
        return row.stream()
                .map(part -> new CutPlan.LeftOut(part, left.count(), reason))
                .toList();
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

    private CutTree row(List<CutPart> row, PlacedPart whole, Length x, Length y) {
        CutPart part = row.get(0);
        CutTree one = member(part, whole, x, y);
        if (row.size() == 1) {
            return one;
        }
        Length onward = part.length().plus(job.saw().kerf());
        CutTree rest = row(
                row.subList(1, row.size()),
                whole,
                whole.turned() ? x : x.plus(onward),
                whole.turned() ? y.plus(onward) : y);
        return new CutTree.Cut(whole.turned() ? CutDirection.ALONG : CutDirection.ACROSS, part.length(), one, rest);
    }

    /** One of a row; a narrower one is cut to its width at the end. */
    private CutTree member(CutPart part, PlacedPart whole, Length x, Length y) {
        int copy = copies.merge(part, 1, Integer::sum);
        boolean turned = whole.turned();
        CutTree.Part one = new CutTree.Part(new PlacedPart(
                part,
                copy,
                x,
                y,
                turned ? part.width() : part.length(),
                turned ? part.length() : part.width(),
                turned));
        Length across = turned ? whole.length() : whole.width();
        if (part.width().equals(across)) {
            return one;
        }
        Length gone = part.width().plus(job.saw().kerf());
        Length left = across.minus(gone);
        CutTree rest = left.isPositive() ? strip(part, turned, x, y, gone, left) : new CutTree.Nothing();
        return new CutTree.Cut(turned ? CutDirection.ACROSS : CutDirection.ALONG, part.width(), one, rest);
    }

    private CutTree strip(CutPart part, boolean turned, Length x, Length y, Length gone, Length left) {
        Length length = turned ? left : part.length();
        Length width = turned ? part.length() : left;
        return new CutTree.Offcut(
                turned ? x.plus(gone) : x,
                turned ? y : y.plus(gone),
                length,
                width,
                job.keep().worth(length, width));
    }

    /** What is wrong with the rows of a job, in words. */
    static List<String> problems(CutJob job) {
        Rows rows = new Rows(job);
        List<String> problems = new ArrayList<>();
        rows.members.forEach((row, list) -> {
            if (list.stream().mapToInt(CutPart::count).distinct().count() > 1) {
                problems.add("row %s: its parts have different counts; each row takes one of each.".formatted(row));
            }
        });
        return problems;
    }
}
