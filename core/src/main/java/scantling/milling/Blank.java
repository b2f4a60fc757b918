package scantling.milling;

import java.util.List;
import java.util.Optional;
import scantling.measure.Dim;
import scantling.piece.Material;
import scantling.stock.RoughClass;

/**
 * The rough thing that one part is milled from. To be cut from stock: {@code strips} times {@code layers} pieces, each
 * as long as the rough length, as wide as the strip width, of the rough thickness.
 *
 * @param part path of the part
 * @param material what it is of
 * @param rough sizes off the saw of the whole blank, strips glued: its thickness is that of the stock, for a laminated
 *     blank of each layer
 * @param roughClass what thickness of rough lumber to take; nothing for sheets and sticks
 * @param strips how many pieces side by side make its width; 1 when it is one board
 * @param stripWidth rough width of each of them, what truing the edges takes included
 * @param layers how many pieces on one another make its thickness; 1 when it is not laminated
 * @param layerThickness what each layer is planed to before it is laminated; the first milled thickness for one layer
 * @param keptLong whether its final sizes are still over the finished ones, to be trimmed to its place
 * @param first sizes after the first milling, before the wood rests
 * @param last sizes after the final milling; the finished sizes, or over them when kept long
 * @param alreadyCut whether the bench has measured its length or width: there is nothing left to mill
 * @param notes what to mind, in sentences
 */
public record Blank(
        String part,
        Material material,
        Sizes rough,
        Optional<RoughClass> roughClass,
        int strips,
        Dim stripWidth,
        int layers,
        Dim layerThickness,
        boolean keptLong,
        Sizes first,
        Sizes last,
        boolean alreadyCut,
        List<String> notes) {
    /** Takes its own copy. */
    public Blank {
        notes = List.copyOf(notes);
        if (strips < 1 || layers < 1) {
            throw new IllegalArgumentException(
                    "A blank is made of one piece or more, not of (%d) by (%d).".formatted(strips, layers));
        }
    }

    /** How many pieces it takes off the stock. */
    public int pieces() {
        return strips * layers;
    }
}
