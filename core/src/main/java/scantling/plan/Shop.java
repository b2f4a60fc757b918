package scantling.plan;

import scantling.construct.Tolerances;
import scantling.cutting.Effort;
import scantling.joinery.JointRules;
import scantling.stock.Allowances;
import scantling.stock.HardwareProfiles;
import scantling.stock.Rack;

/**
 * The shop a piece is built in.
 *
 * @param tolerances how well it makes sizes
 * @param allowances what it adds before milling, and its kerfs and trims
 * @param rack what it has on hand
 * @param effort how hard saw plans are searched for
 * @param hardware what its slides, hinges and other fittings ask for
 * @param joints what its joints are chosen by
 * @param office what it charges, when it works, how long its work takes
 * @param sawing how it saws, and what it likes better among plans of the same cost
 */
public record Shop(
        Tolerances tolerances,
        Allowances allowances,
        Rack rack,
        Effort effort,
        HardwareProfiles hardware,
        JointRules joints,
        Office office,
        Sawing sawing) {
    /** Steps that give good plans for one piece in well under a second. */
    private static final long USUAL_STEPS = 800;

    /** A shop that saws as usual. */
    public Shop(
            Tolerances tolerances,
            Allowances allowances,
            Rack rack,
            Effort effort,
            HardwareProfiles hardware,
            JointRules joints,
            Office office) {
        this(tolerances, allowances, rack, effort, hardware, joints, office, Sawing.USUAL);
    }

    /** A shop with the hardware and the joints of the tables. */
    public Shop(Tolerances tolerances, Allowances allowances, Rack rack, Effort effort) {
        this(tolerances, allowances, rack, effort, HardwareProfiles.standard());
    }

    /** A shop with the joints of the tables. */
    public Shop(Tolerances tolerances, Allowances allowances, Rack rack, Effort effort, HardwareProfiles hardware) {
        this(tolerances, allowances, rack, effort, hardware, JointRules.standard());
    }

    /** A shop that charges and works as usual. */
    public Shop(
            Tolerances tolerances,
            Allowances allowances,
            Rack rack,
            Effort effort,
            HardwareProfiles hardware,
            JointRules joints) {
        this(tolerances, allowances, rack, effort, hardware, joints, Office.usual());
    }

    /** A shop with the usual settings and an empty rack. */
    public static Shop usual() {
        return new Shop(Tolerances.standard(), Allowances.standard(), Rack.EMPTY, new Effort(USUAL_STEPS, 1));
    }

    /** The same shop with another office. */
    public Shop with(Office other) {
        return new Shop(tolerances, allowances, rack, effort, hardware, joints, other, sawing);
    }

    /** The same shop with other stock on hand. */
    public Shop with(Rack stock) {
        return new Shop(tolerances, allowances, stock, effort, hardware, joints, office, sawing);
    }
}
