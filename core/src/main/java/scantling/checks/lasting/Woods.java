package scantling.checks.lasting;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Stream;
import scantling.construct.Part;
import scantling.timber.Panel;
import scantling.timber.PanelTable;
import scantling.timber.Sawn;
import scantling.timber.Species;
import scantling.timber.SpeciesTable;

/** The timber tables as parts ask them. */
public record Woods(SpeciesTable species, PanelTable panels) {
    private static final Woods STANDARD = new Woods(SpeciesTable.standard(), PanelTable.standard());
    private static final int MOST_OFFERED = 3;

    /** What a check wants to know of a wood. */
    public enum Known {
        /** Modulus of elasticity. */
        STIFFNESS(wood -> wood.mechanics().elasticity().isPresent()),
        /** Shrinkage. */
        MOVEMENT(wood -> wood.shrinkage().percent(Sawn.FLAT).isPresent()
                || wood.shrinkage().coefficient(Sawn.FLAT).isPresent()),
        /** Density. */
        WEIGHT(wood -> wood.density().isPresent());

        private final Predicate<Species> knows;

        Known(Predicate<Species> knows) {
            this.knows = knows;
        }
    }

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

    /** Up to three that come nearest and of which it is known: in name, else in group and weight. */
    List<String> like(Part part, Known known) {
        String of = part.material().of();
        if (!Parts.isSolid(part)) {
            return panels.nearest(of).stream()
                    .filter(name -> !name.equals(of))
                    .limit(MOST_OFFERED)
                    .toList();
        }
        Optional<Species> asked = species.find(of);
        Stream<Species> near = asked.isPresent()
                ? inWeight(asked.get())
                : species.nearest(of).stream().flatMap(name -> species.find(name).stream());
        return near.filter(known.knows)
                .map(Species::name)
                .filter(name -> !name.equals(asked.map(Species::name).orElse(of)))
                .limit(MOST_OFFERED)
                .toList();
    }

    private Stream<Species> inWeight(Species asked) {
        double weight = asked.density().orElse(0);
        return species.all().stream()
                .filter(other ->
                        other.group().equals(asked.group()) && other.density().isPresent())
                .sorted(Comparator.comparingDouble(
                        other -> Math.abs(other.density().orElse(0) - weight)));
    }

    /** What a maker may do about a wood of which something is not known. */
    public String offer(Part part, Known known) {
        List<String> near = like(part, known);
        return near.isEmpty()
                ? "Name a wood or sheet like it that the tables know."
                : "Judge it by one like it that the tables know, the nearest: %s.".formatted(String.join(", ", near));
    }
}
