package scantling.route;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import scantling.construct.Part;
import scantling.finishing.Amount;
import scantling.finishing.Coating;
import scantling.finishing.FinishGroup;
import scantling.finishing.FinishPlan;

/**
 * One coat on one group, as an operation wants it.
 *
 * @param title what is done: {@code outside: waterborne lacquer, coat 1 of 3}
 * @param parts paths of the parts it goes on
 * @param square metres it goes over
 * @param pause before the next coat, or before it can be handled
 * @param sprayed whether it takes the place to spray
 * @param beforeAssembly whether it goes on before the glue-up
 * @param how what to know of it, in words
 * @param used how much of it is used up, and the discs for the sanding before it
 */
record CoatStep(
        String title,
        List<String> parts,
        double square,
        Pause pause,
        boolean sprayed,
        boolean beforeAssembly,
        List<String> how,
        List<Supply> used) {
    static List<CoatStep> of(FinishPlan finish) {
        List<CoatStep> steps = new ArrayList<>();
        for (FinishGroup group : finish.groups()) {
            for (int k = 0; k < group.coatings().size(); k++) {
                steps.add(of(
                        group,
                        group.coatings().get(k),
                        k == 0,
                        k == group.coatings().size() - 1));
            }
        }
        return steps;
    }

    private static CoatStep of(FinishGroup group, Coating coating, boolean bare, boolean last) {
        List<String> how = new ArrayList<>();
        coating.sand().ifPresent(grit -> how.add("sand to %s before".formatted(grits(grit))));
        how.addAll(coating.notes());
        return new CoatStep(
                "%s: %s".formatted(group.name(), coating.title()),
                group.parts(),
                coating.area(),
                pause(coating.drying(), last),
                coating.spray().isPresent(),
                group.beforeAssembly(),
                how,
                used(coating, bare));
    }

    private static List<Supply> used(Coating coating, boolean bare) {
        List<Supply> used = new ArrayList<>();
        coating.sand()
                .ifPresent(grit ->
                        used.add(Supply.discs(bare ? "bare wood" : "between coats", grits(grit), coating.area())));
        used.add(new Supply(
                coating.coat().name(),
                coating.litres().likely(),
                "l",
                coating.drying().source()));
        return used;
    }

    private static String grits(Amount grit) {
        return grit.low() == grit.high()
                ? "%.0f".formatted(grit.low())
                : "%.0f to %.0f".formatted(grit.low(), grit.high());
    }

    /** The last coat must be hard enough to be handled; the others have a window that closes, where it does. */
    private static Pause pause(Coating.Drying drying, boolean last) {
        double least = last
                ? Math.max(drying.least().likely(), drying.handle().likely())
                : drying.least().likely();
        OptionalDouble most = last || drying.most().isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.max(least, drying.most().get()));
        return new Pause(least, most, last ? "until it can be handled" : "the coat dries", drying.source());
    }

    static double square(Part part) {
        double length = part.length().value().toMetres();
        double width = part.width().value().toMetres();
        double thickness = part.thickness().value().toMetres();
        return 2 * (length * width + length * thickness + width * thickness);
    }
}
