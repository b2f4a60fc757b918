package scantling.checks.lasting;

import java.util.List;
import java.util.Optional;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.timber.Movement;
import scantling.timber.Species;

/**
 * Change across the grain of parts. Where nobody says how a board was sawn, the greater, tangential movement counts.
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
        return Movement.change(part.width(), wood, shop.sawn(part), shop.of(part), rounded);
    }

    /** Change in each month of a climate, positive where it is wider than as made; nothing where {@link #find} is empty. */
    List<Dim> monthly(Part part, Climate climate) {
        return Parts.isSolid(part)
                ? woods.findSpecies(part).stream()
                        .flatMap(wood -> climate.moisture().stream()
                                .flatMap(month -> month.find().stream().boxed())
                                .flatMap(moisture -> change(part, wood, moisture).stream()))
                        .toList()
                : List.of();
    }

    List<Moving> all(Assembly assembly) {
        return assembly.parts().stream().flatMap(part -> find(part).stream()).toList();
    }
}
