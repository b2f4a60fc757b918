package scantling.cutting;

import java.util.List;

/**
 * One sheet, board or stick that is used, and how it is cut.
 *
 * @param stock which
 * @param number counted from 1 over the plan
 * @param tree the cuts, after trimming
 * @param parts what comes out, in the order of the tree
 * @param steps the cuts in the order a person makes them
 * @param offcuts what goes back to the rack
 */
public record CutPiece(
        Stock stock,
        int number,
        CutTree tree,
        List<PlacedPart> parts,
        List<CutStep> steps,
        List<CutTree.Offcut> offcuts) {
    public CutPiece {
        parts = List.copyOf(parts);
        steps = List.copyOf(steps);
        offcuts = List.copyOf(offcuts);
    }

    /** How many times the fence is moved. */
    public int settings() {
        return (int) steps.stream().filter(CutStep::newSetting).count();
    }
}
