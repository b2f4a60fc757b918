package scantling.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import scantling.construct.Finding;
import scantling.construct.Joint;
import scantling.feature.Features;
import scantling.measure.Dim;
import scantling.measure.Unit;
import scantling.space.Axis;
import scantling.space.Lie;
import scantling.space.Side;

/** What a maker insists on although it is weak, or would break out, is told with what works. */
class InsistedTest {
    private static final Lie RAIL = Lie.along(Axis.ACROSS, Side.FRONT);
    private static final Lie STILE = Lie.along(Axis.UP, Side.FRONT);

    /** A rail 100 high whose end lies against a stile, or goes into it. */
    private static Features rail(Joint.Kind kind, double thick, double stile, double into, Map<String, Dim> sizes) {
        return Joinery.of(
                new Placed(
                                Placed.part("rail", new double[] {-into, 0, 100}, new double[] {400, thick, 200}, RAIL),
                                Placed.part("stile", new double[] {-stile, 0, 0}, new double[] {0, thick, 900}, STILE),
                                new Joint("rail to stile", kind, "rail", "stile", Optional.empty(), sizes),
                                Unit.MM)
                        .assembly(),
                JointRules.standard());
    }

    private static void told(Features made, Finding.Severity severity, String sentence, String remedy) {
        assertTrue(
                made.findings().stream()
                        .anyMatch(each -> each.severity() == severity
                                && each.sentence().equals(sentence)
                                && each.remedy().equals(remedy)),
                () -> made.findings().toString());
    }

    @Test
    void gluedEndGrainIsWeakAndSaysWhatFitsInstead() {
        told(
                rail(Joint.Kind.GLUED, 20, 60, 0, Map.of()),
                Finding.Severity.CAUTION,
                "rail is glued to stile over 100.0 by 20.0 mm in end grain: glue alone holds little there.",
                "Join it with biscuit, which fits there.");
    }

    /** Older trade handbook: 60 % in end grain. */
    @Test
    void pocketScrewsIntoEndGrainCountForLess() {
        Features made = Joinery.of(
                new Placed(
                                Placed.part("stile", new double[] {0, 0, 0}, new double[] {60, 20, 100}, STILE),
                                Placed.part("head", new double[] {0, 0, 100}, new double[] {60, 20, 200}, STILE),
                                new Joint(
                                        "stile to head",
                                        Joint.Kind.POCKET_SCREW,
                                        "stile",
                                        "head",
                                        Optional.empty(),
                                        Map.of()),
                                Unit.MM)
                        .assembly(),
                JointRules.standard());
        assertTrue(
                made.findings().stream()
                        .anyMatch(each -> each.sentence()
                                .equals("Screws through stile go into the end grain of head: count on 60 % of what they"
                                        + " hold in side grain at most.")),
                made.findings()::toString);
    }

    /** A stile 40 wide and a tenon 38 long leave 2: 3 at least, so 37, or right through. */
    @Test
    void aTenonThatIsNearlyThroughBreaksOut() {
        told(
                rail(Joint.Kind.MORTISE_AND_TENON, 20, 40, 38, Map.of()),
                Finding.Severity.CAUTION,
                "The tenon of rail, 38.0 mm long, leaves 2.0 mm of stile, which is 40.0 mm there: the mortise will"
                        + " break out.",
                "Make it 37.0 mm long, or take it right through: 40.0 mm.");
        assertEquals(
                List.of(),
                rail(Joint.Kind.MORTISE_AND_TENON, 20, 40, 40, Map.of()).findings());
    }

    /** 40 wide, of which a quarter, 10, and 1 for glue stay: 29. */
    @Test
    void aLooseTenonThatWouldBreakOutIsMadeAsLongAsGoes() {
        told(
                rail(Joint.Kind.LOOSE_TENON, 20, 40, 0, Map.of("length", Placed.mm(45))),
                Finding.Severity.CAUTION,
                "A tenon 45.0 mm long would break out of stile, which is 40.0 mm there; it was made 29.0 mm.",
                "Write tenon length: 29.0 mm for rail, or make stile thicker.");
    }

