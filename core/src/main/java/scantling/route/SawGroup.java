package scantling.route;

import java.util.List;
import scantling.milling.Blank;
import scantling.piece.Material;

/**
 * What is sawn from one kind of stock.
 *
 * @param title for people: {@code cherry, 5/4 boards}
 * @param material of what
 * @param stock how many boards, sheets or sticks are opened
 * @param blanks what is cut from them
 */
public record SawGroup(String title, Material material, int stock, List<Blank> blanks) {
    /** Takes its own copy. */
    public SawGroup {
        blanks = List.copyOf(blanks);
    }
}
