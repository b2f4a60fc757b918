package scantling.piece;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import scantling.measure.Dim;
import scantling.stock.Defect;
import scantling.stock.Grade;
import scantling.stock.RoughClass;

/**
 * In which sizes a material is to be had, what each costs and how many there are, as the maker lists it.
 *
 * @param sheets sizes of sheets; the plan chooses among them
 * @param boards a yard's boards; the plan chooses which to buy
 * @param grade the grade boards are bought in, where said
 */
public record Supply(List<Sheets> sheets, List<Boards> boards, Optional<Grade> grade) {
    /** Nothing is listed. */
    public static final Supply NONE = new Supply(List.of(), List.of(), Optional.empty());

    /** Takes its own copies. */
    public Supply {
        sheets = List.copyOf(sheets);
        boards = List.copyOf(boards);
    }

    /** Whether money can decide: every size has a price of its own, or the material has one. */
    public boolean isPriced(Optional<Long> price) {
        return price.isPresent()
                || sheets.stream().allMatch(one -> one.price().isPresent())
                        && boards.stream().allMatch(one -> one.price().isPresent())
                        && !(sheets.isEmpty() && boards.isEmpty());
    }

    /**
     * Sheets of one size.
     *
     * @param name what the maker calls them, where said
     * @param length along the grain
     * @param width across the grain
     * @param count how many there are, or empty for as many as wanted
     * @param price of one, in hundredths of the money unit, where said
     * @param trimmed whether its edges are sawn, so that nothing is trimmed off them
     */
    public record Sheets(
            Optional<String> name, Dim length, Dim width, OptionalInt count, Optional<Long> price, boolean trimmed) {}

    /**
     * Boards of one size: mostly one.
     *
     * @param name what the maker calls it, where said
     * @param length along the grain, checks included
     * @param width across the grain
     * @param count how many there are
     * @param rough the thickness it is sold as, where said
     * @param grade its grade, where said
     * @param price of one board foot, in hundredths of the money unit, where said
     * @param defects what no part may have
     */
    public record Boards(
            Optional<String> name,
            Dim length,
            Dim width,
            int count,
            Optional<RoughClass> rough,
            Optional<Grade> grade,
            Optional<Long> price,
            List<Defect> defects) {
        /** Takes its own copy. */
        public Boards {
            defects = List.copyOf(defects);
        }
    }
}