    @Test
    void aDowelThickerThanHalfOfTheStockIsReplaced() {
        told(
                rail(Joint.Kind.DOWEL, 18, 60, 0, Map.of("diameter", Placed.mm(12))),
                Finding.Severity.CAUTION,
                "A dowel of 12.0 mm is more than half of the 18.0 mm where rail and stile meet; 8.0 mm is used.",
                "Say 8.0 mm, or make the stock 24.0 mm thick.");
    }

    /** Half of 20 at most. */
    @ParameterizedTest
    @EnumSource(
            value = Joint.Kind.class,
            names = {"DADO", "STOPPED_DADO", "GROOVE"})
    void aChannelDeeperThanHalfIsToldAndOneThatIsThroughStops(Joint.Kind kind) {
        Finding deep = rail(kind, 20, 20, 12, Map.of()).findings().get(0);
        assertEquals(Finding.Severity.CAUTION, deep.severity());
        assertEquals("Go in by 10.0 mm at most.", deep.remedy());
        Finding through = rail(kind, 20, 20, 20, Map.of()).findings().get(0);
        assertEquals(Finding.Severity.STOP, through.severity());
        assertTrue(through.sentence().endsWith("that cuts it in two."), through.sentence());
    }

    /** 8 thick: a half-lap leaves 4 of 5, a bridle 2.67. */
    @ParameterizedTest
    @EnumSource(
            value = Joint.Kind.class,
            names = {"HALF_LAP", "BRIDLE"})
    void thinCheeksAreTold(Joint.Kind kind) {
        Finding told = rail(kind, 8, 60, 60, Map.of()).findings().get(0);
        assertEquals(Finding.Severity.CAUTION, told.severity());
        assertEquals(
                "Make both %s mm thick, or use dowels.".formatted(kind == Joint.Kind.HALF_LAP ? "10.0" : "15.0"),
                told.remedy());
        assertEquals(List.of(), rail(kind, 20, 60, 60, Map.of()).findings());
    }

    @ParameterizedTest
    @EnumSource(
            value = Joint.Kind.class,
            names = {"CARRIED", "AUTO"},
            mode = EnumSource.Mode.EXCLUDE)
    void everyKindSaysSomethingInStockFarTooThin(Joint.Kind kind) {
        boolean enters = switch (kind) {
            case MORTISE_AND_TENON, HAUNCHED, TONGUE, DADO, STOPPED_DADO, GROOVE, RABBET, HALF_LAP, BRIDLE -> true;
            default -> false;
        };
        boolean corner = switch (kind) {
            case BOX_JOINT, DOVETAIL, HALF_BLIND, MITRE, MITRE_BISCUIT, MITRE_SPLINE -> true;
            default -> false;
        };
        Features made = corner ? thinCorner(kind) : rail(kind, 4, 4, enters ? 4 : 0, Map.of());
        assertTrue(!made.findings().isEmpty(), () -> kind + " said nothing");
        Finding told = made.findings().get(0);
        assertTrue(!told.remedy().isEmpty() && !told.numbers().isEmpty(), told.toString());
    }

    /** Boards 4 thick and 6 high. */
    private static Features thinCorner(Joint.Kind kind) {
        return Joinery.of(
                new Placed(
                                Placed.part(
                                        "front",
                                        new double[] {0, 0, 0},
                                        new double[] {400, 4, 6},
                                        Lie.along(Axis.ACROSS, Side.FRONT)),
                                Placed.part(
                                        "side",
                                        new double[] {0, kind == Joint.Kind.HALF_BLIND ? 2 : 0, 0},
                                        new double[] {4, 300, 6},
                                        Lie.along(Axis.DEEP, Side.LEFT)),
                                new Joint("front to side", kind, "front", "side", Optional.empty(), Map.of()),
                                Unit.MM)
                        .assembly(),
                JointRules.standard());
    }

    @ParameterizedTest
    @MethodSource("scantling.joinery.Made#starters")
    void noStarterInsistsOnWhatIsWeak(String starter) {
        assertEquals(
                List.of(),
                Made.joined(Joinery.settled(Made.assembly(starter), JointRules.standard())).findings().stream()
                        .map(Finding::sentence)
                        .toList());
    }
}
