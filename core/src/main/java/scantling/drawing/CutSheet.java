package scantling.drawing;

import java.util.List;
import scantling.measure.Length;

/**
 * One board, sheet or stick with what is cut from it, or several that are cut alike.
 *
 * @param title what it is: birch plywood 12, sheet 1 of 2
 * @param length of the stock along its grain
 * @param width of the stock across its grain
 * @param pieces what is cut from it
 * @param offcuts what is left and kept
 * @param cuts in the order they are made
 * @param note what can be said of the plan: this uses one sheet, no plan can use fewer
 * @param defects what no part may have
 * @param letters what is written on pieces that are cut again
 * @param settings the cuts by the setting they are made with, in their order
 * @param remarks how many are cut alike, and which gives which parts; which parts are matched, in their order
 * @param reasons why the plan is so, on the first sheet of a plan
 */
public record CutSheet(
        String title,
        Length length,
        Length width,
        List<Placed> pieces,
        List<Placed> offcuts,
        List<Cut> cuts,
        String note,
        List<Placed> defects,
        List<Letter> letters,
        List<Setting> settings,
        List<String> remarks,
        List<String> reasons) {
    /** Takes its own copies. */
    public CutSheet {
        pieces = List.copyOf(pieces);
        offcuts = List.copyOf(offcuts);
        cuts = List.copyOf(cuts);
        defects = List.copyOf(defects);
        letters = List.copyOf(letters);
        settings = List.copyOf(settings);
        remarks = List.copyOf(remarks);
        reasons = List.copyOf(reasons);
    }

    /** Clear stock with nothing but its drawing. */
    public CutSheet(
            String title,
            Length length,
            Length width,
            List<Placed> pieces,
            List<Placed> offcuts,
            List<Cut> cuts,
            String note) {
        this(title, length, width, pieces, offcuts, cuts, note, List.of(), List.of(), List.of(), List.of(), List.of());
    }

    /**
     * A letter on a piece that is cut again, near its end and its reference edge.
     *
     * @param mark the letter
     * @param at the corner of the piece
     * @param length along the stock
     * @param width across the stock
     * @param behind how many letters stand at the same corner already
     */
    public record Letter(String mark, Point at, Length length, Length width, int behind) {}

    /** A setting of fence or stop. @param words what is set to what @param cuts the cuts made with it, each with what comes off */
    public record Setting(String words, List<String> cuts) {
        /** Takes its own copy. */
        public Setting {
            cuts = List.copyOf(cuts);
        }
    }

    /**
     * A rectangle on the stock.
     *
     * @param label its mark
     * @param x from the left end
     * @param y from the lower edge
     * @param length along the stock
     * @param width across the stock
     */
    public record Placed(String label, Length x, Length y, Length length, Length width) {}

    /** A place on the stock. @param x from the left end @param y from the lower edge */
    public record Point(Length x, Length y) {}

    /**
     * One cut of the saw.
     *
     * @param order which it is, from 1
     * @param from where it begins
     * @param to where it ends
     * @param fence what the fence or the stop is set to
     */
    public record Cut(int order, Point from, Point to, Length fence) {}
}
