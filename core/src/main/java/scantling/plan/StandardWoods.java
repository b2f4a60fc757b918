package scantling.plan;

import java.util.List;
import java.util.Optional;
import scantling.piece.Woods;
import scantling.timber.Panel;
import scantling.timber.PanelTable;
import scantling.timber.Species;
import scantling.timber.SpeciesTable;

/** The woods and sheets of the timber tables, for the reader. */
public record StandardWoods(SpeciesTable species, PanelTable panels) implements Woods {
    /** The tables as they ship. */
    public static StandardWoods standard() {
        return new StandardWoods(SpeciesTable.standard(), PanelTable.standard());
    }

    @Override
    public Optional<String> findSolid(String name) {
        return species.find(name).map(Species::name);
    }

    @Override
    public Optional<String> findSheet(String name) {
        return panels.find(name).map(Panel::name);
    }

    @Override
    public List<String> solids() {
        return species.all().stream().map(Species::name).toList();
    }

    @Override
    public List<String> sheets() {
        return panels.all().stream().map(Panel::name).toList();
    }
}
