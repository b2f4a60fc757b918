package scantling.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import scantling.cutting.AlikePieces;
import scantling.cutting.CutDirection;
import scantling.cutting.CutPiece;
import scantling.cutting.CutPlan;
import scantling.cutting.CutStep;
import scantling.cutting.CutTree;
import scantling.cutting.Matches;
import scantling.cutting.PlacedPart;
import scantling.cutting.Saw;
import scantling.drawing.CutSheet;
import scantling.drawing.CutSheet.Cut;
import scantling.drawing.CutSheet.Placed;
import scantling.drawing.CutSheet.Point;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.plan.CutGroup;
import scantling.plan.CutReasons;
import scantling.stock.Defect;

/** Saw plans as they are drawn: every cut a line with its number, every piece a rectangle with its mark. */
final class CutSheets {
    /** How wide a stick is drawn; only its length counts. */
    private static final Length STICK = Length.mm(40);

    private static final Placed NO_PIECE = new Placed("", Length.ZERO, Length.ZERO, Length.ZERO, Length.ZERO);

    private final CutGroup group;
    private final Map<String, String> marks;

    private final LengthFormat format;

    private CutSheets(CutGroup group, Map<String, String> marks, LengthFormat format) {
        this.group = group;
        this.marks = marks;
        this.format = format;
    }

    /**
     * The diagrams of a saw plan.
     *
     * @param each every piece of stock by itself, in the order of the plan
     * @param alike pieces of stock that are cut alike drawn once, with their numbers
     */
    record Both(List<CutSheet> each, List<CutSheet> alike) {}

    /** @param marks by path of the part */
    static Both of(CutGroup group, Map<String, String> marks, LengthFormat format) {
        CutSheets sheets = new CutSheets(group, marks, format);
        List<CutPiece> used = group.plan().used();
        List<AlikePieces> alike = AlikePieces.of(used);
        List<AlikePieces> each =
                used.stream().map(piece -> new AlikePieces(List.of(piece))).toList();
        List<String> reasons = CutReasons.of(group, format);
        return new Both(sheets.drawn(each, reasons), sheets.drawn(alike, reasons));
    }

    private List<CutSheet> drawn(List<AlikePieces> all, List<String> reasons) {
        return all.stream()
                .map(each -> sheet(each, each.first().number() == 1 ? reasons : List.of()))
                .toList();
    }

    private CutSheet sheet(AlikePieces alike, List<String> reasons) {
        CutPiece piece = alike.first();
        Length width = width(piece);
        CutLines lines = new CutLines(alike, marks, format);
        Map<String, Line> traced = traced(piece, width);
        return new CutSheet(
                title(alike),
                piece.stock().length(),
                width,
                placed(piece, width, lines),
                offcuts(piece, width),
                cuts(piece, width, traced),
                note(alike),
                piece.stock().defects().stream()
                        .map(defect -> defect(defect, piece))
                        .toList(),
                lines.letters(traced),
                lines.settings(),
                remarks(alike, lines),
                reasons);
    }

    private List<String> remarks(AlikePieces alike, CutLines lines) {
        List<String> all = new ArrayList<>();
        if (alike.count() > 1) {
            all.add("Cut %d like this: where there is room, all of them at one setting before it is changed."
                    .formatted(alike.count()));
        }
        all.addAll(lines.copies());
        // Matched parts are often of one size and so of one mark: only their names tell them apart.
        alike.pieces().stream()
                .flatMap(piece -> Matches.told(piece, this::marked).stream())
                .distinct()
                .forEach(all::add);
        return all;
    }

    private String marked(String name) {
        return marks.containsKey(name) ? marks.get(name) + " " + name : name;
    }

    private static List<Placed> placed(CutPiece piece, Length width, CutLines lines) {
        List<Placed> placed = new ArrayList<>();
        for (PlacedPart part : piece.parts()) {
            placed.add(new Placed(
                    lines.mark(placed.size()),
                    part.x(),
                    part.y(),
                    part.length(),
                    isStick(piece) ? width : part.width()));
        }
        return placed;
    }

    private static List<Placed> offcuts(CutPiece piece, Length width) {
        return piece.offcuts().stream()
                .filter(CutTree.Offcut::keep)
                .map(left ->
                        new Placed("offcut", left.x(), left.y(), left.length(), isStick(piece) ? width : left.width()))
                .toList();
    }

    private static Placed defect(Defect defect, CutPiece piece) {
        Length width = piece.stock().width();
        Length far = defect.to().min(piece.stock().length());
        Length low = defect.edge() == Defect.Edge.FAR ? width.minus(defect.deep()) : Length.ZERO;
        return new Placed(
                "defect",
                defect.from(),
                low,
                far.minus(defect.from()),
                defect.edge() == Defect.Edge.WHOLE ? width : defect.deep());
    }

    private String title(AlikePieces alike) {
        int of = group.plan().used().size();
        return "%s: %s, %s of %d".formatted(group.title(), alike.first().stock().name(), alike.numbers(), of);
    }

