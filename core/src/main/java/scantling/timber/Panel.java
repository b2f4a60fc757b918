package scantling.timber;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import scantling.measure.Length;

/**
 * A kind of sheet good. What no table gives is empty.
 *
 * @param name as makers say it: {@code birch plywood}, {@code cherry-veneered MDF}
 * @param aliases other names of the core
 * @param core the name of the unveneered sheet
 * @param kind plywood, MDF, particleboard, hardboard, OSB
 * @param veneer the veneer on it, if there is one
 * @param density kg/m3
 * @param stiffness by thickness, and in general
 * @param toleranceStandard the standard that says how far thickness may be off
 * @param source who says so
 * @param verified yes, partial or memory
 * @param note what to know, or empty
 */
public record Panel(
        String name,
        List<String> aliases,
        String core,
        String kind,
        Optional<Veneer> veneer,
        OptionalDouble density,
        List<Stiffness> stiffness,
        String toleranceStandard,
        String source,
        String verified,
        String note) {
    /** Takes its own copies. */
    public Panel {
        aliases = List.copyOf(aliases);
        stiffness = List.copyOf(stiffness);
    }

    /**
     * A veneer.
     *
     * @param words the maker's words for it, empty if not said
     * @param species the wood, if the table knows it
     */
    public record Veneer(String words, Optional<Species> species) {}

    /**
     * Modulus of elasticity in bending for a range of thickness.
     *
     * @param over the thinnest, itself not included
     * @param upTo the thickest, included
     * @param along GPa, along the grain of the face
     * @param across GPa, across it
     * @param source who says so
     */
    public record Stiffness(Length over, Length upTo, double along, double across, String source) {
        static Stiffness of(Table.Row row) {
            return new Stiffness(
                    row.length("over"),
                    row.length("up_to"),
                    row.number("moe_along_gpa"),
                    row.number("moe_across_gpa"),
                    row.source());
        }

        boolean holds(Length thickness) {
            return thickness.compareTo(over) > 0 && thickness.compareTo(upTo) <= 0;
        }
    }

    /** Stiffness at a thickness; empty when it is not tabulated. */
    public Optional<Stiffness> stiffnessAt(Length thickness) {
        return stiffness.stream().filter(row -> row.holds(thickness)).findFirst();
    }

    /** How thick it may honestly be when sold as a thickness; empty when the standard does not say. */
    public Optional<ThicknessRange> thicknessRange(Length nominal) {
        return ThicknessRange.find(toleranceStandard, nominal);
    }

    /** Whether a veneer lies on it. */
    public boolean isVeneered() {
        return veneer.isPresent();
    }

    Panel veneered(Veneer with) {
        String called = with.words().isEmpty() ? "veneered " + name : with.words() + "-veneered " + name;
        return new Panel(
                called,
                aliases,
                core,
                kind,
                Optional.of(with),
                density,
                stiffness,
                toleranceStandard,
                source,
                verified,
                note);
    }
}
