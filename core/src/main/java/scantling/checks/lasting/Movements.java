package scantling.checks.lasting;

import java.util.List;
import java.util.Optional;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.timber.Movement;
import scantling.timber.Sawn;
import scantling.timber.Species;

/**
 * Change across the grain of parts. How a board was sawn is not known here, so the greater, tangential movement counts.
 *
 * @param woods species
 * @param shop how wet the parts are when they are made
 * @param home what they come to
 */
record Movements(Woods woods, Wetness shop, Climate.Range home) {
    Optional<Moving> find(Part part) {
        return Parts.isSolid(part) ? woods.findSpecies(part).flatMap(wood -> find(part, wood)) : Optional.empty();
    }

    private Optional<Moving> find(Part part, Species wood) {
        Optional<Dim> growth = change(part, wood, home.dampest());
        Optional<Dim> drying = change(part, wood, home.driest());
        return growth.isPresent() && drying.isPresent()
                ? Optional.of(new Moving(part, growth.get(), Dim.ZERO.minus(drying.get())))
                : Optional.empty();
    }

    private Optional<Dim> change(Part part, Species wood, double moisture) {
        double rounded = Math.round(moisture * 10) / 10.0;
        return Movement.change(part.width(), wood, Sawn.MIXED, shop.of(part), rounded);
    }

    List<Moving> all(Assembly assembly) {
        return assembly.parts().stream().flatMap(part -> find(part).stream()).toList();
    }
}
