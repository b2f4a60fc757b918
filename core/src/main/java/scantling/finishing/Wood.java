package scantling.finishing;

import java.util.Optional;
import scantling.construct.Part;
import scantling.timber.Panel;
import scantling.timber.PanelTable;
import scantling.timber.Species;
import scantling.timber.Table;

/**
 * How a wood takes a finish; common practice, see {@code finishing/woods.csv}.
 *
 * @param name of the wood
 * @param blotches whether stain takes unevenly
 * @param openPored whether its pores show through a film
 * @param oily whether its own oil or silica keeps a finish from holding
 * @param stain how it takes stain, in words
 * @param source who says so
 */
public record Wood(String name, boolean blotches, boolean openPored, boolean oily, String stain, String source) {
    private static final Table TABLE = Table.read("finishing/woods.csv");

    /** How a species takes a finish, when the table knows. */
    public static Optional<Wood> find(String species) {
        return TABLE.findRow("wood", species)
                .map(row -> new Wood(
                        row.text("wood"),
                        row.text("blotches").equals("yes"),
                        row.text("pores").equals("open"),
                        row.text("silica_or_oil").equals("yes"),
                        row.text("stain"),
                        row.source()));
    }

    /** The wood that is seen of a part: of a sheet its veneer. */
    static Optional<Wood> of(Part part) {
        return species(part).flatMap(Wood::find);
    }

    /** The species that is seen of a part: of a sheet its veneer. */
    static Optional<String> species(Part part) {
        return switch (part.material().kind()) {
            case SOLID, STICK -> Optional.of(part.material().of());
            case SHEET ->
                PanelTable.standard()
                        .find(part.material().of())
                        .flatMap(Panel::veneer)
                        .flatMap(Panel.Veneer::species)
                        .map(Species::name);
        };
    }
}
