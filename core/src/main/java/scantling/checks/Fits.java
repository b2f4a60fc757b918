package scantling.checks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import scantling.construct.Assembly;
import scantling.construct.Opening;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Sensitivity;
import scantling.space.Axis;
import scantling.space.Side;

/** Every fit of a piece by its numbers: clearance and reveal in each opening, flushness of what lies in it. */
public final class Fits {
    private Fits() {}

    /** What a fit is about. */
    public enum Kind {
        /** Air all together between what fills an opening and its walls, from left to right or up. */
        REVEAL("reveal"),
        /** The same from front to back. */
        CLEARANCE("clearance"),
        /** How far a face stands before or behind the opening's front. */
        FLUSHNESS("flushness");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The trade's word. */
        public String word() {
            return word;
        }
    }

    /**
     * One fit.
     *
     * @param opening its path
     * @param kind what it is about
     * @param axis the direction it is in
     * @param planned by the plan
     * @param spread how far off it may come out by the tolerances of the shop
     */
    public record Fit(String opening, Kind kind, Axis axis, Dim planned, Sensitivity.Spread spread) {
        /** Whether errors at their worst use it up; never for flushness. */
        public boolean mayVanish() {
            return kind != Kind.FLUSHNESS && spread.worstCase().compareTo(planned.value()) > 0;
        }
    }

    /** All of them, those that are nearest to failing first. */
    public static List<Fit> of(Assembly assembly) {
        Map<String, Part> parts = assembly.parts().stream()
                .collect(Collectors.toMap(Part::path, Function.identity(), (first, second) -> first));
        List<Fit> fits = new ArrayList<>();
        for (Opening opening : assembly.openings()) {
            List<Part> filling = opening.fills().stream()
                    .flatMap(path -> Optional.ofNullable(parts.get(path)).stream())
                    .filter(part -> !part.box().isEmpty())
                    .toList();
            if (!filling.isEmpty()) {
                inside(opening, filling, Axis.ACROSS, Kind.REVEAL).ifPresent(fits::add);
                inside(opening, filling, Axis.UP, Kind.REVEAL).ifPresent(fits::add);
                inside(opening, filling, Axis.DEEP, Kind.CLEARANCE).ifPresent(fits::add);
                flush(opening, filling).ifPresent(fits::add);
            }
        }
        fits.sort(Comparator.comparing(Fits::left));
        return List.copyOf(fits);
    }

    private static Length left(Fit fit) {
        Length worst = fit.spread().worstCase();
        return fit.kind() == Kind.FLUSHNESS ? worst : fit.planned().value().minus(worst);
    }

    private static Optional<Fit> inside(Opening opening, List<Part> filling, Axis axis, Kind kind) {
        Dim taken = extreme(filling, Side.of(axis, true)).minus(extreme(filling, Side.of(axis, false)));
        Dim gap = opening.box().extent(axis).minus(taken);
        return gap.value().isPositive()
                ? Optional.of(new Fit(opening.path(), kind, axis, gap, Sensitivity.tolerance(gap)))
                : Optional.empty();
    }

    /** Only for faces that are meant to lie in the plane of the opening's front. */
    private static Optional<Fit> flush(Opening opening, List<Part> filling) {
        Dim stands = extreme(filling, Side.FRONT).minus(opening.box().front());
        boolean varies = Sensitivity.tolerance(stands).worstCase().isPositive();
        return stands.value().isZero() && varies
                ? Optional.of(new Fit(opening.path(), Kind.FLUSHNESS, Axis.DEEP, stands, Sensitivity.tolerance(stands)))
                : Optional.empty();
    }

    private static Dim extreme(List<Part> filling, Side side) {
        Dim first = filling.get(0).box().plane(side);
        Dim[] others =
                filling.stream().skip(1).map(part -> part.box().plane(side)).toArray(Dim[]::new);
        return side.isFar() ? Dim.largerOf(first, others) : Dim.smallerOf(first, others);
    }
}
