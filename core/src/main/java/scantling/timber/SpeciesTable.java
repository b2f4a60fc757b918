package scantling.timber;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The kinds of wood that are known. */
public final class SpeciesTable {
    private static final class Standard {
        static final SpeciesTable TABLE = new SpeciesTable(Table.read("timber/species.csv").rows().stream()
                .map(Species::of)
                .toList());
    }

    private final List<Species> species;
    private final Names<Species> names;

    private SpeciesTable(List<Species> species) {
        this.species = species;
        this.names = Names.of(
                species,
                one -> Stream.concat(Stream.of(one.name(), one.botanical()), one.aliases().stream())
                        .filter(name -> isOwn(species, one, name)));
    }

    // Douglas-fir and redwood are tabulated by region or age under one botanical name, which then names none of them.
    private static boolean isOwn(List<Species> all, Species one, String name) {
        return !name.equals(one.botanical())
                || all.stream().filter(other -> other.botanical().equals(name)).count() == 1;
    }

    /** The program's own table. */
    public static SpeciesTable standard() {
        return Standard.TABLE;
    }

    /** This table with more kinds of wood, or other numbers for kinds it has: a maker's own win over the table's. */
    public SpeciesTable with(List<Species> own) {
        List<String> keys = own.stream().map(one -> Names.key(one.name())).toList();
        return new SpeciesTable(Stream.concat(
                        species.stream().filter(one -> !keys.contains(Names.key(one.name()))), own.stream())
                .toList());
    }

    /** All of them in the order of the table. */
    public List<Species> all() {
        return species;
    }

    /** The wood that goes by this name; {@code cherry, black} is {@code black cherry}. A name that could be several is none. */
    public Optional<Species> find(String name) {
        return names.find(name);
    }

    /** Up to three known names that come nearest to one that is not known. */
    public List<String> nearest(String name) {
        return names.nearest(name);
    }

    /** Whether a name ends in a kind of wood that the table knows in one or several sorts: {@code oak}, {@code hard maple}. */
    boolean isKind(String name) {
        String last = lastWord(name);
        return find(name).isPresent()
                || species.stream().anyMatch(one -> lastWord(one.name()).equals(last));
    }

    private static String lastWord(String name) {
        return Names.words(name).reduce("", (before, word) -> word);
    }
}
