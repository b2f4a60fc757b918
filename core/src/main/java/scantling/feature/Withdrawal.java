package scantling.feature;

import java.util.Optional;
import java.util.OptionalDouble;
import scantling.measure.Dim;
import scantling.piece.Material;
import scantling.timber.Species;
import scantling.timber.SpeciesTable;
import scantling.timber.Table;

/**
 * What a wood screw holds before it draws out of the side grain of dry wood: Wood Handbook Eq. 8-10,
 * {@code p = 108.25 G^2 D L}. Tests scatter widely; the design load is the ultimate one through 5.5.
 *
 * @param ultimate short test load, N
 * @param design what to count on, N
 * @param source of both
 */
public record Withdrawal(double ultimate, double design, String source) {
    private static final Table TABLE = Table.read("feature/withdrawal.csv");

    /**
     * For a wood of a specific gravity.
     *
     * @param gravity on ovendry weight and volume at 12 %
     * @param shank diameter of the screw, see {@link WoodScrew#shank}
     * @param thread how much of the thread is in the wood
     */
    public static Withdrawal of(double gravity, Dim shank, Dim thread) {
        Table.Row screw = TABLE.getRow("name", "wood screw");
        double p = screw.number("value")
                * gravity
                * gravity
                * shank.value().toMillimetres()
                * thread.value().toMillimetres();
        Table.Row factor = TABLE.getRow("name", "tests to design");
        return new Withdrawal(p, p / factor.number("value"), screw.source() + "; " + factor.source());
    }

    /** For solid wood whose specific gravity the tables know; nothing for sheets, of which no published formula is known. */
    public static Optional<Withdrawal> of(Material material, Dim shank, Dim thread) {
        if (material.kind() == Material.Kind.SHEET) {
            return Optional.empty();
        }
        OptionalDouble gravity = SpeciesTable.standard()
                .find(material.of())
                .map(Species::mechanics)
                .map(Species.Mechanics::gravityAt12)
                .orElse(OptionalDouble.empty());
        return gravity.isPresent() ? Optional.of(of(gravity.getAsDouble(), shank, thread)) : Optional.empty();
    }
}
