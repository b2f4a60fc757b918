package scantling.construct;

import java.util.List;
import java.util.OptionalDouble;
import scantling.measure.Dim;
import scantling.piece.Material;
import scantling.timber.PanelTable;
import scantling.timber.Species;
import scantling.timber.SpeciesTable;

/** What parts weigh. */
final class Weights {
    private static final double MM3_PER_M3 = 1e9;

    private Weights() {}

    /** kg of all of them together; parts of which no density is known weigh nothing. */
    static double kilograms(List<Part> parts) {
        return parts.stream().mapToDouble(Weights::kilograms).sum();
    }

    private static double kilograms(Part part) {
        double volume = mm(part.length()) * mm(part.width()) * mm(part.thickness());
        return volume / MM3_PER_M3 * density(part.material()).orElse(0);
    }

    private static OptionalDouble density(Material material) {
        if (material.kind() == Material.Kind.SHEET) {
            return PanelTable.standard()
                    .find(material.of())
                    .map(panel -> panel.density())
                    .orElse(OptionalDouble.empty());
        }
        return SpeciesTable.standard().find(material.of()).map(Species::density).orElse(OptionalDouble.empty());
    }

    private static double mm(Dim dim) {
        return dim.value().toMillimetres();
    }
}
