package scantling.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import scantling.checks.frame.Frames;
import scantling.checks.frame.Framing;
import scantling.construct.Finding;
import scantling.drawing.Drawing;
import scantling.drawing.FrameDrawing;
import scantling.measure.LengthFormat;
import scantling.measure.Unit;

/** The starters as frames: sound furniture holds the loads that sound furniture was tested with. */
class FramesOfStartersTest {
    private static Plan plan(String starter) {
        return Started.plan(starter, Shop.usual());
    }

    @ParameterizedTest
    @ValueSource(strings = {"wall-shelf", "bookcase", "bedside-chest", "sideboard", "dining-table"})
    void noStarterIsAMechanismNorLoadedBeyondWhatJointsHeld(String starter) throws IOException {
        Plan plan = plan(starter);
        Framing framing = Frames.of(plan.assembly(), plan.features()).orElseThrow();
        assertTrue(framing.loose().isEmpty(), framing.loose()::toString);
        assertEquals(
                List.of(),
                plan.findings().stream()
                        .filter(finding -> List.of("frame", "strength").contains(finding.rule()))
                        .map(Finding::sentence)
                        .toList());
        framing.cases().forEach(each -> assertTrue(each.most() > 0 && each.most() < 20, each.toString()));
    }

    /** The joint of the dining table as it is cut, 45 deep and 59.5 high, is what its strength is worked out from. */
    @Test
    void strengthFollowsWhatJoineryCuts() throws IOException {
        Plan plan = plan("dining-table");
        Framing cut = Frames.of(plan.assembly(), plan.features()).orElseThrow();
        Framing usual = Frames.of(plan.assembly()).orElseThrow();
        double one = cut.cases().get(1).worst().orElseThrow().bears();
        double other = usual.cases().get(1).worst().orElseThrow().bears();
        // Tenons of 59.5 where six tenths of the rail would be 66: (27.5 + .78 x 59.5) / (27.5 + .78 x 66).
        assertEquals((27.5 + 0.78 * 59.5) / (27.5 + 0.78 * 66), one / other, 0.01);
    }

    /** Smardzewski, Furniture Design (2015), ch. 6-7: 600 N on the front edge of tables, 250 N on an extension. */
    @Test
    void aPersonLeansOnTheEdgeAndOnAnOpenDrawer() throws IOException {
        Plan plan = plan("bedside-chest");
        List<String> loads = Frames.of(plan.assembly(), plan.features()).orElseThrow().cases().stream()
                .map(each -> each.load().words())
                .toList();
        assertTrue(
                loads.stream().anyMatch(words -> words.startsWith("600 N") && words.contains("leaning")), "" + loads);
        assertTrue(loads.stream().anyMatch(words -> words.startsWith("250 N") && words.contains("drawer")), "" + loads);
    }

    @Test
    void theFrameIsDrawnExaggeratedWithItsNumber() throws IOException {
        String drawn = FrameDrawing.of(plan("dining-table").assembly(), LengthFormat.of(Unit.MM))
                .map(Drawing::screenSvg)
                .orElseThrow();
        assertTrue(drawn.contains("times as far") && drawn.contains(" mm at "), drawn);
    }
}
