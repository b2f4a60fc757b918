package scantling.checks.frame;

import java.util.Optional;
import java.util.OptionalDouble;
import scantling.checks.lasting.Parts;
import scantling.checks.lasting.Woods;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.space.Axis;

/**
 * What a joint bears in bending in the plane of its rail, by what was tested. See docs/method/frame.md.
 *
 * @param woods species
 * @param cuts what joinery has cut; where it has cut nothing, what the joint says counts, else what is usual
 */
record Capacity(Woods woods, Cuts cuts) {
    /**
     * Bending strength of a joint.
     *
     * @param about direction of the moment
     * @param moment N mm that such joints held
     */
    record Bears(Axis about, double moment) {}

    /** Empty where no published basis was found, or the wood's strength is not known. */
    Optional<Bears> find(Structure.Joined each) {
        Patch patch = each.patch();
        boolean firstWider = patch.firstSize() >= patch.secondSize();
        // Bending in the plane of the rail turns it about the narrow direction of its end.
        Axis about = firstWider ? patch.second() : patch.first();
        double width = Math.max(patch.firstSize(), patch.secondSize());
        OptionalDouble moment = switch (Joinings.of(each.joint().kind()).strength()) {
            case TENON -> tenon(each, width);
            case DOWEL -> OptionalDouble.of(dowels(each, width));
            case SCREW -> screws(each, width);
            case NONE -> OptionalDouble.empty();
        };
        return moment.isPresent() ? Optional.of(new Bears(about, moment.getAsDouble())) : Optional.empty();
    }

    private OptionalDouble tenon(Structure.Joined each, double width) {
        OptionalDouble shear = shear(each.entering());
        OptionalDouble other = shear(each.receiving());
        if (shear.isEmpty() || other.isEmpty()) {
            return OptionalDouble.empty();
        }
        double weakest = Math.min(shear.getAsDouble(), other.getAsDouble());
        double high = cuts.tenonHeight(each).orElse(size(each, "height", Numbers.of("tenon of rail") * width));
        double length = cuts.tenonLength(each).orElse(size(each, "length", Numbers.of("tested tenon length")));
        return OptionalDouble.of(1000
                * Numbers.of("tested tenon moment")
                * (weakest / Numbers.of("tested wood shear"))
                * (weighed(width, high) / weighed(Numbers.of("tested rail width"), Numbers.of("tested tenon width")))
                * Math.pow(length / Numbers.of("tested tenon length"), Numbers.of("tenon length power")));
    }

    private static double weighed(double rail, double tenon) {
        return Numbers.of("rail width weight") * rail + Numbers.of("tenon width weight") * tenon;
    }

    private OptionalDouble shear(Part part) {
        return Parts.isSolid(part)
                ? woods.findSpecies(part).stream()
                        .flatMapToDouble(species -> species.mechanics().shear().stream())
                        .findFirst()
                : OptionalDouble.empty();
    }

    private static double size(Structure.Joined each, String name, double usual) {
        return Optional.ofNullable(each.joint().sizes().get(name))
                .map(Parts::mm)
                .orElse(usual);
    }

    private double dowels(Structure.Joined each, double width) {
        double diameter = cuts.holeDiameter(each).orElse(size(each, "diameter", Numbers.of("dowel diameter")));
        double said = Optional.ofNullable(each.joint().sizes().get("length"))
                .map(Dim::half)
                .map(Parts::mm)
                .orElse(Numbers.of("dowel depth") * diameter);
        double depth = cuts.holeDepth(each).orElse(said);
        double pull = Numbers.of("dowel glue stress") * Math.PI * diameter * depth;
        return pulled(each) * pull * Numbers.of("pulled arm") * width;
    }

    /** Of two fasteners one is pulled, of more every second. */
    private long pulled(Structure.Joined each) {
        return Math.max(1, cuts.fasteners(each) / 2);
    }

    private OptionalDouble screws(Structure.Joined each, double width) {
        OptionalDouble gravity = gravity(each.entering());
        OptionalDouble other = gravity(each.receiving());
        if (gravity.isEmpty() || other.isEmpty()) {
            return OptionalDouble.empty();
        }
        double lighter = Math.min(gravity.getAsDouble(), other.getAsDouble());
        double pull = Numbers.of("end grain share")
                * withdrawal(lighter, Numbers.of("screw diameter"), Numbers.of("screw thread"));
        return OptionalDouble.of(pulled(each) * pull * Numbers.of("pulled arm") * width);
    }

    private OptionalDouble gravity(Part part) {
        return Parts.isSolid(part)
                ? woods.findSpecies(part).stream()
                        .flatMapToDouble(species -> species.mechanics().gravityAt12().stream())
                        .findFirst()
                : OptionalDouble.empty();
    }

    /** Load that pulls a wood screw out of side grain, N: Wood Handbook Eq. 8-10. @param gravity specific, at 12 % @param diameter mm @param thread mm in the wood */
    static double withdrawal(double gravity, double diameter, double thread) {
        return Numbers.of("screw coefficient") * gravity * gravity * diameter * thread;
    }
}
