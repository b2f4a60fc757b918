package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Assembly;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.space.Axis;

/** How each solid part changes across its grain in the home, and what that asks of what holds it. */
public final class Moves {
    private static final double LEAST = 0.05;

    private Moves() {}

    /**
     * Parts alike.
     *
     * @param moving the first of them and how it moves
     * @param boards all of them
     * @param sawn how it was sawn, in words
     * @param room what a panel in grooves needs beyond each of its edges, mm, or nothing where it is not in grooves
     * @param inside how far it must be in at each edge so as not to show a gap, mm
     */
    public record Row(Moving moving, List<Part> boards, String sawn, Optional<Double> room, double inside) {
        /** Takes its own copy. */
        public Row {
            boards = List.copyOf(boards);
        }
    }

    /** Every solid part that moves by what can be measured, alike ones together, the greatest first. */
    public static List<Row> of(Assembly assembly) {
        Wetness shop = LastingChecks.shop(assembly);
        Map<String, List<Moving>> alike = new LinkedHashMap<>();
        for (Moving moving : LastingChecks.movements(assembly)) {
            if (Math.max(Math.abs(Parts.mm(moving.growth())), Math.abs(Parts.mm(moving.shrinkage()))) >= LEAST) {
                alike.computeIfAbsent(Parts.likeness(moving.part()), key -> new ArrayList<>())
                        .add(moving);
            }
        }
        return alike.values().stream()
                .map(each -> row(assembly, shop, each))
                .sorted((one, other) ->
                        other.moving().range().compareTo(one.moving().range()))
                .toList();
    }

    private static Row row(Assembly assembly, Wetness shop, List<Moving> alike) {
        Moving first = alike.get(0);
        String sawn = switch (shop.sawn(first.part())) {
            case QUARTER -> "quarter";
            case FLAT -> "flat";
            case MIXED -> "not said";
        };
        Optional<Double> room = isInGrooves(assembly, first.part())
                ? Optional.of(Math.max(0, Parts.mm(first.growth()) / 2))
                : Optional.empty();
        return new Row(
                first,
                alike.stream().map(Moving::part).toList(),
                sawn,
                room,
                Math.max(0, Parts.mm(first.shrinkage()) / 2));
    }

    /** Let into something along both of its edges. */
    private static boolean isInGrooves(Assembly assembly, Part part) {
        Axis along = part.lie().length();
        return assembly.joints().stream()
                        .filter(joint -> joint.entering().equals(part.path()))
                        .filter(joint -> joint.kind() == Joint.Kind.GROOVE || joint.kind() == Joint.Kind.RABBET)
                        .flatMap(joint -> Parts.find(assembly, joint.receiving()).stream())
                        .filter(other -> other.lie().length() == along)
                        .count()
                > 1;
    }
}
