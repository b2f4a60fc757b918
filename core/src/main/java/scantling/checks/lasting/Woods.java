package scantling.checks.lasting;

import java.util.Optional;
import java.util.OptionalDouble;
import scantling.construct.Part;
import scantling.timber.Panel;
import scantling.timber.PanelTable;
import scantling.timber.Species;
import scantling.timber.SpeciesTable;

/** The timber tables as parts ask them. */
public record Woods(SpeciesTable species, PanelTable panels) {
    private static final Woods STANDARD = new Woods(SpeciesTable.standard(), PanelTable.standard());

    public static Woods standard() {
        return STANDARD;
    }

    public Optional<Species> findSpecies(Part part) {
        return species.find(part.material().of());
    }

    public Optional<Panel> findPanel(Part part) {
        return panels.find(part.material().of());
    }

    /** kg/m3, at 12 % moisture for solid wood. */
    public OptionalDouble findDensity(Part part) {
        return Parts.isSolid(part)
                ? findSpecies(part).map(Species::density).orElse(OptionalDouble.empty())
                : findPanel(part).map(Panel::density).orElse(OptionalDouble.empty());
    }
}
