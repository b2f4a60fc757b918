package scantling.checks;

import java.util.ArrayList;
import java.util.List;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.piece.Piece;
import scantling.space.Box;

/**
 * The independent judge of an assembly: whether it can be put together at all. It looks only at where parts are, never
 * at how they got there.
 *
 * <ul>
 *   <li>Every part has a name of its own, sizes greater than zero that agree with its place, marks on sides it has, and
 *       an outline inside its rectangle.
 *   <li>No two parts share wood but where a joint between exactly those two has an overlap box around all they share.
 *   <li>Nothing leaves the overall size, but for a plane made with an overhang. Such a plane is known by its numbers:
 *       somewhere in the sum that made it stands a given or looked-up number whose label or key speaks of an overhang.
 *       So a top stands over where its maker said so and nowhere else, and so does the edging around it, because
 *       its planes are built on those of the top.
 *   <li>Every part touches another, the floor, or a wall plane of the overall size (left, right, back), or is held by
 *       hardware or a carrying joint; parts in a joint that does not carry meet.
 * </ul>
 *
 * Plain boxes are judged exactly, shaped and turned parts to 0.01 mm.
 */
public final class AssemblyCheck {
    private AssemblyCheck() {}

    /** What is wrong, in the order of the parts; empty when all is well. */
    public static List<Finding> check(Assembly assembly) {
        Piece piece = assembly.piece();
        Box whole = Box.standing(piece.width(), piece.depth(), piece.height());
        List<Finding> findings = new ArrayList<>(new PartSanity(Words.of(assembly)).check(assembly.parts()));
        List<PlacedPart> placed = assembly.parts().stream()
                .filter(part -> !part.box().isEmpty())
                .map(PlacedPart::of)
                .toList();
        findings.addAll(new Bounds(assembly, whole).check(placed));
        findings.addAll(new Overlaps(assembly).check(placed));
        findings.addAll(new Standing(assembly, whole, placed).check());
        return List.copyOf(findings);
    }
}
