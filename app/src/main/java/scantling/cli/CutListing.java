package scantling.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import scantling.cutting.AlikePieces;
import scantling.cutting.CutDirection;
import scantling.cutting.CutJob;
import scantling.cutting.CutMarks;
import scantling.cutting.CutPiece;
import scantling.cutting.CutPlan;
import scantling.cutting.CutStep;
import scantling.cutting.CutTree;
import scantling.cutting.Matches;
import scantling.cutting.Stock;
import scantling.measure.Length;
import scantling.measure.LengthFormat;

/** A saw plan to cut from: every setting once, under it the cuts made with it, at the end what goes back to the rack. */
final class CutListing {
    private final LengthFormat format;
    private final List<String> lines = new ArrayList<>();

    private CutListing(LengthFormat format) {
        this.format = format;
    }

    static List<String> lines(CutJob job, CutPlan plan, LengthFormat format) {
        return new CutListing(format).lines(job, plan);
    }

    private List<String> lines(CutJob job, CutPlan plan) {
        AlikePieces.of(plan.used()).forEach(this::alike);
        lines.add("");
        lines.add(
                "kerf %s; a setting is the size between fence or stop and blade; left of the bar is what lies there; write the letters on the pieces"
                        .formatted(length(job.saw().kerf())));
        return lines;
    }

    private void alike(AlikePieces alike) {
        CutPiece piece = alike.first();
        Stock stock = piece.stock();
        lines.add("");
        lines.add("%s. %s, %s%s%s"
                .formatted(
                        alike.numbers(),
                        stock.name(),
                        length(stock.length()),
                        wide(stock),
                        alike.count() == 1 ? "" : ": cut %d like this".formatted(alike.count())));
        CutMarks marks = CutMarks.of(piece.steps());
        piece.steps().forEach(step -> step(step, marks));
        piece.offcuts().stream()
                .filter(CutTree.Offcut::keep)
                .forEach(left -> lines.add("   to the rack%s: %s%s"
                        .formatted(
                                alike.count() == 1 ? "" : " from each",
                                length(left.length()),
                                left.width().isZero() ? "" : " x " + length(left.width()))));
        copies(alike, marks);
        alike.pieces().stream()
                .flatMap(each -> Matches.told(each, name -> name).stream())
                .distinct()
                .forEach(told -> lines.add("   " + told));
    }

    /** Where the parts of the copies differ: what each has instead. */
    private void copies(AlikePieces alike, CutMarks marks) {
        List<Integer> differing = alike.differing(name -> name);
        alike.byParts(name -> name).stream().skip(1).forEach(these -> {
            lines.add("   but in %s:".formatted(these.numbers()));
            differing.forEach(at -> lines.add(cut(these.first().steps().get(at), marks)));
        });
    }

    private void step(CutStep step, CutMarks marks) {
        if (step.newSetting()) {
            boolean along = step.direction() == CutDirection.ALONG;
            lines.add("   %s %s".formatted(along ? "rip, fence" : "crosscut, stop", length(step.fence())));
        }
        lines.add(cut(step, marks));
    }

    private static String cut(CutStep step, CutMarks marks) {
        return String.format(
                Locale.ROOT,
                "   %4d  %s: %s",
                step.number(),
                marks.mark(step.piece()),
                step.isTrim() ? "trim" : marks.mark(step.first()) + " | " + marks.mark(step.second()));
    }

    private String wide(Stock stock) {
        return stock.width().isZero() ? "" : " x " + length(stock.width());
    }

    private String length(Length length) {
        return format.formatWithUnit(length);
    }
}
