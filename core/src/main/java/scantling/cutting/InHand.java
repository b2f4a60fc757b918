package scantling.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.measure.Length;

/** A piece that is on the bench after some cuts. */
record InHand(String label, CutTree tree, Stock.Place place, boolean farEnd, boolean farEdge) {
    private Length length() {
        return place.length();
    }

    private Length width() {
        return place.width();
    }

    /** All pieces after some cuts of a piece of stock. */
    static List<InHand> after(CutJob job, CutPiece piece, int made) {
        Length trim = job.saw().trimOf(piece.stock());
        boolean stick = piece.stock() instanceof Stock.StickStock;
        Map<String, InHand> there = new LinkedHashMap<>();
        there.put(
                "1",
                new InHand(
                        "1",
                        piece.tree(),
                        new Stock.Place(
                                trim,
                                stick ? Length.ZERO : trim,
                                piece.stock().length().minus(trim.times(2)),
                                stick ? Length.ZERO : piece.stock().width().minus(trim.times(2))),
                        trim.isPositive(),
                        trim.isPositive() && !stick));
        for (CutStep step : piece.steps().subList(0, made)) {
            if (!step.isTrim()) {
                Optional.ofNullable(there.remove(step.piece()))
                        .ifPresent(cut -> cut.sawn(job.saw()).forEach(each -> there.put(each.label(), each)));
            }
        }
        return List.copyOf(there.values());
    }

    private List<InHand> sawn(Saw saw) {
        CutTree.Cut cut = (CutTree.Cut) tree;
        boolean across = cut.direction() == CutDirection.ACROSS;
        Length at = cut.position();
        Length gone = at.plus(saw.kerf());
        Length beyond = (across ? length() : width()).minus(gone).max(Length.ZERO);
        Stock.Place near = new Stock.Place(place.x(), place.y(), across ? at : length(), across ? width() : at);
        Stock.Place far = new Stock.Place(
                across ? place.x().plus(gone) : place.x(),
                across ? place.y() : place.y().plus(gone),
                across ? beyond : length(),
                across ? width() : beyond);
        InHand first = new InHand(label + ".1", cut.first(), near, farEnd && !across, farEdge && across);
        InHand second = new InHand(label + ".2", cut.second(), far, farEnd, farEdge);
        return List.of(first, second);
    }

    Rest.OnBench told() {
        Optional<CutPart> part =
                tree instanceof CutTree.Part free ? Optional.of(free.placed().part()) : Optional.empty();
        boolean more = tree instanceof CutTree.Cut;
        boolean keep = more || tree instanceof CutTree.Offcut offcut && offcut.keep();
        return new Rest.OnBench(label, part, more, keep, place);
    }

    Stock asStock(CutPiece piece) {
        String mark = tree instanceof CutTree.Offcut
                ? "offcut %s x %s".formatted(length(), width())
                : "piece " + CutMarks.of(piece.steps()).mark(label);
        String name = "%s of %s, number %d".formatted(mark, piece.stock().name(), piece.number());
        return piece.stock().inHand(name, place);
    }

    /** A far end or edge that was not worth trimming has to be trimmed now, because a part may come to lie against it. */
    List<String> notes(CutJob job, CutPiece piece) {
        List<String> notes = new ArrayList<>();
        String name = asStock(piece).name();
        if (farEnd && trims(piece, CutDirection.ACROSS) < 2) {
            notes.add("%s still has the factory end: trim it to a length of %s before it is cut."
                    .formatted(name, length()));
        }
        if (farEdge && trims(piece, CutDirection.ALONG) < 2) {
            notes.add("%s still has the factory edge: trim it to a width of %s before it is cut."
                    .formatted(name, width()));
        }
        return notes;
    }

    private static long trims(CutPiece piece, CutDirection direction) {
        return piece.steps().stream()
                .filter(step -> step.isTrim() && step.direction() == direction)
                .count();
    }
}
