package scantling.packet;

import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;
import scantling.drawing.Drawing;

/**
 * A part drawn, with what is done to it.
 *
 * @param group the part
 * @param drawing its drawing
 * @param work what is done to it, line by line
 * @param settings the machine settings it is done with
 * @param chart its holes by bit and stop, each set once; empty for a part with few
 */
public record PartSheet(
        PartGroup group,
        Drawing drawing,
        List<WorkTable.Row> work,
        List<WorkPages.SettingRow> settings,
        List<ChartRow> chart) {
    private static final Pattern TAG = Pattern.compile("<[^>]*>");
    /** Letters of one figure. */
    private static final int FEW = 12;

    /** Takes its own copies. */
    public PartSheet {
        work = List.copyOf(work);
        settings = List.copyOf(settings);
        chart = List.copyOf(chart);
    }

    /**
     * One setting of a part's drilling chart.
     *
     * @param surface that is drilled
     * @param bit with its machine
     * @param depth that the stop is set to, as markup
     * @param fence how far, as markup
     * @param fenceAt from which mark the fence stands so far
     * @param from which mark the holes are told
     * @param at their distances in their order, as markup
     */
    public record ChartRow(
            String surface, String bit, String depth, String fence, String fenceAt, String from, String at) {}

    /** Whether anything is placed from the near end; a column without a figure is left out. */
    public boolean hasAlong() {
        return has(WorkTable.Row::along);
    }

    /** Whether anything is placed from the face edge. */
    public boolean hasAcross() {
        return has(WorkTable.Row::across);
    }

    /** Whether anything is placed from the face side. */
    public boolean hasThrough() {
        return has(WorkTable.Row::through);
    }

    private boolean has(Function<WorkTable.Row, String> column) {
        return longest(column) > 0;
    }

    /** Letters of the longest cell, markup left out. */
    private int longest(Function<WorkTable.Row, String> column) {
        return work.stream()
                .mapToInt(row -> TAG.matcher(column.apply(row)).replaceAll("").length())
                .max()
                .orElse(0);
    }

    /** How much room its columns of places have, as styles: the fewer there are, and the shorter one of them, the wider stand the others. */
    public String room() {
        if (hasAlong() != hasAcross()) {
            return "widest";
        }
        int along = longest(WorkTable.Row::along);
        int across = longest(WorkTable.Row::across);
        String one =
                along <= FEW && across > 2 * FEW ? " byacross" : across <= FEW && along > 2 * FEW ? " byalong" : "";
        return ((hasThrough() ? "" : "wider") + one).strip();
    }
}
