package scantling.checks.lasting;

import java.util.OptionalDouble;
import scantling.construct.Part;
import scantling.space.Axis;
import scantling.timber.Panel;
import scantling.timber.Table;

/** How stiff parts are, and how they go on giving way under load for years. */
public final class Stiffness {
    private static final Table CREEP = Table.read("checks/creep.csv");

    private final Woods woods;

    public Stiffness(Woods woods) {
        this.woods = woods;
    }

    /** Modulus of elasticity in MPa along a direction of the piece. */
    public OptionalDouble find(Part part, Axis along) {
        boolean grain = part.lie().length() == along;
        if (Parts.isSolid(part)) {
            double share = grain ? 1 : Figures.of("across grain stiffness");
            return woods.findSpecies(part).stream()
                    .flatMapToDouble(species -> species.mechanics().elasticity().stream())
                    .map(gpa -> gpa * 1000 * share)
                    .findFirst();
        }
        return woods.findPanel(part).stream()
                .flatMap(panel -> panel.stiffnessAt(part.thickness().value()).stream())
                .mapToDouble(row -> 1000 * (grain ? row.along() : row.across()))
                .findFirst();
    }

    /** Share of its stiffness along the grain that wood has across it. */
    public static double acrossShare() {
        return Figures.of("across grain stiffness");
    }

    private Table.Row creep(Part part) {
        String kind = Parts.isSolid(part)
                ? "solid"
                : woods.findPanel(part).map(Panel::kind).orElse("particleboard");
        return CREEP.findRow("kind", kind).orElseGet(() -> CREEP.getRow("kind", "particleboard"));
    }

    /** How many times the first deflection it comes to in years; a sheet of unknown kind counts as the worst. */
    double creepFactor(Part part) {
        return creep(part).number("factor");
    }

    String creepSource(Part part) {
        return creep(part).source();
    }
}
