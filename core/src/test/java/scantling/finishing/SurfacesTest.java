package scantling.finishing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import scantling.checks.HandBuilt;
import scantling.construct.Assembly;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.feature.Surface;
import scantling.space.Axis;
import scantling.space.Side;

/** Areas against solid geometry, and against a count of cells of wood and air that shares no code with them. */
class SurfacesTest {
    private static final double EXACT = 1e-9;

    private static Face face(Assembly assembly, String part, Surface surface) {
        return Surfaces.of(assembly).stream()
                .filter(face -> face.part().path().equals(part) && face.surface() == surface)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aLoneBoardShowsItsWholeSkin() {
        Assembly assembly = new HandBuilt(1000, 300, 20)
                .with(HandBuilt.lying("board", HandBuilt.box(0, 1000, 0, 300, 0, 20)))
                .assembly();
        double skin = Surfaces.of(assembly).stream().mapToDouble(Face::open).sum();
        assertEquals(2 * (1.0 * 0.3 + 1.0 * 0.02 + 0.3 * 0.02), skin, EXACT);
    }

    @Test
    void whatIsGluedTakesNoFinishAndIsMarkedFromTheMarks() {
        Assembly assembly = new HandBuilt(500, 300, 400)
                .with(
                        HandBuilt.upright("left", HandBuilt.box(0, 20, 0, 300, 0, 400)),
                        HandBuilt.lying("shelf", HandBuilt.box(20, 500, 0, 250, 100, 120)))
                .joined(Joint.Kind.DOWEL, "shelf", "left")
                .assembly();
        Face inner = face(
                assembly, "left", Surface.of(Side.RIGHT, assembly.parts().get(0).lie()));
        assertEquals(0.25 * 0.02, inner.glued(), EXACT);
        assertEquals(0.3 * 0.4 - 0.25 * 0.02, inner.open(), EXACT);
        assertEquals(List.of(new Face.Patch(100, 120, 0, 250)), inner.glueMarks());
        assertEquals(Seen.GLUE, face(assembly, "shelf", Surface.NEAR_END).seen());
    }

    @Test
    void whatIsOnlyCarriedIsCoveredWithoutGlue() {
        Assembly assembly = new HandBuilt(500, 300, 400)
                .with(
                        HandBuilt.upright("left", HandBuilt.box(0, 20, 0, 300, 0, 400)),
                        HandBuilt.lying("shelf", HandBuilt.box(20, 500, 0, 250, 100, 120)))
                .joined(Joint.Kind.CARRIED, "shelf", "left")
                .assembly();
        Face end = face(assembly, "shelf", Surface.NEAR_END);
        assertEquals(0, end.glued(), EXACT);
        assertEquals(0.25 * 0.02, end.covered(), EXACT);
        assertEquals(Seen.HIDDEN, end.seen());
    }

    @Test
    void aHousedEndAndTheWoodInsideItsHousingAreGlued() {
        Assembly assembly = new HandBuilt(500, 300, 400)
                .with(
                        HandBuilt.upright("left", HandBuilt.box(0, 20, 0, 300, 0, 400)),
                        HandBuilt.lying("shelf", HandBuilt.box(14, 500, 0, 300, 100, 120)))
                .joined(Joint.Kind.DADO, "shelf", "left", HandBuilt.box(14, 20, 0, 300, 100, 120))
                .assembly();
        Face front = face(
                assembly,
                "shelf",
                Surface.of(Side.FRONT, assembly.parts().get(1).lie()));
        assertEquals(0.006 * 0.02, front.glued(), EXACT);
        assertEquals(0.48 * 0.02, front.open(), EXACT);
    }

    @Test
    void facesThatLookAtOtherPartsAreInsideAndTheUndersideIsHidden() {
        Assembly assembly = new HandBuilt(500, 300, 400)
                .with(
                        HandBuilt.upright("left", HandBuilt.box(0, 20, 0, 300, 0, 400)),
                        HandBuilt.upright("right", HandBuilt.box(480, 500, 0, 300, 0, 400)))
                .assembly();
        Part left = assembly.parts().get(0);
        assertEquals(
                Seen.INSIDE,
                face(assembly, "left", Surface.of(Side.RIGHT, left.lie())).seen());
        assertEquals(
                Seen.SHOW,
                face(assembly, "left", Surface.of(Side.LEFT, left.lie())).seen());
        assertEquals(
                Seen.HIDDEN,
                face(assembly, "left", Surface.of(Side.BOTTOM, left.lie())).seen());
        assertEquals(
                Seen.HIDDEN,
                face(assembly, "left", Surface.of(Side.BACK, left.lie())).seen());
    }

    @ParameterizedTest
    @ValueSource(strings = {"wall-shelf", "bookcase", "bedside-chest", "sideboard"})
    void everyFaceOfAStarterAddsUpToItsBox(String starter) {
        Assembly assembly = Finished.assembly(Finished.starter(starter));
        for (Face face : Surfaces.of(assembly)) {
            double[] sides = {
                face.part().box().extent(Axis.ACROSS).value().toMetres(),
                face.part().box().extent(Axis.DEEP).value().toMetres(),
                face.part().box().extent(Axis.UP).value().toMetres()
            };
            double box =
                    sides[0] * sides[1] * sides[2] / sides[face.side().axis().ordinal()];
            if (face.part().outline().isEmpty()) {
                assertEquals(box, face.whole(), EXACT, face.part().path());
            }
        }
    }

    /** Cells between all planes are wood or air; a wall between the two is skin. Holes and channels are not cut in either. */
    @ParameterizedTest
    @ValueSource(strings = {"wall-shelf", "bookcase", "bedside-chest"})
    void openFacesAreTheSkinOfTheWholePiece(String starter) {
        Assembly assembly = Finished.assembly(Finished.starter(starter));
        double open = Surfaces.of(assembly).stream().mapToDouble(Face::open).sum();
        double skin = skin(assembly);
        assertEquals(skin, open, skin * 0.01);
        assertTrue(skin > 0.3);
    }

    private static double skin(Assembly assembly) {
        double[][] planes = new double[3][];
        for (Axis axis : Axis.values()) {
            TreeSet<Double> all = new TreeSet<>();
            assembly.parts().forEach(part -> {
                all.add(part.box().plane(Side.of(axis, false)).value().toMetres());
                all.add(part.box().plane(Side.of(axis, true)).value().toMetres());
            });
            planes[axis.ordinal()] =
                    all.stream().mapToDouble(Double::doubleValue).toArray();
        }
        double skin = 0;
        int[] count = {planes[0].length - 1, planes[1].length - 1, planes[2].length - 1};
        boolean[][][] wood = new boolean[count[0] + 2][count[1] + 2][count[2] + 2];
        for (Part part : assembly.parts()) {
            fill(wood, planes, part);
        }
        for (int i = 0; i <= count[0]; i++) {
            for (int j = 0; j <= count[1]; j++) {
                for (int k = 0; k <= count[2]; k++) {
                    double a = size(planes[0], i);
                    double b = size(planes[1], j);
                    double c = size(planes[2], k);
                    skin += wood[i][j][k] == wood[i + 1][j][k] ? 0 : b * c;
                    skin += wood[i][j][k] == wood[i][j + 1][k] ? 0 : a * c;
                    skin += wood[i][j][k] == wood[i][j][k + 1] ? 0 : a * b;
                }
            }
        }
        return skin;
    }

    private static double size(double[] planes, int cell) {
        return cell == 0 ? 0 : planes[cell] - planes[cell - 1];
    }

    private static void fill(boolean[][][] wood, double[][] planes, Part part) {
        for (int i = 1; i < planes[0].length; i++) {
            for (int j = 1; j < planes[1].length; j++) {
                for (int k = 1; k < planes[2].length; k++) {
                    wood[i][j][k] |= within(part, Axis.ACROSS, planes[0], i)
                            && within(part, Axis.DEEP, planes[1], j)
                            && within(part, Axis.UP, planes[2], k);
                }
            }
        }
    }

    private static boolean within(Part part, Axis axis, double[] planes, int cell) {
        double middle = (planes[cell] + planes[cell - 1]) / 2;
        return middle > part.box().plane(Side.of(axis, false)).value().toMetres()
                && middle < part.box().plane(Side.of(axis, true)).value().toMetres();
    }
}
