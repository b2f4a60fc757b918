package scantling.stock;

import java.util.Optional;
import scantling.measure.Dim;
import scantling.measure.Length;

/**
 * A cup hinge chosen for an overlay: {@code overlay = fixed distance + boring distance - plate - crank}, the relation of
 * hinge makers' quick-reference sheets.
 *
 * @param arm how its arm is cranked
 * @param plate height of its mounting plate
 * @param boring from the door's edge to the edge of the cup
 * @param cup from the door's edge to the middle of the cup
 */
public record CupHinge(Arm arm, Dim plate, Dim boring, Dim cup) {
    /** How the arm of a hinge is cranked. */
    public enum Arm {
        /** For doors that cover the case's edge. */
        STRAIGHT("full overlay", ""),
        /** For two doors that share one edge. */
        HALF("half overlay", "half crank"),
        /** For doors inside the case. */
        FULL("inset", "full crank");

        private final String words;
        private final String size;

        Arm(String words, String size) {
            this.words = words;
            this.size = size;
        }

        /** The trade's words for what it is sold for. */
        public String words() {
            return words;
        }

        private Dim crank(HardwareProfiles profiles) {
            return size.isEmpty() ? Dim.ZERO : profiles.of(HardwareProfiles.CUP_HINGE, size);
        }
    }

    /**
     * The hinge for an overlay, its boring distance as near to the usual one as it comes.
     *
     * @param overlay how far the door laps over the side it hangs on; negative inside the case
     * @return nothing when no arm and plate of the profile come out within the borings it allows
     */
    public static Optional<CupHinge> solve(Dim overlay, HardwareProfiles profiles) {
        Optional<CupHinge> best = Optional.empty();
        for (Arm arm : Arm.values()) {
            for (Dim plate : profiles.all(HardwareProfiles.CUP_HINGE, "plate")) {
                CupHinge hinge = with(arm, plate, overlay, profiles);
                if (hinge.isAllowed(profiles)
                        && (best.isEmpty()
                                || hinge.strain(profiles).compareTo(best.get().strain(profiles)) < 0)) {
                    best = Optional.of(hinge);
                }
            }
        }
        return best;
    }

    private static CupHinge with(Arm arm, Dim plate, Dim overlay, HardwareProfiles profiles) {
        Dim fixed = profiles.of(HardwareProfiles.CUP_HINGE, "fixed distance").minus(arm.crank(profiles));
        Dim boring = overlay.minus(fixed).plus(plate);
        return new CupHinge(arm, plate, boring, boring.plus(profiles.of(HardwareProfiles.CUP_HINGE, "cup radius")));
    }

    private boolean isAllowed(HardwareProfiles profiles) {
        return boring.compareTo(profiles.of(HardwareProfiles.CUP_HINGE, "least boring distance")) >= 0
                && boring.compareTo(profiles.of(HardwareProfiles.CUP_HINGE, "most boring distance")) <= 0;
    }

    /** How far the boring distance is from the usual one. */
    private Length strain(HardwareProfiles profiles) {
        return boring.minus(profiles.of(HardwareProfiles.CUP_HINGE, "usual boring distance"))
                .value()
                .abs();
    }

    /** The least and the most overlay that the profile can be set to with an arm. @param most the most rather than the least */
    public static Dim reach(Arm arm, boolean most, HardwareProfiles profiles) {
        Dim fixed = profiles.of(HardwareProfiles.CUP_HINGE, "fixed distance").minus(arm.crank(profiles));
        Dim boring = profiles.of(HardwareProfiles.CUP_HINGE, most ? "most boring distance" : "least boring distance");
        Dim plate = profiles.all(HardwareProfiles.CUP_HINGE, "plate").stream()
                .reduce((a, b) -> most == (a.compareTo(b) <= 0) ? a : b)
                .orElse(Dim.ZERO);
        return fixed.plus(boring).minus(plate);
    }
}
