package scantling.checks.frame;

import java.util.OptionalDouble;
import scantling.checks.lasting.Parts;
import scantling.checks.lasting.Woods;
import scantling.construct.Part;
import scantling.timber.Table;

/** Shear modulus of sheets in their plane, MPa, from {@code checks/panel-rigidity.csv}. */
record Rigidities(Woods woods) {
    private static final Table TABLE = Table.read("checks/panel-rigidity.csv");

    /** Empty for solid wood and for sheets of a kind that the table does not have. */
    OptionalDouble find(Part part) {
        return Parts.isSolid(part)
                ? OptionalDouble.empty()
                : woods.findPanel(part).flatMap(panel -> TABLE.findRow("kind", panel.kind())).stream()
                        .mapToDouble(row -> 1000 * row.number("gpa"))
                        .findFirst();
    }
}
