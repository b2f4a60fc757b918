package scantling.milling;

import java.util.ArrayList;
import java.util.List;
import scantling.construct.Part;
import scantling.measure.Length;
import scantling.stock.Allowances;
import scantling.stock.RoughClass;

/** What to mind about a blank, in sentences. */
final class Notes {
    private Notes() {}

    /** Of a part that is no rectangle. */
    static List<String> shaped(Part part) {
        List<String> notes = new ArrayList<>(EndNotes.of(part));
        if (part.outline().isPresent() || part.edgeOutline().isPresent()) {
            notes.add("Mark and cut its joints while it is square, then saw it to shape.");
        }
        return notes;
    }

    /** Of a part of solid wood. @param strips how many make its width */
    static List<String> solid(Part part, Sizes rough, RoughClass from, int strips, Allowances allowances) {
        List<String> notes = new ArrayList<>(shaped(part));
        if (rough.length().value().compareTo(allowances.shortestPlaner().value()) < 0) {
            notes.add("Too short for the planer by itself: mill it in one length with another part, then crosscut.");
        }
        if (rough.width().value().compareTo(allowances.widestPlaner().value()) > 0) {
            notes.add(
                    strips > 1
                            ? "Wider than the planer: glue up in sections that pass it, plane those, then join them"
                                    + " flush."
                            : "Wider than the planer: flatten it by hand or rip and glue it again.");
        }
        if (canBeResawn(part, from, allowances)) {
            notes.add("The stock gives two of this thickness when resawn.");
        }
        return notes;
    }

    /** Whether two parts with their planing and the saw cut between them come out of one rough thickness. */
    private static boolean canBeResawn(Part part, RoughClass from, Allowances allowances) {
        Length each = part.thickness().value().plus(allowances.thickness().value());
        Length both = each.times(2).plus(allowances.kerf().value());
        return both.compareTo(from.rough().value()) <= 0;
    }
}
