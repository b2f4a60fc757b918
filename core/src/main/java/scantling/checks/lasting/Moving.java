package scantling.checks.lasting;

import scantling.construct.Part;
import scantling.measure.Dim;

/**
 * How a solid part changes across its grain between the shop and the home.
 *
 * @param part which
 * @param growth in the dampest month; negative when even then it is narrower than as made
 * @param shrinkage in the driest month, as a positive length when it is narrower than as made
 */
public record Moving(Part part, Dim growth, Dim shrinkage) {
    /** From the driest to the dampest month. */
    public Dim range() {
        return growth.plus(shrinkage);
    }
}
