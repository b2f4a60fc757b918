package scantling.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import scantling.measure.Length;
import scantling.stock.Defect;

/**
 * Judges a plan without knowing how it was made. A saw that can only cut one piece in two, edge to edge, losing one kerf,
 * follows each tree; what comes out must be the parts that were asked for, once each, of exact size, where the plan says they
 * lie, with the grain as asked, from stock that exists, within the stages allowed, and for the money stated.
 */
public final class SawCheck {
    private record Rect(Length x, Length y, Length length, Length width) {
        boolean overlaps(Rect other, boolean stick) {
            boolean along = x.compareTo(other.x.plus(other.length)) < 0 && other.x.compareTo(x.plus(length)) < 0;
            boolean across = y.compareTo(other.y.plus(other.width)) < 0 && other.y.compareTo(y.plus(width)) < 0;
            return along && (stick || across);
        }
    }

    private final CutJob job;
    private final int stages;
    private final FirstCut firstCut;
    private final List<String> problems = new ArrayList<>();
    private final List<PlacedPart> found = new ArrayList<>();
    private String where = "";
    private boolean stick;

    private SawCheck(CutJob job) {
        this.job = job;
        this.stages = SawPlans.stagesFor(job);
        this.firstCut = SawPlans.firstCutFor(job);
    }

    /** What is wrong with a plan, in words; empty for a sound one. */
    public static List<String> problems(CutJob job, CutPlan plan) {
        SawCheck check = new SawCheck(job);
        check.money(plan);
        for (CutPiece piece : plan.used()) {
            check.piece(piece);
        }
        check.counts(plan);
        check.problems.addAll(MatchCheck.problems(job, plan));
        return List.copyOf(check.problems);
    }

    private void money(CutPlan plan) {
        long cost = 0;
        Map<Stock, Integer> used = new LinkedHashMap<>();
        for (CutPiece piece : plan.used()) {
            cost += piece.stock().cost();
            used.merge(piece.stock(), 1, Integer::sum);
        }
        if (cost != plan.cost()) {
            say("The plan says it costs (%d), but its stock costs (%d).", plan.cost(), cost);
        }
        if (plan.lowerBound() > plan.cost() && plan.leftOut().isEmpty()) {
            say(
                    "The plan costs (%d), less than what is called the least possible (%d).",
                    plan.cost(), plan.lowerBound());
        }
        used.forEach((stock, count) -> {
            int have = job.stock().stream()
                    .filter(stock::equals)
                    .mapToInt(s -> s.count().orElse(Integer.MAX_VALUE))
                    .reduce(0, (a, b) -> (int) Math.min(Integer.MAX_VALUE, (long) a + b));
            if (count > have) {
                say("The plan uses (%d) of (%s), but there are (%d).", count, stock.name(), have);
            }
        });
    }

    private void piece(CutPiece piece) {
        where = "%s %d".formatted(piece.stock().name(), piece.number());
        stick = piece.stock() instanceof Stock.StickStock;
        Length trim = job.saw().trimOf(piece.stock());
        Length edge = stick ? Length.ZERO : trim;
        Rect whole = new Rect(
                trim,
                edge,
                piece.stock().length().minus(trim.times(2)),
                piece.stock().width().minus(edge.times(2)));
        int before = found.size();
        int level = piece.tree() instanceof CutTree.Cut cut && !firstCut.allows(cut.direction()) ? 1 : 0;
        follow(piece.tree(), whole, level, true, CutDirection.ALONG);
        List<PlacedPart> here = found.subList(before, found.size());
        if (!here.equals(piece.parts())) {
            say("%s: the parts listed are not those of the cuts.", where);
        }
        overlaps(here);
        here.forEach(placed -> defects(placed, piece.stock()));
    }

    /** No part has a piece of a defect, told by the corners of both. */
    private void defects(PlacedPart placed, Stock stock) {
        for (Defect one : stock.defects()) {
            Length low = one.edge() == Defect.Edge.FAR ? stock.width().minus(one.deep()) : Length.ZERO;
            Length high = one.edge() == Defect.Edge.NEAR ? one.deep() : stock.width();
            Rect bad = new Rect(one.from(), low, one.to().minus(one.from()), high.minus(low));
            if (rect(placed).overlaps(bad, false)) {
                say(
                        "%s: %s lies over the defect from (%s) to (%s).",
                        where, placed.part().name(), one.from(), one.to());
            }
        }
    }

