package scantling.joinery;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Setting;
import scantling.feature.Surface;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Side;

/** Two parts that both reach the corner, each cut from its inner to its outer arris. */
final class Mitres implements JointMaker {
    @Override
    public void make(Meeting at, Bench bench) {
        if (at.shared().isEmpty()) {
            return;
        }
        for (boolean receiving : new boolean[] {false, true}) {
            Part part = at.part(receiving);
            Axis along = part.lie().length();
            Axis other = at.part(!receiving).lie().length();
            if (along == other) {
                return;
            }
            bench.cut(
                    at,
                    receiving,
                    at.shared(),
                    new Bench.Cut(
                            "mitre",
                            Feature.Kind.MITRE,
                            end(at, part),
                            Optional.empty(),
                            setting(at, part, along, other)));
        }
        bench.choose(
                at,
                "common practice",
                "mitred over %s by %s, both ends long to the outer arris.%s"
                        .formatted(
                                bench.say(at.shared().extent(at.entering().lie().length())),
                                bench.sayUnit(
                                        at.shared().extent(at.receiving().lie().length())),
                                Strengths.UNKNOWN),
                at.shared().extent(at.entering().lie().length()));
    }

    /** The end of a part that lies in the corner. */
    static Surface end(Meeting at, Part part) {
        Axis along = part.lie().length();
        Side far = Side.of(along, true);
        boolean isFar = part.box().plane(far).equals(at.shared().plane(far));
        return Surface.of(Side.of(along, isFar), part.lie());
    }

    /** Through the thickness the blade is tilted; on the face the gauge is swung. */
    private static Setting setting(Meeting at, Part part, Axis along, Axis other) {
        Dim run = at.shared().extent(along);
        Dim rise = at.shared().extent(other);
        boolean tilted = other == part.lie().thickness();
        Map<String, Dim> sizes = new LinkedHashMap<>();
        sizes.put("back from the long end", run);
        return new Setting(
                "table saw",
                tilted ? "mitre gauge square" : "mitre sled",
                sizes,
                Map.of(tilted ? "blade tilt" : "mitre gauge", Math.toDegrees(Math.atan2(Row.mm(run), Row.mm(rise)))),
                List.of("Cut a test corner and hold a square in it before the last cut."));
    }
}