    private String note(AlikePieces alike) {
        CutPiece piece = alike.first();
        CutPlan plan = group.plan();
        int used = plan.used().size();
        String kerf =
                "Kerf %s.".formatted(format.formatWithUnit(group.job().saw().kerf()));
        String proof = switch (plan.status()) {
            case OPTIMAL -> "This uses %d; no plan can cost less. %s".formatted(used, kerf);
            case SOUND ->
                "This uses %d; the best possible is at most %.0f %% cheaper. %s"
                        .formatted(used, Math.ceil(plan.gap() * 100), kerf);
            case PARTS_LEFT_OUT -> "This uses %d, and not all parts are in it. %s".formatted(used, kerf);
        };
        String rack = piece.offcuts().stream()
                .filter(CutTree.Offcut::keep)
                .map(left -> isStick(piece)
                        ? format.formatWithUnit(left.length())
                        : format.format(left.length()) + " x " + format.formatWithUnit(left.width()))
                .collect(Collectors.joining(", "));
        String told = rack.isEmpty()
                ? proof
                : "%s To the rack%s: %s.".formatted(proof, alike.count() == 1 ? "" : " from each", rack);
        return group.job().wishes().nearEdge() && !piece.stock().onHand()
                ? told + " Heavy: narrow pieces come off first, near the edge, and the rest stays on the table."
                : told;
    }

    private static boolean isStick(CutPiece piece) {
        return piece.stock().width().isZero();
    }

    private static Length width(CutPiece piece) {
        return isStick(piece) ? STICK : piece.stock().width();
    }

    private Region whole(CutPiece piece, Length width) {
        Length trim = group.job().saw().trimOf(piece.stock());
        Length edge = isStick(piece) ? Length.ZERO : trim;
        return new Region(trim, edge, piece.stock().length().minus(trim.times(2)), width.minus(edge.times(2)));
    }

    private Map<String, Line> traced(CutPiece piece, Length width) {
        Map<String, Line> lines = new LinkedHashMap<>();
        trace(piece.tree(), "1", whole(piece, width), group.job().saw(), lines);
        return lines;
    }

    private List<Cut> cuts(CutPiece piece, Length width, Map<String, Line> lines) {
        List<Line> trims =
                trims(piece, whole(piece, width), width, group.job().saw().trimOf(piece.stock()));
        List<Cut> cuts = new ArrayList<>();
        for (CutStep step : piece.steps()) {
            Line line = step.isTrim() ? trims.get(step.number() - 1) : lines.get(step.piece());
            if (line == null) {
                throw new IllegalStateException("No cut of the tree is labelled (%s).".formatted(step.piece()));
            }
            cuts.add(new Cut(step.number(), line.from(), line.to(), step.fence()));
        }
        return cuts;
    }

    private record Region(Length x, Length y, Length length, Length width) {}

    /** A cut as a line, and the piece that it cuts. */
    record Line(Point from, Point to, Placed piece) {
        private Line of(Region in) {
            return new Line(from, to, new Placed("", in.x(), in.y(), in.length(), in.width()));
        }
    }

    /** The trimming cuts, in the order that the steps number them: far end, near end, far edge, near edge; far ones not always. */
    private static List<Line> trims(CutPiece piece, Region in, Length width, Length trim) {
        if (!trim.isPositive()) {
            return List.of();
        }
        Length right = in.x().plus(in.length());
        Length top = in.y().plus(in.width());
        List<Line> lines = new ArrayList<>();
        if (trims(piece, CutDirection.ACROSS) > 1) {
            lines.add(upright(right, Length.ZERO, width));
        }
        lines.add(upright(in.x(), Length.ZERO, width));
        if (trims(piece, CutDirection.ALONG) > 1) {
            lines.add(level(top, in.x(), right));
        }
        if (!isStick(piece)) {
            lines.add(level(in.y(), in.x(), right));
        }
        return lines;
    }

    private static long trims(CutPiece piece, CutDirection direction) {
        return piece.steps().stream()
                .filter(step -> step.isTrim() && step.direction() == direction)
                .count();
    }

    private static void trace(CutTree tree, String label, Region in, Saw saw, Map<String, Line> lines) {
        if (!(tree instanceof CutTree.Cut cut)) {
            return;
        }
        Length first = cut.position();
        Length lost = first.plus(saw.kerf());
        if (cut.direction() == CutDirection.ACROSS) {
            lines.put(
                    label,
                    upright(in.x().plus(first), in.y(), in.y().plus(in.width())).of(in));
            trace(cut.first(), label + ".1", new Region(in.x(), in.y(), first, in.width()), saw, lines);
            Region beyond = new Region(in.x().plus(lost), in.y(), in.length().minus(lost), in.width());
            trace(cut.second(), label + ".2", beyond, saw, lines);
        } else {
            lines.put(
                    label,
                    level(in.y().plus(first), in.x(), in.x().plus(in.length())).of(in));
            trace(cut.first(), label + ".1", new Region(in.x(), in.y(), in.length(), first), saw, lines);
            Region beyond = new Region(
                    in.x(), in.y().plus(lost), in.length(), in.width().minus(lost));
            trace(cut.second(), label + ".2", beyond, saw, lines);
        }
    }

    private static Line upright(Length x, Length from, Length to) {
        return new Line(new Point(x, from), new Point(x, to), NO_PIECE);
    }

    private static Line level(Length y, Length from, Length to) {
        return new Line(new Point(from, y), new Point(to, y), NO_PIECE);
    }
}
