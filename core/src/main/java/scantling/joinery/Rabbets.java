package scantling.joinery;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import scantling.feature.Feature;
import scantling.feature.Setting;
import scantling.feature.Surface;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/** A step along an edge that the entering part is laid into, open toward the nearer side of the other. */
final class Rabbets implements JointMaker {
    @Override
    public void make(Meeting at, Bench bench) {
        if (!at.depth().value().isPositive()) {
            return;
        }
        Axis wide = Channel.width(at);
        Side open = open(at, wide);
        Box step = at.shared().with(open, at.receiving().box().plane(open));
        Dim deep = lap(at, step.extent(wide));
        Box box = at.pocket(step, deep, true);
        Axis run = wide.third(at.side().axis());
        for (boolean far : new boolean[] {false, true}) {
            box = Channel.longer(at, box, Side.of(run, far), Channel.clearance(at, deep));
        }
        boolean fromFace = at.side().axis() == at.receiving().lie().thickness();
        Surface surface =
                fromFace ? at.surface(true) : Surface.of(open, at.receiving().lie());
        Optional<Dim> radius = Optional.ofNullable(at.joint().sizes().get("radius"));
        Dim down = fromFace ? deep : step.extent(wide);
        Dim over = fromFace ? step.extent(wide) : deep;
        boolean through = Channel.ends(at, box, run, over).isEmpty();
        bench.cut(
                at,
                true,
                box,
                new Bench.Cut(
                        "rabbet",
                        Feature.Kind.RABBET,
                        surface,
                        through ? Optional.empty() : radius,
                        setting(bench, over, down, radius, through)));
        Weakness.rabbet(
                at, bench, down, fromFace ? at.room(true) : at.receiving().box().extent(wide));
        bench.choose(
                at,
                "as the piece says, or as is usual there",
                "rabbet %s wide and %s deep in %s for %s.%s"
                        .formatted(
                                bench.say(over),
                                bench.say(down),
                                at.receiving().path(),
                                at.entering().path(),
                                Strengths.UNKNOWN),
                over,
                down);
    }

    /** The side across the step that is nearer to what is laid in. */
    private static Side open(Meeting at, Axis wide) {
        return Stream.of(Side.of(wide, false), Side.of(wide, true))
                .min(Comparator.comparing(side -> Channel.beyond(at, at.shared(), side)))
                .orElseThrow();
    }

    /** How far the step goes in: of the two sizes said, the one that is not its other way. */
    private static Dim lap(Meeting at, Dim other) {
        List<Dim> said = new ArrayList<>();
        for (String key : List.of("depth", "width")) {
            Optional.ofNullable(at.joint().sizes().get(key)).ifPresent(said::add);
        }
        if (said.size() == 2) {
            said.remove(said.get(1).equals(other) ? 1 : said.get(0).equals(other) ? 0 : 1);
        }
        return said.stream()
                .filter(each -> each.compareTo(at.depth()) >= 0)
                .findFirst()
                .orElse(at.depth());
    }

    private static Setting setting(Bench bench, Dim over, Dim down, Optional<Dim> radius, boolean through) {
        Map<String, Dim> sizes = new LinkedHashMap<>();
        sizes.put("width", over);
        sizes.put("depth stop", down);
        List<String> notes = new ArrayList<>(List.of(Fences.passes(bench, down)));
        if (!through) {
            notes.add(radius.map(r ->
                            "Routed from inside the glued frame with a bit of radius %s; the corners stay round, the panel's corners are rounded to the same %s."
                                    .formatted(bench.say(r), bench.sayUnit(r)))
                    .orElse("Stopped: square the corners with a chisel, the panel's corners are square."));
        }
        String tool = radius.map(r -> "rabbeting bit, radius " + bench.say(r)).orElse("rabbeting bit");
        return new Setting("router", tool, sizes, notes);
    }
}
