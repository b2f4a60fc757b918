package scantling.packet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import scantling.cutting.AlikePieces;
import scantling.cutting.CutDirection;
import scantling.cutting.CutMarks;
import scantling.cutting.CutStep;
import scantling.drawing.CutSheet;
import scantling.drawing.CutSheet.Letter;
import scantling.drawing.CutSheet.Point;
import scantling.measure.LengthFormat;

/**
 * The cuts of pieces of stock that are cut alike as a table: every setting once, behind it the cuts made with it; and the
 * letters it names.
 */
final class CutLines {
    /** More marks than these at one place are not written there; which copy gives which part is told below. */
    private static final int MOST_MARKS = 3;

    private final AlikePieces alike;
    private final Map<String, String> marks;
    private final LengthFormat format;
    private final CutMarks letters;

    CutLines(AlikePieces alike, Map<String, String> marks, LengthFormat format) {
        this.alike = alike;
        this.marks = marks;
        this.format = format;
        this.letters = CutMarks.of(alike.first().steps());
    }

    List<CutSheet.Setting> settings() {
        List<CutSheet.Setting> settings = new ArrayList<>();
        List<String> cuts = new ArrayList<>();
        String words = "";
        for (CutStep step : alike.first().steps()) {
            if (step.newSetting() && !cuts.isEmpty()) {
                settings.add(new CutSheet.Setting(words, cuts));
                cuts.clear();
            }
            words = step.newSetting() ? words(step) : words;
            cuts.add(cut(step.number() - 1, alike));
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

    private String cut(int at, AlikePieces of) {
        CutStep step = of.first().steps().get(at);
        String from = "%d  %s".formatted(step.number(), letters.mark(step.piece()));
        return step.isTrim()
                ? from + ": trim"
                : "%s: %s | %s".formatted(from, names(at, of, CutStep::first), names(at, of, CutStep::second));
    }

    private String names(int at, AlikePieces of, Function<CutStep, String> side) {
        return either(
                of.pieces().stream().map(piece -> name(side.apply(piece.steps().get(at)))));
    }

    /** What lies at one place in several copies. */
    private static String either(Stream<String> names) {
        List<String> different = names.distinct().toList();
        return different.size() <= MOST_MARKS
                ? String.join("/", different)
                : different.get(0) + "/" + different.get(1) + "/...";
    }

    /** The mark of a part that lies at one place, or its marks. @param at which part, in the order of the tree */
    String mark(int at) {
        return either(alike.pieces().stream()
                .map(piece -> name(piece.parts().get(at).part().name())));
    }

    /** Which copies give which parts, where these differ. */
    List<String> copies() {
        List<AlikePieces> by = alike.byParts(this::name);
        if (by.size() == 1) {
            return List.of();
        }
        List<Integer> differing = alike.differing(this::name);
        return by.stream()
                .map(these -> "In %s: %s.".formatted(these.numbers(), parts(these, differing)))
                .toList();
    }

    private String parts(AlikePieces these, List<Integer> differing) {
        return differing.isEmpty()
                ? these.first().parts().stream()
                        .map(placed -> name(placed.part().name()))
                        .collect(Collectors.joining(", "))
                : differing.stream()
                        .map(at -> "cut %d, %s | %s"
                                .formatted(at + 1, names(at, these, CutStep::first), names(at, these, CutStep::second)))
                        .collect(Collectors.joining("; "));
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
