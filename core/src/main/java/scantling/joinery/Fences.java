package scantling.joinery;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import scantling.construct.Part;
import scantling.feature.Setting;
import scantling.measure.Dim;
import scantling.space.Side;

/** How a machine stands for a pocket across the thin way of a joint. */
final class Fences {
    private Fences() {}

    /**
     * Fence and stop; what stands proud of the other is cut with the fence so much higher.
     *
     * @param middle the plane through the middle of what is cut
     * @param deep how deep
     */
    static Setting across(
            Meeting at,
            Bench bench,
            boolean receiving,
            Dim middle,
            Dim deep,
            String machine,
            String tool,
            String... notes) {
        Part part = at.part(receiving);
        Side rides = at.rides(part);
        Dim height = Meeting.from(rides, part, middle);
        Map<String, Dim> sizes = new LinkedHashMap<>();
        sizes.put(
                "fence height from " + Bench.words(rides, part.lie()),
                receiving ? height : height.plus(Proud.of(at, bench)));
        sizes.put("depth stop", deep);
        List<String> all = new ArrayList<>(List.of(notes));
        all.addAll(Proud.notes(at, bench, receiving, height));
        return new Setting(machine, tool, sizes, all);
    }

    /** What a router needs: the bit's edge from a side, the depth, and how often it passes. */
    static Setting router(Bench bench, Dim bit, Map<String, Dim> fence, Dim deep, List<String> notes) {
        Map<String, Dim> sizes = new LinkedHashMap<>(fence);
        sizes.put("depth stop", deep);
        List<String> all = new ArrayList<>(notes);
        all.add(0, passes(bench, deep));
        return new Setting("router", "straight bit " + bench.say(bit), sizes, all);
    }

    /** How many passes a depth takes. */
    static String passes(Bench bench, Dim deep) {
        double each = Row.mm(bench.rules().length("pass"));
        int count = Math.max(1, (int) Math.ceil(Row.mm(deep) / each - 1e-9));
        return count == 1
                ? "One pass."
                : "%d passes, at most %s deep each."
                        .formatted(count, bench.sayUnit(bench.rules().length("pass")));
    }
}
