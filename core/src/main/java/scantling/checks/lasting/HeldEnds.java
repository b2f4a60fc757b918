package scantling.checks.lasting;

import java.util.OptionalDouble;
import scantling.construct.Assembly;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.timber.Table;

/**
 * What it takes to turn the ends of a shelf in the joints that hold it: the face of the joint as a bed of springs, as
 * docs/method/frame.md has it.
 */
record HeldEnds(Assembly assembly, Stiffness stiffness) {
    private static final Table SHARES = Table.read("checks/frame-joints.csv");

    /** N mm for each radian, of the softer end; nothing when an end lies free or is not known. */
    double turning(Part shelf) {
        double[] each = assembly.joints().stream()
                .filter(joint -> joint.entering().equals(shelf.path()))
                .mapToDouble(joint -> turning(shelf, joint))
                .toArray();
        double least = Double.POSITIVE_INFINITY;
        for (double one : each) {
            least = Math.min(least, one);
        }
        return each.length < 2 ? 0 : least;
    }

    private double turning(Part shelf, Joint joint) {
        OptionalDouble share = SHARES.findRow("kind", joint.kind().words()).stream()
                .mapToDouble(row -> row.number("held_share"))
                .findFirst();
        return Parts.find(assembly, joint.receiving())
                .map(side -> turning(shelf, side, share.orElse(0)))
                .orElse(0.0);
    }

    private double turning(Part shelf, Part side, double share) {
        OptionalDouble along = stiffness.find(side, side.lie().length());
        double thick = Parts.mm(shelf.thickness());
        double face = Parts.mm(shelf.width()) * thick * thick * thick / 12;
        return share * along.orElse(0) * Stiffness.acrossShare() / Parts.mm(side.thickness()) * face;
    }
}
