package scantling.packet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import scantling.cutting.CutDirection;
import scantling.cutting.CutMarks;
import scantling.cutting.CutPiece;
import scantling.cutting.CutStep;
import scantling.drawing.CutSheet;
import scantling.drawing.CutSheet.Letter;
import scantling.drawing.CutSheet.Point;
import scantling.measure.LengthFormat;

/** The cuts of one piece of stock as a table: every setting once, behind it the cuts made with it; and the letters it names. */
final class CutLines {
    private final CutPiece piece;
    private final Map<String, String> marks;
    private final LengthFormat format;
    private final CutMarks letters;

    CutLines(CutPiece piece, Map<String, String> marks, LengthFormat format) {
        this.piece = piece;
        this.marks = marks;
        this.format = format;
        this.letters = CutMarks.of(piece.steps());
    }

    List<CutSheet.Setting> settings() {
        List<CutSheet.Setting> settings = new ArrayList<>();
        List<String> cuts = new ArrayList<>();
        String words = "";
        for (CutStep step : piece.steps()) {
            if (step.newSetting() && !cuts.isEmpty()) {
                settings.add(new CutSheet.Setting(words, cuts));
                cuts.clear();
            }
            words = step.newSetting() ? words(step) : words;
            cuts.add(cut(step));
        }
        if (!cuts.isEmpty()) {
            settings.add(new CutSheet.Setting(words, cuts));
        }
        return settings;
    }

    private String words(CutStep step) {
        return "%s %s"
                .formatted(
                        step.direction() == CutDirection.ALONG ? "rip, fence" : "crosscut, stop",
                        format.formatWithUnit(step.fence()));
    }

    private String cut(CutStep step) {
        String from = "%d  %s".formatted(step.number(), letters.mark(step.piece()));
        return step.isTrim() ? from + ": trim" : "%s: %s | %s".formatted(from, name(step.first()), name(step.second()));
    }

    private String name(String said) {
        if (CutMarks.isLabel(said)) {
            return letters.mark(said);
        }
        return switch (said) {
            case "offcut to keep" -> "offcut";
            case "nothing" -> "dust";
            default -> marks.getOrDefault(said, said);
        };
    }

    /** Letters at the corners of the pieces they name. @param lines every cut by the label of the piece it cuts */
    List<Letter> letters(Map<String, CutSheets.Line> lines) {
        Map<Point, Integer> taken = new HashMap<>();
        List<Letter> all = new ArrayList<>();
        lines.forEach((label, line) -> {
            if (!label.equals("1")) {
                CutSheet.Placed piece = line.piece();
                Point corner = new Point(piece.x(), piece.y());
                int behind = taken.merge(corner, 1, Integer::sum) - 1;
                all.add(new Letter(letters.mark(label), corner, piece.length(), piece.width(), behind));
            }
        });
        return all;
    }
}
