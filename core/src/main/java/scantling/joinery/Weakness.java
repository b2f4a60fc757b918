package scantling.joinery;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import scantling.construct.Finding;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.feature.Surface;
import scantling.measure.Dim;
import scantling.piece.Material;

/** What a maker has insisted on that holds less than it looks: end grain glued or screwed, walls too thin to carry. */
final class Weakness {
    private final Bench bench;
    private final Map<String, String> heldBy = new HashMap<>();

    Weakness(List<Meeting> meetings, Bench bench) {
        this.bench = bench;
        meetings.stream()
                .filter(Weakness::holds)
                .forEach(at -> heldBy.put(
                        group(at.entering().path()), group(at.receiving().path())));
    }

    /** Whether a joint holds two parts together by itself. */
    private static boolean holds(Meeting at) {
        return switch (at.joint().kind()) {
            case CARRIED, MITRE -> false;
            case SCREW -> isFace(at.surface(false)) || isFace(at.surface(true));
            default -> true;
        };
    }

    /** The part that stands for all that are held together with one. */
    private String group(String part) {
        String at = part;
        while (!heldBy.getOrDefault(at, at).equals(at)) {
            at = heldBy.getOrDefault(at, at);
        }
        return at;
    }

    /** Tells what is weak in a joint where it stands. */
    void tell(Meeting at) {
        switch (at.joint().kind()) {
            case GLUED -> {
                if (endGrain(at, false) || endGrain(at, true)) {
                    endGrain(at, "is glued to", at.entering(), at.receiving());
                }
            }
            case MITRE -> {
                if (isSolid(at.entering()) && isSolid(at.receiving()) && !isBacked(at)) {
                    endGrain(at, "is mitred and glued alone to", at.entering(), at.receiving());
                }
            }
            case SCREW, POCKET_SCREW -> screwed(at);
            case HALF_LAP, BRIDLE -> cheeks(at);
            case MORTISE_AND_TENON, HAUNCHED -> breaksOut(at);
            default -> {}
        }
    }

    private static boolean endGrain(Meeting at, boolean receiving) {
        Surface surface = at.surface(receiving);
        return isSolid(at.part(receiving)) && (surface == Surface.NEAR_END || surface == Surface.FAR_END);
    }

    private static boolean isSolid(Part part) {
        return part.material().kind() == Material.Kind.SOLID;
    }

    /** Whether other joints hold both together already, as those of edging with its core. */
    private boolean isBacked(Meeting at) {
        return group(at.entering().path()).equals(group(at.receiving().path()));
    }

    private void endGrain(Meeting at, String how, Part one, Part other) {
        boolean mitre = at.joint().kind() == Joint.Kind.MITRE;
        String better = mitre
                ? "a mitre with spline or biscuits across it"
                : Choosing.pick(at, bench).kind().words();
        bench.find(
                Finding.Severity.CAUTION,
                at,
                "%s %s %s over %s by %s in end grain: glue alone holds little there."
                        .formatted(
                                one.path(), how, other.path(), bench.say(at.runSize()), bench.sayUnit(at.thinSize())),
                "common practice: end grain is doweled, tenoned or splined",
                "Join it with %s, which fits there.".formatted(better),
                at.runSize(),
                at.thinSize());
    }

    private void screwed(Meeting at) {
        boolean slanting = at.joint().kind() == Joint.Kind.POCKET_SCREW;
        if (!slanting && !isFace(at.surface(false)) && !isFace(at.surface(true)) && !isBacked(at)) {
            noFace(at);
            return;
        }
        boolean into = slanting || !isFace(at.surface(true));
        if (!endGrain(at, into)) {
            return;
        }
        JointRules.Share share = bench.rules().share("screw in end grain");
        bench.find(
                Finding.Severity.CAUTION,
                at,
                "Screws through %s go into the end grain of %s: count on %d %% of what they hold in side grain at most."
                        .formatted(
                                at.part(!into).path(),
                                at.part(into).path(),
                                100 * share.numerator() / share.denominator()),
                share.source(),
                "Join them with %s, which fits there, or turn the screws about."
                        .formatted(Choosing.pick(at, bench).kind().words()),
                at.runSize(),
                at.thinSize());
    }

    private void noFace(Meeting at) {
        bench.find(
                Finding.Severity.STOP,
                at,
                "No screw goes through %s or %s: the %s of one lies against the %s of the other, over %s by %s."
                        .formatted(
                                at.entering().path(),
                                at.receiving().path(),
                                at.surface(false).words(),
                                at.surface(true).words(),
                                bench.say(at.runSize()),
                                bench.sayUnit(at.thinSize())),
                "common practice: screws go through a board that lies with its face against the other",
                "Join them with %s, which fits there, or with pocket screws."
                        .formatted(Choosing.pick(at, bench).kind().words()),
                at.runSize(),
                at.thinSize());
    }

