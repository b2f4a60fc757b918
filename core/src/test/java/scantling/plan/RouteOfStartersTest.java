package scantling.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import scantling.construct.Part;
import scantling.construct.Starters;
import scantling.route.Operation;
import scantling.route.Route;
import scantling.route.Step;
import scantling.route.glue.Replay;

/** The route of every starter; what must be in it and before what is common practice. */
class RouteOfStartersTest {
    static List<String> starters() {
        return Starters.NAMES;
    }

    private static Plan plan(String name) {
        return Started.plan(name, Started.shop(50));
    }

    @ParameterizedTest
    @MethodSource("starters")
    void everyOperationStandsBehindWhatItWaitsForAndHasMinutesAndParts(String name) {
        Plan plan = plan(name);
        Set<String> parts = plan.assembly().parts().stream().map(Part::path).collect(Collectors.toSet());
        Set<String> done = new HashSet<>();
        for (Operation operation : plan.route().operations()) {
            assertTrue(done.containsAll(operation.after()), operation::id);
            assertTrue(done.add(operation.id()), operation::id);
            assertTrue(operation.hands().likely() > 0, operation::id);
            assertTrue(parts.containsAll(operation.parts()), operation::id);
            assertFalse(operation.parts().isEmpty(), operation::id);
        }
    }

    @ParameterizedTest
    @MethodSource("starters")
    void thePieceGoesTogetherInTheOrderOfItsRoute(String name) {
        Plan plan = plan(name);
        assertEquals(List.of(), Replay.problems(plan.assembly(), plan.route().order()));
    }

    @ParameterizedTest
    @MethodSource("starters")
    void everyPartGoesThroughEveryStepThatItMust(String name) {
        Plan plan = plan(name);
        for (Step must : EnumSet.of(Step.RECEIVE, Step.MARK, Step.CHECK, Step.WRAP, Step.DELIVER)) {
            Set<String> through = plan.route().operations().stream()
                    .filter(operation -> operation.step() == must)
                    .flatMap(operation -> operation.parts().stream())
                    .collect(Collectors.toSet());
            assertEquals(plan.assembly().parts().size(), through.size(), must.words());
        }
    }

    @Test
    void theChestRestsOnStickersIsGluedOverNightBeforeItIsFlushedAndFinishedBeforeItIsDelivered() {
        Route route = plan("bedside-chest").route();
        assertEquals(24, first(route, Step.FIRST_MILL).pause().hours());
        assertEquals(12, first(route, Step.CLEAN_UP).pause().hours());
        List<Step> steps = route.operations().stream().map(Operation::step).toList();
        assertTrue(steps.lastIndexOf(Step.GLUE_UP) < steps.indexOf(Step.FLUSH));
        assertTrue(steps.lastIndexOf(Step.FIT) < steps.lastIndexOf(Step.FINISH));
        assertTrue(steps.lastIndexOf(Step.FINISH) < steps.indexOf(Step.DELIVER));
        assertTrue(steps.stream().filter(step -> step == Step.FINISH).count() >= 5, "oil, shellac, three coats");
    }

    private static Operation first(Route route, Step step) {
        return route.operations().stream()
                .filter(operation -> operation.step() == step)
                .findFirst()
                .orElseThrow();
    }
}
