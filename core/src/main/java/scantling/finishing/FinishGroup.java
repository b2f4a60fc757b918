package scantling.finishing;

import java.util.List;
import scantling.construct.Part;
import scantling.feature.Surface;

/**
 * Faces that get the same coats at the same time.
 *
 * @param name what it is called
 * @param beforeAssembly whether it is finished before the glue-up
 * @param why it is, or is not; empty when nothing is to be said
 * @param faces all its faces
 * @param areas how much of what
 * @param coatings in order
 * @param masks where glue goes, to be kept bare; only when finished before assembly
 */
public record FinishGroup(
        String name,
        boolean beforeAssembly,
        String why,
        List<Face> faces,
        Areas areas,
        List<Coating> coatings,
        List<Mask> masks) {
    /** Square metres: seen, inside, hidden, all together; and of all of it what is edge and what is end grain. */
    public record Areas(double show, double inside, double hidden, double whole, double edges, double ends) {}

    /** A place to keep bare. @param part path of the part @param surface which surface @param patch where on it */
    public record Mask(String part, Surface surface, Face.Patch patch) {}

    /** Takes its own copies. */
    public FinishGroup {
        faces = List.copyOf(faces);
        coatings = List.copyOf(coatings);
        masks = List.copyOf(masks);
    }

    /** Paths of its parts, in their order. */
    public List<String> parts() {
        return faces.stream().map(Face::part).map(Part::path).distinct().toList();
    }
}
