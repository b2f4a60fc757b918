package scantling.pricing;

import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.piece.Material;
import scantling.space.Solid;
import scantling.timber.Panel;
import scantling.timber.PanelTable;
import scantling.timber.Species;
import scantling.timber.SpeciesTable;

/**
 * What the wood of a piece weighs: volume times the density of its tables, solid wood at 12 % moisture.
 *
 * @param kilograms of all parts whose density is known
 * @param unknown woods and sheets without a density
 */
public record Weight(double kilograms, Set<String> unknown) {
    private static final double CUBIC_MM = 1e9;

    /** Takes its own copy. */
    public Weight {
        unknown = Set.copyOf(unknown);
    }

    /** Of a whole piece, without hardware. */
    public static Weight of(Assembly assembly) {
        double sum = 0;
        Set<String> unknown = new TreeSet<>();
        for (Part part : assembly.parts()) {
            OptionalDouble density = density(part.material());
            if (density.isEmpty()) {
                unknown.add(part.material().of());
            } else if (!part.box().isEmpty()) {
                sum += Solid.of(part.box(), part.lie(), part.outline(), part.turn())
                                .volume()
                        / CUBIC_MM
                        * density.getAsDouble();
            }
        }
        return new Weight(sum, unknown);
    }

    private static OptionalDouble density(Material material) {
        return material.kind() == Material.Kind.SHEET
                ? PanelTable.standard().find(material.of()).map(Panel::density).orElse(OptionalDouble.empty())
                : SpeciesTable.standard()
                        .find(material.of())
                        .map(Species::density)
                        .orElse(OptionalDouble.empty());
    }
}
