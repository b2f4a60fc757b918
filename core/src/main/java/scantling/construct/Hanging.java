package scantling.construct;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.measure.Dim;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;
import scantling.stock.CupHinge;
import scantling.stock.HardwareProfiles;
import scantling.stock.HingeCount;

/**
 * Hangs one door: how many hinges of which kind, and on what.
 *
 * @param said the doors
 * @param door its place
 * @param made its parts
 */
record Hanging(Element said, Site door, List<Part> made) {
    private static final String BUTTS = "butt hinges";
    static final Field HUNG_ON = Field.choice("hung on", "What the doors are hung on.", "cup hinges", BUTTS);
    static final Field COUNT = Field.optional(
            "hinges", Field.Kind.COUNT, "How many hinges each door gets; by its height and weight when not said.", "2");
    static final Field FROM_ENDS = Field.optional(
            "hinges from ends",
            Field.Kind.LENGTH,
            "How far the middles of the first and the last hinge are from the ends of the door; worked out when not"
                    + " said.",
            "80 mm");

    /** Hangs it. @param leaf the stile, or the one board @param hung the side it turns about @param air the opening */
    void on(Part leaf, Side hung, Box air) {
        Dim height = door.space().extent(Axis.UP);
        int hinges = said.findCount("hinges").orElseGet(() -> HingeCount.of(height, Weights.kilograms(made)));
        List<Part> on = new ArrayList<>(List.of(leaf));
        on.addAll(Holders.at(door, air, hung));
        Map<String, Dim> sizes = new HashMap<>(Map.of("door height", height));
        said.findLength("hinges from ends").ifPresent(from -> sizes.put("from end", from));
        Map<String, String> words = new HashMap<>(door.holes(air));
        words.put("profile", said.is("hung on", BUTTS) ? HardwareProfiles.BUTT_HINGE : HardwareProfiles.CUP_HINGE);
        words.put("set", said.text("set"));
        words.put("hung", hung.word());
        words.put("chart", HingeCount.knows(height, Weights.kilograms(made)) ? "within" : "beyond");
        door.fitting("hinges", what(leaf, hung, air), hinges, "piece", on, sizes, words);
    }

    private String what(Part leaf, Side hung, Box air) {
        if (said.is("hung on", BUTTS)) {
            return "butt hinge";
        }
        Dim reach = leaf.box().plane(hung).minus(air.plane(hung));
        Optional<CupHinge> hinge = CupHinge.solve(hung.isFar() ? reach : Dim.ZERO.minus(reach), door.hardware());
        return HardwareProfiles.CUP_HINGE
                + hinge.map(found -> ", " + found.arm().words()).orElse("");
    }
}
