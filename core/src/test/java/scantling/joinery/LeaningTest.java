package scantling.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.feature.Aim;
import scantling.feature.Feature;
import scantling.feature.Features;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Point;
import scantling.space.Side;

/** Straight rails in splayed legs: shoulders, slanting mortises and dowels against plane trigonometry and each other. */
class LeaningTest {
    private static final double TOLERANCE = 0.001;
    private static final int PLACEMENTS = 60;

    private static Assembly stool(double ends, double front, double leg, double rail, String joint) {
        return Made.of("""
            piece: Stool
            unit: mm
            size: 400 wide, 340 deep, 450 high
            materials:
              ash: {solid: white ash, thickness: %s}
              seat: {solid: white ash, thickness: 30}
              leg: {solid: white ash, thickness: %s}
            build:
              - board: {name: seat, of: seat, on: top, inset: {ends: 40, front: 25, back: 25}, joint: glued edge}
              - legs and rails: {legs: leg, rails: ash 60, splay: {ends: %s, front: %s, back: %s}, joint: %s}
            """.formatted(rail, leg, ends, front, front, joint));
    }

    private static Features joined(double ends, double front, String joint) {
        return Made.joined(stool(ends, front, 44, 22, joint));
    }

    private static Feature one(Features made, String path) {
        return Made.feature(made, "legs and rails / front rail to left front leg / " + path);
    }

    /** Feet 60 aside over 420 and none forward: arc tan 60 / 420 = 8.13 degrees, in the shoulder and in the mortise. */
    @Test
    void theShoulderOfARailAndItsMortiseSlantAsTheLegIsSplayed() {
        double splay = Math.toDegrees(Math.atan(60.0 / 420));
        Features made = joined(60, 0, "mortise and tenon");
        Feature shoulder = one(made, "shoulder in front rail");
        assertEquals(splay, angle(shoulder, "mitre gauge"), 1e-6);
        Feature mortise = one(made, "tenon in left front leg");
        double[] leans = mortise.aim().orElseThrow().leans(mortise.surface());
        assertEquals(splay, Math.abs(leans[0]), 1e-6);
        assertEquals(0, leans[1], 1e-6);
        assertEquals(0, mortise.aim().orElseThrow().turned(mortise.surface()), 1e-6);
    }

    /** Forward by 40 over 420 the face of the leg is turned by arc tan 40 / 420 x cos of the other: 5.39 at 8.13. */
    @Test
    void aLegThatLeansBothWaysHasItsMortiseTurnedOnItsFace() {
        Features made = joined(60, 40, "mortise and tenon");
        Feature mortise = one(made, "tenon in left front leg");
        double side = Math.atan(40.0 / 420);
        double front = Math.atan(60.0 / 420 * Math.cos(side));
        double turned = Math.abs(mortise.aim().orElseThrow().turned(mortise.surface()));
        assertEquals(Math.toDegrees(Math.atan(Math.tan(side) * Math.cos(front))), turned, 0.1);
        assertTrue(mortise.setting().angles().keySet().stream().anyMatch(name -> name.startsWith("turned to the")));
    }

    /** 60 high at a slope of 60 in 420 the shoulder steps back by 8.571 from edge to edge. */
    @Test
    void theShoulderIsMarkedAtItsFourCorners() {
        Feature shoulder = one(joined(60, 0, "mortise and tenon"), "shoulder in front rail");
        assertEquals(60 * 60.0 / 420, mm(shoulder.along().size()), 1e-4);
        String low = "%.1f".formatted(mm(shoulder.along().from()));
        String high = "%.1f".formatted(mm(shoulder.along().to()));
        assertTrue(
                shoulder.setting()
                        .notes()
                        .get(0)
                        .contains(
                                "%s at face edge and face side, %s at face edge and back side, %s at back edge and back side, %s mm at back edge and face side"
                                        .formatted(low, low, high, high)),
                shoulder.setting().notes()::toString);
        assertEquals(Feature.Kind.SHOULDER, shoulder.kind());
    }

