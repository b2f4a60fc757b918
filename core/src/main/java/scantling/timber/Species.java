package scantling.timber;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A kind of wood. Properties are means of small clear specimens; what no table gives is empty and never guessed.
 *
 * @param name as makers say it: {@code black cherry}
 * @param aliases other names it goes by
 * @param botanical its botanical name
 * @param group North American hardwood, North American softwood, imported
 * @param mechanics weight and strength
 * @param shrinkage how it moves with moisture
 * @param source who says so
 * @param verified yes, partial (see fromMemory) or memory
 * @param fromMemory names of the values that are from memory
 * @param note a disagreement among sources, or empty
 */
public record Species(
        String name,
        List<String> aliases,
        String botanical,
        String group,
        Mechanics mechanics,
        Shrinkage shrinkage,
        String source,
        String verified,
        List<String> fromMemory,
        String note) {
    /** Takes its own copies. */
    public Species {
        aliases = List.copyOf(aliases);
        fromMemory = List.copyOf(fromMemory);
    }

    /**
     * Weight and strength; all but the basic specific gravity at 12 % moisture.
     *
     * @param basicGravity specific gravity on green volume and ovendry mass
     * @param gravityAt12 specific gravity on volume at 12 %
     * @param densityAt12 kg/m3
     * @param elasticity modulus of elasticity in bending, GPa, shear deflection included
     * @param bending modulus of rupture, MPa
     * @param shear shear strength along the grain, MPa
     * @param sideHardness Janka side hardness, N
     */
    public record Mechanics(
            OptionalDouble basicGravity,
            OptionalDouble gravityAt12,
            OptionalDouble densityAt12,
            OptionalDouble elasticity,
            OptionalDouble bending,
            OptionalDouble shear,
            OptionalDouble sideHardness) {}

    /**
     * How it moves across the grain.
     *
     * @param radialPercent shrinkage from green to ovendry along the radius, %
     * @param tangentialPercent the same along the growth rings, %
     * @param radialCoefficient change per unit width and 1 % moisture along the radius, 6 to 14 %
     * @param tangentialCoefficient the same along the growth rings
     */
    public record Shrinkage(
            OptionalDouble radialPercent,
            OptionalDouble tangentialPercent,
            OptionalDouble radialCoefficient,
            OptionalDouble tangentialCoefficient) {
        /** Total shrinkage in the direction in which a board so sawn is wide; mixed counts as tangential, the safe bound. */
        public OptionalDouble percent(Sawn sawn) {
            return sawn == Sawn.QUARTER ? radialPercent : tangentialPercent;
        }

        /** Coefficient in the direction in which a board so sawn is wide; mixed counts as tangential, the safe bound. */
        public OptionalDouble coefficient(Sawn sawn) {
            return sawn == Sawn.QUARTER ? radialCoefficient : tangentialCoefficient;
        }
    }

    /** kg/m3 at 12 % moisture: as tabulated, else worked out from the basic specific gravity. */
    public OptionalDouble density() {
        if (mechanics.densityAt12().isPresent() || mechanics.basicGravity().isEmpty()) {
            return mechanics.densityAt12();
        }
        return Density.ofBasic(mechanics.basicGravity().getAsDouble(), 12).find();
    }

    static Species of(Table.Row row) {
        return new Species(
                row.text("name"),
                row.list("aliases"),
                row.text("botanical"),
                row.text("group"),
                new Mechanics(
                        row.findNumber("basic_sg"),
                        row.findNumber("sg_12"),
                        row.findNumber("density_12_kg_m3"),
                        row.findNumber("moe_12_gpa"),
                        row.findNumber("mor_12_mpa"),
                        row.findNumber("shear_12_mpa"),
                        row.findNumber("hardness_12_n")),
                new Shrinkage(
                        row.findNumber("shrinkage_r_pct"),
                        row.findNumber("shrinkage_t_pct"),
                        row.findNumber("c_r"),
                        row.findNumber("c_t")),
                row.source(),
                row.verified(),
                row.list("from_memory"),
                row.text("note"));
    }

    /** The note, if there is one. */
    public Optional<String> findNote() {
        return note.isEmpty() ? Optional.empty() : Optional.of(note);
    }
}
