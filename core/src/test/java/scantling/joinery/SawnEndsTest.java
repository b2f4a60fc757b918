package scantling.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import scantling.feature.Feature;
import scantling.feature.Features;
import scantling.feature.SettingGroup;

/** A stool with splayed legs: the saw's settings against plane trigonometry of its two views. */
class SawnEndsTest {
    private static Features stool() {
        try (InputStream in = SawnEndsTest.class.getResourceAsStream("/scantling/pieces/splayed-stool.yaml")) {
            String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
            return Made.joined(Made.of(text));
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    private static List<Feature> sawn(Features made, String part) {
        return made.features().stream()
                .filter(each -> each.kind() == Feature.Kind.MITRE && each.part().endsWith(part))
                .toList();
    }

    /**
     * Feet stand 60 aside and 40 forward of their tops over 420: in the side view arc tan 40 / 420 = 5.44, in the front
     * view arc tan (60 / 420 x cos 5.44) = 8.09. Both ends alike.
     */
    @Test
    void bothEndsOfASplayedLegAreSawnAtTheAnglesOfItsViews() {
        List<Feature> ends = sawn(stool(), "left front leg");
        assertEquals(2, ends.size());
        for (Feature end : ends) {
            Map<String, Double> angles = end.setting().angles();
            assertEquals(Math.toDegrees(Math.atan(40.0 / 420)), Objects.requireNonNull(angles.get("blade tilt")), 1e-6);
            assertEquals(
                    Math.toDegrees(Math.atan(60.0 / 420 * Math.cos(Math.atan(40.0 / 420)))),
                    Objects.requireNonNull(angles.get("mitre gauge")),
                    1e-6);
        }
    }

    /** Four legs with two ends each stand under one setting of the saw. */
    @Test
    void allLegsAreSawnWithOneSetting() {
        Features made = stool();
        List<SettingGroup> saw = SettingGroup.of(made.features()).stream()
                .filter(group -> group.setting().tool().equals("crosscut blade"))
                .filter(group -> group.features().get(0).part().endsWith("leg"))
                .toList();
        assertEquals(1, saw.size());
        assertEquals(8, saw.get(0).features().size());
    }
}
