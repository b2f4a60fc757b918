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
            "How far the two screws of a handle are apart.");
    static final Field PULL =
            Field.choice("pull", "Whether it is a handle on two screws or a knob on one.", "handle", "knob");

    private Handles() {}

    /** @param said what {@code handles} stands in @param on what they are screwed to */
    static void fix(Site in, Element said, Part on) {
        in.fitting(
                "handle",
                said.text("pull"),
                said.count("handles"),
                "piece",
                List.of(on),
                said.is("pull", "knob") ? Map.of() : Map.of("centres", said.length("handle centres")),
                Map.of("profile", "handle"));
    }
}
