package scantling.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import scantling.construct.Finding;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.milling.Blank;
import scantling.piece.BenchLog;

/** Rough pieces that have left their stock: they are not planned again, and those that have become too small are told of. */
final class SawnBlanks {
    private final Map<String, List<BenchLog.Sawn>> byPart;
    private final LengthFormat format;

    SawnBlanks(List<BenchLog.Sawn> sawn, LengthFormat format) {
        this.byPart = sawn.stream().collect(Collectors.groupingBy(BenchLog.Sawn::path));
        this.format = format;
    }

    /** How many pieces of a blank are still to be sawn. */
    int left(Blank blank) {
        int sawn = byPart.getOrDefault(blank.part(), List.of()).stream()
                .mapToInt(BenchLog.Sawn::pieces)
                .sum();
        return Math.max(0, blank.pieces() - sawn);
    }

    /** Sawn pieces out of which the part, as the plan now needs it, no longer comes. */
    List<Finding> findings(List<Blank> blanks) {
        List<Finding> findings = new ArrayList<>();
        for (Blank blank : blanks) {
            if (!blank.alreadyCut()) {
                byPart.getOrDefault(blank.part(), List.of()).stream()
                        .filter(sawn -> isTooSmall(sawn, blank))
                        .findFirst()
                        .ifPresent(sawn -> findings.add(tooSmall(sawn, blank)));
            }
        }
        return findings;
    }

    /** Pieces side by side make the width together; what truing their edges takes is not counted, so none is told of wrongly. */
    private static boolean isTooSmall(BenchLog.Sawn sawn, Blank blank) {
        Length wide = sawn.width().times(blank.strips());
        return sawn.length().compareTo(blank.last().length().value()) < 0
                || sawn.width().isPositive()
                        && wide.compareTo(blank.last().width().value()) < 0;
    }

    private Finding tooSmall(BenchLog.Sawn sawn, Blank blank) {
        String sentence = "The rough piece for %s is sawn %s by %s; the plan now needs %s by %s of it."
                .formatted(
                        blank.part(),
                        format.format(sawn.length()),
                        format.formatWithUnit(sawn.width()),
                        format.format(blank.last().length().value()),
                        format.formatWithUnit(blank.last().width().value()));
        return new Finding(
                Finding.Severity.STOP,
                blank.part(),
                sentence,
                List.of(blank.last().length(), blank.last().width()),
                "what the bench has sawn",
                "Note it as spoilt, and another is planned; keep the piece as an offcut.");
    }
}