    private static boolean isFace(Surface surface) {
        return surface == Surface.FACE_SIDE || surface == Surface.BACK_SIDE;
    }

    /** The cheeks of a lap or the walls of a bridle. */
    private void cheeks(Meeting at) {
        Dim whole = at.shared().extent(at.entering().lie().thickness());
        boolean lap = at.joint().kind() == Joint.Kind.HALF_LAP;
        Dim wall = lap
                ? whole.half()
                : whole.minus(bench.rules().share("tenon thickness").of(whole)).half();
        Dim least = bench.rules().length("least cheek");
        if (!at.shared().isEmpty() && wall.compareTo(least) < 0) {
            Dim needs = lap ? least.times(2) : least.times(3);
            bench.find(
                    Finding.Severity.CAUTION,
                    at,
                    "The %s of %s leaves %s of wood in each, of %s."
                            .formatted(
                                    at.joint().kind().words(),
                                    Bench.both(at),
                                    bench.sayUnit(wall),
                                    bench.sayUnit(whole)),
                    "common practice: %s at least".formatted(bench.sayUnit(least)),
                    "Make both %s thick, or use dowels.".formatted(bench.sayUnit(needs)),
                    wall,
                    least);
        }
    }

    /** A mortise that is nearly through breaks out; one that is through is meant. */
    private void breaksOut(Meeting at) {
        Dim behind = at.room(true).minus(at.depth());
        Dim least = bench.rules().length("least behind a hole");
        if (behind.value().isPositive() && behind.compareTo(least) < 0) {
            Dim most = at.room(true).minus(least);
            bench.find(
                    Finding.Severity.CAUTION,
                    at,
                    "The tenon of %s, %s long, leaves %s of %s, which is %s there: the mortise will break out."
                            .formatted(
                                    at.entering().path(),
                                    bench.sayUnit(at.depth()),
                                    bench.sayUnit(behind),
                                    at.receiving().path(),
                                    bench.sayUnit(at.room(true))),
                    "common practice: %s stay behind a mortise".formatted(bench.sayUnit(least)),
                    "Make it %s long, or take it right through: %s."
                            .formatted(bench.sayUnit(most), bench.sayUnit(at.room(true))),
                    at.depth(),
                    at.room(true),
                    most);
        }
    }

    /** A channel as deep as its board, or deeper than leaves wood to carry. */
    static void channel(Meeting at, Bench bench, Dim deep) {
        JointRules.Share share = bench.rules().share("least left");
        Dim room = at.room(true);
        Dim most = share.of(room);
        if (deep.compareTo(most) <= 0) {
            return;
        }
        boolean through = deep.compareTo(room) >= 0;
        bench.find(
                through ? Finding.Severity.STOP : Finding.Severity.CAUTION,
                at,
                "%s goes %s into %s, which is %s: that %s."
                        .formatted(
                                at.entering().path(),
                                bench.sayUnit(deep),
                                at.receiving().path(),
                                bench.sayUnit(room),
                                through ? "cuts it in two" : "leaves too little to carry"),
                share.source(),
                "Go in by %s at most.".formatted(bench.sayUnit(most)),
                deep,
                room,
                most);
    }

    /** A step that leaves next to nothing of its edge. */
    static void rabbet(Meeting at, Bench bench, Dim down, Dim whole) {
        Dim left = whole.minus(down);
        Dim least = bench.rules().length("least behind a hole");
        if (left.compareTo(least) < 0) {
            bench.find(
                    Finding.Severity.CAUTION,
                    at,
                    "The rabbet for %s is %s deep in %s, which is %s there: %s stay."
                            .formatted(
                                    at.entering().path(),
                                    bench.sayUnit(down),
                                    at.receiving().path(),
                                    bench.sayUnit(whole),
                                    bench.sayUnit(left)),
                    "common practice: %s at least".formatted(bench.sayUnit(least)),
                    "Make it %s deep at most.".formatted(bench.sayUnit(whole.minus(least))),
                    down,
                    whole,
                    left);
        }
    }

    /** A dowel that the maker has said thicker than suits. */
    static void dowel(Meeting at, Bench bench, Dim said, Dim used) {
        if (said.compareTo(used) > 0) {
            bench.find(
                    Finding.Severity.CAUTION,
                    at,
                    "A dowel of %s is more than half of the %s where %s meet; %s is used."
                            .formatted(
                                    bench.sayUnit(said),
                                    bench.sayUnit(at.thinSize()),
                                    Bench.both(at),
                                    bench.sayUnit(used)),
                    bench.rules().share("thickest dowel").source(),
                    "Say %s, or make the stock %s thick.".formatted(bench.sayUnit(used), bench.sayUnit(said.times(2))),
                    said,
                    at.thinSize(),
                    used);
        }
    }
}