    private static double mm(Dim dim) {
        return Objects.requireNonNull(dim).value().toMillimetres();
    }

    private static double angle(Feature feature, String name) {
        return Objects.requireNonNull(feature.setting().angles().get(name), name);
    }

    /** The tenon stands in its mortise, and slanting holes of both parts lie on one line, whatever the splay. */
    @ParameterizedTest
    @ValueSource(strings = {"mortise and tenon", "loose tenon", "dowel"})
    void whatMeetsInALeaningFaceLiesOnOneLine(String joint) {
        Random random = new Random(11);
        int pairs = 0;
        for (int i = 0; i < PLACEMENTS; i++) {
            Assembly assembly = stool(
                    random.nextInt(50), random.nextInt(35), 40 + random.nextInt(20), 18 + random.nextInt(8), joint);
            Features made = Made.joined(assembly);
            pairs += new Lines(assembly).check(made);
        }
        assertTrue(pairs >= 8 * PLACEMENTS, "only " + pairs);
    }

    /** Holds features of both parts of leaning joints against each other, in the piece. */
    private record Lines(Map<String, Part> parts) {
        Lines(Assembly assembly) {
            this(new HashMap<>());
            assembly.parts().forEach(part -> parts.put(part.path(), part));
        }

        int check(Features made) {
            Map<String, List<Feature>> pairs = new HashMap<>();
            made.features().stream()
                    .filter(each -> each.path().contains(" in ") && each.owner().contains(" rail to "))
                    .filter(each -> each.owner().contains("leg"))
                    .forEach(each -> pairs.computeIfAbsent(
                                    each.path().substring(0, each.path().lastIndexOf(" in ")), key -> new ArrayList<>())
                            .add(each));
            int checked = 0;
            for (List<Feature> pair : pairs.values()) {
                if (pair.size() == 2 && pair.stream().noneMatch(Feature::isLeft)) {
                    opposite(pair.get(0), pair.get(1));
                    checked++;
                } else if (pair.size() == 2) {
                    standing(pair);
                    checked++;
                }
            }
            return checked;
        }

        private void opposite(Feature one, Feature other) {
            assertTrue(gap(mouth(one), mouth(other)) < TOLERANCE, one.path());
            Point way = way(one, one.aim().orElseThrow().way());
            Point back = way(other, other.aim().orElseThrow().way());
            assertTrue(way.plus(back).length() < 1e-6, one.path());
            Point side = way(one, one.aim().orElseThrow().side());
            Point same = way(other, other.aim().orElseThrow().side());
            assertTrue(Math.abs(Math.abs(side.dot(same)) - 1) < 1e-6, one.path());
        }

        /** The corners of the tenon, less its slanting end, lie in the mortise seen along the tool. */
        private void standing(List<Feature> pair) {
            Feature tenon = pair.stream().filter(Feature::isLeft).findFirst().orElseThrow();
            Feature mortise =
                    pair.stream().filter(each -> !each.isLeft()).findFirst().orElseThrow();
            Aim aim = mortise.aim().orElseThrow();
            Part rail = Objects.requireNonNull(parts.get(tenon.part()));
            scantling.space.Box box = tenon.inSpace(rail);
            Point mouth = mouth(mortise);
            Point way = way(mortise, aim.way());
            Point side = way(mortise, aim.side());
            Point other = way.cross(side);
            for (Side wide : List.of(Side.BOTTOM, Side.TOP)) {
                for (boolean far : new boolean[] {false, true}) {
                    Side thick = Side.of(rail.lie().thickness(), far);
                    Point corner = mouth.with(Axis.UP, mm(box.plane(wide)))
                            .with(thick.axis(), mm(box.plane(thick)))
                            .minus(mouth);
                    assertEquals(mm(aim.length()) / 2, Math.abs(corner.dot(side)), TOLERANCE, mortise.path());
                    assertEquals(mm(aim.width()) / 2, Math.abs(corner.dot(other)), TOLERANCE, mortise.path());
                }
            }
            assertEquals(
                    mm(Objects.requireNonNull(tenon.setting().sizes().get("shoulder back"))),
                    mm(tenon.depth()),
                    TOLERANCE);
            assertTrue(gap(mouth(tenon), mouth) < TOLERANCE, tenon.path());
            double tenonLong = mm(Objects.requireNonNull(tenon.setting().sizes().get("shoulder back")));
            assertTrue(mm(aim.depth()) >= tenonLong - TOLERANCE, mortise.path());
        }

