package scantling.construct;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.space.Axis;

/** Holds the boards of a case between its sides so that it comes apart again. */
final class KnockDown {
    private static final String PROFILE = "knock-down fitting";
    static final Field COMES_APART = Field.optional(
            "comes apart",
            Field.Kind.FLAG,
            "Whether bottom and top are drawn to the sides by knock-down fittings; they butt against them.",
            "yes");

    private KnockDown() {}

    /** Adds the fittings of one board if the case comes apart. */
    static void fix(Site in, Element said, Part board, List<Part> sides) {
        if (!said.flag("comes apart")) {
            return;
        }
        if (Butting.isHoused(said)) {
            in.problem(
                    said.span(),
                    "Knock-down fittings draw boards against the sides; %s is let into them.".formatted(board.path()),
                    "Write joint: dowel beside it.");
            return;
        }
        List<Part> on = new ArrayList<>(List.of(board));
        on.addAll(sides);
        in.fitting(
                in.nameOf(board) + " / knock-down fittings",
                PROFILE,
                each(in, board) * sides.size(),
                "piece",
                on,
                Map.of(),
                Map.of("profile", PROFILE));
    }

    private static int each(Site in, Part board) {
        double wide = board.box().extent(Axis.DEEP).value().toMillimetres();
        double edge = in.hardware().of(PROFILE, "from edge").value().toMillimetres();
        double apart = in.hardware().of(PROFILE, "apart").value().toMillimetres();
        return 1 + Math.max(1, (int) Math.ceil((wide - 2 * edge) / apart));
    }
}