    private void follow(CutTree tree, Rect rect, int level, boolean top, CutDirection above) {
        if (tree instanceof CutTree.Cut cut) {
            int here = top || cut.direction() != above ? level + 1 : level;
            saw(cut, rect, here);
        } else if (tree instanceof CutTree.Part part) {
            part(part.placed(), rect);
        } else if (tree instanceof CutTree.Offcut offcut) {
            if (!rect.equals(new Rect(offcut.x(), offcut.y(), offcut.length(), offcut.width()))) {
                say("%s: an offcut is written as (%s) but is (%s).", where, offcut, rect);
            }
        } else if (rect.length().isPositive() && (rect.width().isPositive() || stick)) {
            say("%s: something is left (%s) where the plan says nothing is.", where, rect);
        }
    }

    private void saw(CutTree.Cut cut, Rect rect, int level) {
        boolean trimming = cut.first() instanceof CutTree.Part
                && !(cut.second() instanceof CutTree.Part)
                && !(cut.second() instanceof CutTree.Cut);
        if (stages > 0 && level > stages + (trimming ? 1 : 0) && !MatchCheck.isOneSet(cut)) {
            say("%s: a cut at level (%d), but only (%d) are allowed.", where, level, stages);
        }
        boolean across = cut.direction() == CutDirection.ACROSS;
        Length size = across ? rect.length() : rect.width();
        Length gone = cut.position().plus(job.saw().kerf());
        if (!cut.position().isPositive() || cut.position().compareTo(size) >= 0) {
            say("%s: a cut at (%s) does not meet a piece of (%s).", where, cut.position(), size);
            return;
        }
        Length rest = size.minus(gone).max(Length.ZERO);
        Rect first = across
                ? new Rect(rect.x(), rect.y(), cut.position(), rect.width())
                : new Rect(rect.x(), rect.y(), rect.length(), cut.position());
        Rect second = across
                ? new Rect(rect.x().plus(gone), rect.y(), rest, rect.width())
                : new Rect(rect.x(), rect.y().plus(gone), rect.length(), rest);
        follow(cut.first(), first, level, false, cut.direction());
        follow(cut.second(), second, level, false, cut.direction());
    }

    private void part(PlacedPart placed, Rect rect) {
        found.add(placed);
        CutPart part = placed.part();
        if (!rect.equals(new Rect(placed.x(), placed.y(), placed.length(), placed.width()))) {
            say("%s: %s is written at (%s) but comes out as (%s).", where, part.name(), placed, rect);
        }
        Length length = placed.turned() ? placed.width() : placed.length();
        Length width = placed.turned() ? placed.length() : placed.width();
        if (!length.equals(part.length()) || (!stick && !width.equals(part.width()))) {
            say("%s: %s comes out as (%s) by (%s).", where, part.name(), length, width);
        }
        if (placed.turned() && !part.turn()) {
            say("%s: %s lies across the grain.", where, part.name());
        }
    }

    private void overlaps(List<PlacedPart> parts) {
        for (int i = 0; i < parts.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (rect(parts.get(i)).overlaps(rect(parts.get(j)), stick)) {
                    say(
                            "%s: %s and %s overlap.",
                            where,
                            parts.get(i).part().name(),
                            parts.get(j).part().name());
                }
            }
        }
    }

    private static Rect rect(PlacedPart p) {
        return new Rect(p.x(), p.y(), p.length(), p.width());
    }

    private void counts(CutPlan plan) {
        Map<CutPart, Integer> wanted = new LinkedHashMap<>();
        job.parts().forEach(p -> wanted.merge(p, p.count(), Integer::sum));
        found.forEach(p -> wanted.merge(p.part(), -1, Integer::sum));
        plan.leftOut().forEach(l -> wanted.merge(l.part(), -l.count(), Integer::sum));
        wanted.forEach((part, missing) -> {
            if (missing != 0) {
                say("%s: (%d) copies are neither cut nor said to be left out.", part.name(), missing);
            }
        });
        if ((plan.status() == CutPlan.Status.PARTS_LEFT_OUT) == plan.leftOut().isEmpty()) {
            say("The status (%s) does not fit the parts left out.", plan.status());
        }
    }

    private void say(String words, Object... values) {
        problems.add(words.formatted(values));
    }
}