        private Point mouth(Feature feature) {
            Aim aim = feature.aim().orElseThrow();
            Part part = Objects.requireNonNull(parts.get(feature.part()));
            Point own = new Point(0, 0, 0)
                    .with(part.lie().length(), from(part, part.lie().nearEnd(), mm(aim.along())))
                    .with(part.lie().width(), from(part, part.lie().faceEdge(), mm(aim.across())))
                    .with(part.lie().thickness(), from(part, part.lie().faceSide(), mm(aim.through())));
            return part.turn().map(turn -> turn.move(own)).orElse(own);
        }

        private static double from(Part part, Side mark, double distance) {
            double plane = mm(part.box().plane(mark));
            return mark.isFar() ? plane - distance : plane + distance;
        }

        private Point way(Feature feature, Aim.Way way) {
            Part part = Objects.requireNonNull(parts.get(feature.part()));
            Point own = new Point(0, 0, 0)
                    .with(part.lie().length(), sign(part.lie().nearEnd()) * way.along())
                    .with(part.lie().width(), sign(part.lie().faceEdge()) * way.across())
                    .with(part.lie().thickness(), sign(part.lie().faceSide()) * way.through());
            return part.turn().map(turn -> turn.swingAll(own)).orElse(own);
        }

        private static int sign(Side mark) {
            return mark.isFar() ? -1 : 1;
        }

        private static double gap(Point one, Point other) {
            return one.minus(other).length();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"haunched mortise and tenon", "pocket screw"})
    void whatIsNotWorkedOutInALeaningFaceSaysWhatIs(String joint) {
        List<Finding> told = joined(40, 20, joint).findings().stream()
                .filter(finding -> finding.subject().contains("front rail to left front leg"))
                .toList();
        assertEquals(1, told.size());
        assertTrue(
                told.get(0).sentence().startsWith("legs and rails / front rail meets legs and rails / left front leg"));
        assertEquals(
                "Say joint: mortise and tenon, loose tenon or dowel, which are; or mark one from the other.",
                told.get(0).remedy());
    }

    /** Through a mitre a slot goes square to it: half of a right angle to both parts of equal thickness. */
    @ParameterizedTest
    @EnumSource(names = {"MITRE_BISCUIT", "MITRE_SPLINE"})
    void aSlotAcrossAMitreTellsWhereItBeginsAndHowItLeans(Joint.Kind kind) {
        String word = kind == Joint.Kind.MITRE_BISCUIT ? "mitre with biscuit" : "mitre with spline";
        Features made = Made.joined(Made.of("""
            piece: Plinth
            unit: mm
            size: 600 wide, 400 deep, 100 high
            materials: {ply: {sheet: birch plywood, thickness: 18}}
            build:
              - plinth: {of: ply 100, joint: %s}
            """.formatted(word)));
        List<Feature> slots = made.features().stream()
                .filter(each -> each.kind() == Feature.Kind.SLOT || each.kind() == Feature.Kind.GROOVE)
                .toList();
        assertTrue(slots.size() >= 8);
        for (Feature slot : slots) {
            Aim aim = slot.aim().orElseThrow();
            assertEquals(slot.depth(), aim.depth());
            double[] leans = aim.leans(slot.surface());
            assertEquals(45, Math.abs(leans[1]), 1e-6);
            // A third of the way from the inner arris: 6 of 18, seen through the thickness from the inside.
            assertEquals(6, Math.min(mm(aim.through()), 18 - mm(aim.through())), 1e-3);
        }
    }
}
