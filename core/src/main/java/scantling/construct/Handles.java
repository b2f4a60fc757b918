package scantling.construct;

import java.util.List;
import java.util.Map;
import scantling.piece.Element;
import scantling.piece.Field;

/** Handles and knobs of drawers and doors. */
final class Handles {
    static final Field CENTRES = Field.usual(
            "handle centres",
            Field.Kind.LENGTH,
            "128 mm",
            "common practice",
            "How far the two screws of a handle are apart; 0 for a knob.");

    private Handles() {}

    /** @param said what {@code handles} and {@code handle centres} stand in @param on what they are screwed to */
    static void fix(Site in, Element said, Part on) {
        in.fitting(
                "handle",
                said.length("handle centres").value().isZero() ? "knob" : "handle",
                said.count("handles"),
                "piece",
                List.of(on),
                Map.of("centres", said.length("handle centres")),
                Map.of("profile", "handle"));
    }
}
