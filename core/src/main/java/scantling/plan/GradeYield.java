package scantling.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import scantling.cutting.CutPiece;
import scantling.cutting.PlacedPart;
import scantling.cutting.Stock;
import scantling.piece.Supply;
import scantling.stock.Grade;

/**
 * How much of its boards a plan turns into parts, beside what their grade promises: the share of the poorer face that is in
 * clear pieces of the sizes the grade names. Parts may be smaller than those, and saw cuts count as lost, so a plan may be on
 * either side of it.
 */
final class GradeYield {
    private double face;
    private double parts;

    private GradeYield() {}

    /** One sentence for each grade that boards of the plan are known to be of. */
    static List<String> sentences(CutGroup group) {
        Map<Grade, GradeYield> byGrade = new LinkedHashMap<>();
        for (CutPiece piece : group.plan().used()) {
            grade(group, piece.stock())
                    .ifPresent(grade -> byGrade.computeIfAbsent(grade, one -> new GradeYield())
                            .add(piece));
        }
        List<String> sentences = new ArrayList<>();
        byGrade.forEach((grade, yield) -> sentences.add(yield.sentence(grade)));
        return sentences;
    }

    private void add(CutPiece piece) {
        face += piece.stock().length().toMillimetres() * piece.stock().width().toMillimetres();
        for (PlacedPart placed : piece.parts()) {
            parts += placed.length().toMillimetres() * placed.width().toMillimetres();
        }
    }

    private String sentence(Grade grade) {
        return String.format(
                Locale.ROOT,
                "Rough parts take %.0f %% of the face of the %s boards between their ends; the grade promises %s %%"
                        + " clear in pieces of %s or larger (%s).",
                100 * parts / face,
                grade.name(),
                percent(grade.clearYield()),
                String.join(" or ", grade.cuttings()),
                grade.source());
    }

    /** In thirds where it is not whole, as the rules print it: 83 1/3. */
    private static String percent(double share) {
        long thirds = Math.round(share * 300);
        return thirds % 3 == 0 ? Long.toString(thirds / 3) : "%d %d/3".formatted(thirds / 3, thirds % 3);
    }

    /** What a board of the rack or of the list says, else what its material is bought in. */
    private static Optional<Grade> grade(CutGroup group, Stock stock) {
        Optional<Grade> listed = group.grades().containsKey(stock.name())
                ? Optional.ofNullable(group.grades().get(stock.name()))
                : Optional.empty();
        Supply supply = group.material().supply();
        return listed.or(() -> stock.onHand() ? Optional.empty() : supply.grade());
    }
}
