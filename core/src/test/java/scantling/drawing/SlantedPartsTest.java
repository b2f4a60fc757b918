package scantling.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import scantling.construct.Construction;
import scantling.construct.Part;
import scantling.feature.Surface;
import scantling.measure.LengthFormat;
import scantling.packet.LabelSheet;
import scantling.packet.Order;
import scantling.packet.Packet;
import scantling.packet.Paper;
import scantling.piece.BenchLog;
import scantling.piece.PieceReader;
import scantling.plan.Plan;
import scantling.plan.Planner;
import scantling.plan.Shop;
import scantling.plan.StandardWoods;
import scantling.space.Axis;

/** Parts that lean two ways and end in slants are drawn as they are: the stool whose feet stand out 60 and 40. */
class SlantedPartsTest {
    private static final Plan PLAN = plan();

    private static Plan plan() {
        try (InputStream in = SlantedPartsTest.class.getResourceAsStream("/scantling/pieces/splayed-stool.yaml")) {
            String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
            return Planner.plan(
                            PieceReader.read(text, Construction.language(), StandardWoods.standard())
                                    .piece()
                                    .orElseThrow(),
                            BenchLog.EMPTY,
                            Shop.usual())
                    .plan();
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    private static Part part(String end) {
        return PLAN.assembly().parts().stream()
                .filter(part -> part.path().endsWith(end))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theFeetStandOnTheFloorAndAsFarOutAsWasSaid() {
        Solid left = Solid.of(part("left front leg"));
        Solid right = Solid.of(part("right back leg"));
        assertEquals(0, left.least(Axis.UP), 0.01);
        assertEquals(420, left.most(Axis.UP), 0.01); // the seat, 30 thick, lies at 450
        assertEquals(400, right.most(Axis.ACROSS) - left.least(Axis.ACROSS), 0.01); // the feet make the width
        assertEquals(320, right.most(Axis.DEEP) - left.least(Axis.DEEP), 0.01);
    }

    /** Sides of one body: each edge of a closed surface is run through once in either direction, so their sum is nothing. */
    @Test
    void theFacesOfABodyCloseIt() {
        for (Part part : PLAN.assembly().parts()) {
            Place sum = new Place(0, 0, 0);
            for (List<Place> face : Solid.of(part).faces()) {
                sum = sum.plus(Solid.normal(face), 1);
            }
            assertEquals(0, Math.sqrt(sum.dot(sum)), 0.01, part.path());
        }
    }

    @Test
    void aRailBetweenSplayedLegsIsDrawnAsATrapezium() {
        Profile rail = Profile.of(part("front rail")).orElseThrow();
        List<Profile.Spot3> corners = rail.silhouette(Surface.FACE_SIDE).get(0);
        double longest = corners.stream()
                        .mapToDouble(Profile.Spot3::along)
                        .max()
                        .orElseThrow()
                - corners.stream().mapToDouble(Profile.Spot3::along).min().orElseThrow();
        assertEquals(part("front rail").length().value().toMillimetres(), longest, 0.01);
        // A leg's inner side leans 8.0941 degrees, then 5.4403 across that; on a rail that stands upright 60 high it
        // slants
        // by 60 x tan 8.0941 x cos 5.4403 at each end.
        double shortest = corners.stream()
                        .filter(spot -> spot.across() > 59.9)
                        .mapToDouble(Profile.Spot3::along)
                        .max()
                        .orElseThrow()
                - corners.stream()
                        .filter(spot -> spot.across() > 59.9)
                        .mapToDouble(Profile.Spot3::along)
                        .min()
                        .orElseThrow();
        assertEquals(2 * 60 * 0.142214 * 0.995496, Math.abs(longest - shortest), 0.005);
    }

    @Test
    void itsPlanSaysBothTurnsAndTheAnglesOfTheSaw() {
        String json = new String(
                Objects.requireNonNull(Packet.of(PLAN, LengthFormat.MM)
                        .files(Order.only(List.of("data"), Paper.A4, LabelSheet.plain(Paper.A4)))
                        .get("plan.json")),
                StandardCharsets.UTF_8);
        assertTrue(json.contains("\"then\""));
        assertTrue(json.contains("\"mitreDegrees\" : 8.0939"), json::toString);
        assertEquals(
                List.of(),
                SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(Objects.requireNonNull(Packet.class.getResourceAsStream("plan.schema.json")))
                        .validate(json, InputFormat.JSON));
    }
}
