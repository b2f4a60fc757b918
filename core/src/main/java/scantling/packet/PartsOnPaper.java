package scantling.packet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import scantling.measure.LengthFormat;

/**
 * What of a part stands on one sheet of paper: its drawing always with its table. A table too long for the sheet of its
 * drawing goes on on the next, under its mark. Heights are reckoned from the type of {@code print.css}, a little too high
 * rather than too low, for the shorter of the usual sheets.
 */
public final class PartsOnPaper {
    /** Between the margins of the shorter sheet there are 252 mm. */
    private static final double SHEET_MM = 249;
    /** The heading of the section and the sentence below it stand above the first part. */
    private static final double HEADING_MM = 22;

    private static final double LINE_MM = 4;
    private static final double ROW_MM = 1.2;
    private static final double HEAD_MM = 9.5;
    private static final double CAPTION_MM = 1.5;
    private static final double SETS_MM = 3.5;
    private static final double BELOW_MM = 4;
    /** As the tables' type is set: a mean letter, a figure, a point or a space, and all of what is left over behind a figure. */
    private static final double LETTER_MM = 1.5;

    private static final double DIGIT_MM = 1.75;
    private static final double NARROW_MM = 0.85;
    private static final double LEFTOVER_MM = 5;

    private static final double WIDE_MM = 180;
    private static final double FOR_MM = 31;
    private static final double PLACE_MM = 21;
    private static final double MORE_INCH_MM = 3;
    private static final double WIDER_MM = 9;
    private static final double WIDEST_MM = 24;
    private static final double SHIFTED_MM = 9;
    private static final double WIDER_SHIFTED_MM = 14;
    private static final double WHAT_MM = 12;
    private static final double CHART_MM = 72;

    private static final Pattern TAG = Pattern.compile("<[^>]*>");
    private static final Pattern LEFTOVER = Pattern.compile("<span class=\"leftover\">[^<]*</span>");

    private final double place;

    private PartsOnPaper(LengthFormat format) {
        this.place = PLACE_MM + (format.inches() ? MORE_INCH_MM : 0);
    }

    /**
     * A part as it is printed.
     *
     * @param part that is drawn
     * @param rows of its table that stand with the drawing
     * @param more the rest of the table, sheet by sheet; usually none
     * @param charted whether the drilling chart stands with them
     */
    public record Printed(PartSheet part, List<WorkTable.Row> rows, List<List<WorkTable.Row>> more, boolean charted) {}

    static List<Printed> of(List<PartSheet> parts, LengthFormat format) {
        PartsOnPaper paper = new PartsOnPaper(format);
        List<Printed> all = new ArrayList<>();
        for (PartSheet part : parts) {
            all.add(paper.printed(part, all.isEmpty() ? SHEET_MM - HEADING_MM : SHEET_MM));
        }
        return List.copyOf(all);
    }

    private Printed printed(PartSheet part, double room) {
        double left = room - drawing(part) - HEAD_MM;
        double end = sets(part) + BELOW_MM;
        List<List<WorkTable.Row>> sheets = new ArrayList<>(List.of(new ArrayList<>()));
        double after =
                part.work().stream().mapToDouble(row -> height(part, row)).sum();
        for (WorkTable.Row row : part.work()) {
            double high = height(part, row);
            List<WorkTable.Row> here = sheets.get(sheets.size() - 1);
            // Short of the whole rest with its settings, a sheet is filled row by row.
            if (after + end > left && high > left - end && !here.isEmpty()) {
                sheets.add(new ArrayList<>());
                left = SHEET_MM - HEAD_MM - LINE_MM;
            }
            sheets.get(sheets.size() - 1).add(row);
            left -= high;
            after -= high;
        }
        boolean charted = part.chart().isEmpty() || left - end >= chart(part);
        return new Printed(part, sheets.get(0), sheets.subList(1, sheets.size()), charted);
    }

    private static double drawing(PartSheet part) {
        String caption = part.drawing().title() + ". Scale 1 : 12.5";
        return part.drawing().paperHeight() + CAPTION_MM + lines(caption, WIDE_MM) * LINE_MM;
    }

    private double height(PartSheet part, WorkTable.Row row) {
        int lines = Stream.of(
                        lines(row.along(), width(part.room(), "byalong", "byacross")),
                        lines(row.across(), width(part.room(), "byacross", "byalong")),
                        lines(row.size(), PLACE_MM),
                        lines(row.purpose(), FOR_MM),
                        lines(row.what(), WHAT_MM),
                        lines(row.surface(), WHAT_MM))
                .max(Comparator.naturalOrder())
                .orElse(1);
        return lines * LINE_MM + ROW_MM;
    }

    /** A column of places. @param mine the style that widens it @param other the style that narrows it */
    private double width(String room, String mine, String other) {
        if (room.contains("widest")) {
            return place + WIDEST_MM;
        }
        double wide = room.contains("wider") ? place + WIDER_MM : place;
        double shift = room.contains("wider") ? WIDER_SHIFTED_MM : SHIFTED_MM;
        return room.contains(mine) ? wide + shift : room.contains(other) ? wide - shift : wide;
    }

    private static double sets(PartSheet part) {
        StringBuilder all = new StringBuilder();
        part.settings()
                .forEach(each -> all.append("S99 ")
                        .append(each.machine())
                        .append(", ")
                        .append(each.sizes())
                        .append(". "));
        return lines(all.toString(), WIDE_MM) * LINE_MM + SETS_MM;
    }

    private static double chart(PartSheet part) {
        double rows = part.chart().stream()
                .mapToDouble(row -> lines(row.at(), CHART_MM) * LINE_MM + ROW_MM)
                .sum();
        return rows == 0 ? 0 : rows + 2 * LINE_MM + SETS_MM + CAPTION_MM;
    }

    /** How many lines words take in a column; a word longer than it is broken. */
    private static int lines(String markup, double wide) {
        int lines = 1;
        double at = 0;
        String words = TAG.matcher(LEFTOVER.matcher(markup).replaceAll("~")).replaceAll("");
        for (String word : words.split(" ", -1)) {
            double long1 = word.chars().mapToDouble(PartsOnPaper::letter).sum();
            if (at > 0 && at + long1 > wide) {
                lines++;
                at = 0;
            }
            lines += (int) (long1 / wide);
            at += long1 % wide + NARROW_MM;
        }
        return lines;
    }

    private static double letter(int letter) {
        return letter == '~'
                ? LEFTOVER_MM
                : Character.isDigit(letter) ? DIGIT_MM : ",. \u00a0".indexOf(letter) >= 0 ? NARROW_MM : LETTER_MM;
    }
}
