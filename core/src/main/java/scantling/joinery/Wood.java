package scantling.joinery;

import scantling.construct.Part;
import scantling.piece.Material;
import scantling.timber.SpeciesTable;

/** What wood a part is of, as far as it changes how it is joined. */
final class Wood {
    private Wood() {}

    /** Whether it is solid softwood; sheets are worked like hardwood. */
    static boolean isSoft(Part part) {
        return part.material().kind() == Material.Kind.SOLID
                && SpeciesTable.standard()
                        .find(part.material().of())
                        .filter(species -> species.group().contains("softwood"))
                        .isPresent();
    }
}
