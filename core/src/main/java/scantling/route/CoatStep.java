package scantling.route;

import java.util.List;
import scantling.construct.Assembly;
import scantling.construct.Part;

/**
 * One step of finishing.
 *
 * @param title what is done: {@code seal: dewaxed shellac, coat 1}
 * @param parts paths of the parts it goes on
 * @param square metres it goes over
 * @param pause before the next step
 * @param sprayed whether it takes the place to spray
 */
public record CoatStep(String title, List<String> parts, double square, Pause pause, boolean sprayed) {
    /** Takes its own copy. */
    public CoatStep {
        parts = List.copyOf(parts);
    }

    /** As the piece says its finish, by the words of the pauses table, over all faces of all parts that show. */
    public static List<CoatStep> asSaid(Assembly assembly) {
        return Finishes.asSaid(assembly);
    }

    static double square(Part part) {
        double length = part.length().value().toMetres();
        double width = part.width().value().toMetres();
        double thickness = part.thickness().value().toMetres();
        return 2 * (length * width + length * thickness + width * thickness);
    }
}
