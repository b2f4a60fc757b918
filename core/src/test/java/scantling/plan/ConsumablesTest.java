package scantling.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.route.Consumable;
import scantling.route.Operation;
import scantling.route.Step;

/** What a route of a starter uses up, against its holes and slots and against a ruler. */
class ConsumablesTest {
    private static Plan plan(String name) {
        return Started.plan(name, Shop.usual());
    }

    private static double used(Plan plan, String what) {
        return Consumable.of(plan.route()).stream()
                .filter(used -> used.name().startsWith(what))
                .mapToDouble(Consumable::amount)
                .sum();
    }

    private static long beds(Plan plan, String what) {
        return plan.features().features().stream()
                .filter(feature -> feature.path().contains("/ " + what))
                .map(Feature::path)
                .count();
    }

    /** Half of every dowel is in one part and half in the other: two holes to a dowel, two slots to a biscuit. */
    @ParameterizedTest
    @ValueSource(strings = {"bedside-chest", "bookcase", "sideboard", "dining-table"})
    void everyDowelBiscuitAndLooseTenonHasItsTwoBedsAndIsOnTheList(String starter) throws IOException {
        Plan plan = plan(starter);
        for (String what : List.of("dowel", "biscuit", "loose tenon")) {
            assertEquals(beds(plan, what + " "), 2 * used(plan, what + "s"), what);
        }
    }

    @Test
    void packsHoldWhatIsUsed() throws IOException {
        for (Consumable used : Consumable.of(plan("bedside-chest").route())) {
            double bought = used.packs().stream().mapToDouble(size -> size).sum();
            assertTrue(used.packs().isEmpty() || bought >= used.amount() - 1e-9, used::toString);
        }
    }

    /** Each loose part on its largest face with 50 mm round it, by the part list. */
    @Test
    void looseWetPartsTakeTheirLargestFaceAndAMargin() throws IOException {
        Plan plan = plan("bedside-chest");
        Map<String, Part> parts = new HashMap<>();
        plan.assembly().parts().forEach(part -> parts.put(part.path(), part));
        Operation stain = plan.route().operations().stream()
                .filter(operation -> operation.step() == Step.FINISH)
                .findFirst()
                .orElseThrow();
        double square = 0;
        for (String path : stain.parts()) {
            Part part = Objects.requireNonNull(parts.get(path), path);
            double[] sides = {
                part.length().value().toMillimetres(),
                part.width().value().toMillimetres(),
                part.thickness().value().toMillimetres()
            };
            Arrays.sort(sides);
            square += (sides[1] + 50) * (sides[2] + 50) / 1e6;
        }
        assertEquals(square, stain.needs().dryingRoom(), 1e-9);
    }
}
