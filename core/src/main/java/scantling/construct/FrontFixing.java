package scantling.construct;

import java.util.List;
import java.util.Map;
import scantling.measure.Dim;

/** Fixes a drawer's front to its box so that it can be shifted until the gaps are even. */
final class FrontFixing {
    private static final String PROFILE = "drawer-front fixing";

    private FrontFixing() {}

    /** Two fixings in a low box, four in a high one. */
    static void fix(Site in, Part front, Part boxFront) {
        Dim many = in.hardware().of(PROFILE, "four from");
        int count = boxFront.width().compareTo(many) >= 0 ? 4 : 2;
        in.fitting(
                "front fixings",
                "adjustable drawer-front fixing",
                count,
                "piece",
                List.of(front, boxFront),
                Map.of(),
                Map.of("profile", PROFILE));
    }
}
