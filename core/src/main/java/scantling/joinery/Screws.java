package scantling.joinery;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Setting;
import scantling.feature.Surface;
import scantling.feature.WoodScrew;
import scantling.measure.Dim;
import scantling.space.Box;

/**
 * Screws through the part that lies with its face against the other: a clearance hole there, a pilot in the other. Where
 * neither does, as where a case stands on its plinth, there are none.
 */
final class Screws implements JointMaker {
    /** A thread wants this many diameters of wood about it. */
    private static final String STOCK = "screw stock";

    /** @param through whether the receiving part is the one that the screws go through */
    private record Driven(WoodScrew screw, Dim length, boolean through) {}

    @Override
    public void make(Meeting at, Bench bench) {
        Optional<Boolean> through = through(at);
        if (through.isEmpty()) {
            edges(at, bench);
            return;
        }
        Optional<Driven> driven = driven(at, bench, through.get());
        if (driven.isEmpty()) {
            none(at, bench);
            return;
        }
        List<Dim> places = places(at, bench, driven.get());
        for (int i = 0; i < places.size(); i++) {
            holes(at, bench, i + 1, places.get(i), driven.get());
        }
        if (places.isEmpty()) {
            bench.choose(
                    at,
                    "common practice",
                    "no screws: what else is cut where %s meet leaves no place for one; its neighbours hold it, or glue it."
                            .formatted(Bench.both(at)));
            return;
        }
        WoodScrew used = driven.get().screw();
        String size =
                "no. %s x %s".formatted(used.gauge(), bench.sayUnit(driven.get().length()));
        bench.hold(at, "screw", size, places.size());
        explain(at, bench, driven.get(), places);
    }

    /** Edge on edge or end on edge no screw goes through either. */
    private static void edges(Meeting at, Bench bench) {
        bench.choose(
                at,
                "common practice: screws go through a face",
                "no screws: %s meets %s with the %s on the %s, and neither is screwed through its width; it stands there by its weight, or say dowel or pocket screw."
                        .formatted(
                                at.entering().path(),
                                at.receiving().path(),
                                at.surface(false).words(),
                                at.surface(true).words()));
    }

    private static Optional<Boolean> through(Meeting at) {
        boolean faceE = isFace(at.surface(false));
        boolean faceR = isFace(at.surface(true));
        if (faceE && faceR) {
            return Optional.of(at.room(true).compareTo(at.room(false)) < 0);
        }
        return faceE || faceR ? Optional.of(faceR) : Optional.empty();
    }

    private static boolean isFace(Surface surface) {
        return surface == Surface.FACE_SIDE || surface == Surface.BACK_SIDE;
    }

    private static boolean isEnd(Surface surface) {
        return surface == Surface.NEAR_END || surface == Surface.FAR_END;
    }

    private static Optional<Driven> driven(Meeting at, Bench bench, boolean through) {
        Dim board = at.room(through);
        Dim into = at.room(!through);
        Dim most = smaller(board.times(3), board.plus(into).minus(bench.rules().length("least behind a hole")));
        long stock = bench.rules().share(STOCK).numerator();
        return bench.rules().screws().stream()
                .filter(screw -> screw.shank().times(stock).compareTo(at.thinSize()) <= 0)
                .filter(screw -> screw.leastBoard()
                        .filter(least -> least.compareTo(board) <= 0)
                        .isPresent())
                .flatMap(screw -> screw.lengths().stream()
                        .filter(length -> length.compareTo(most) <= 0
                                && length.minus(board).compareTo(screw.shank().times(2)) >= 0)
                        .max(Comparator.naturalOrder())
                        .map(length -> new Driven(screw, length, through))
                        .stream())
                .max(Comparator.comparing(each -> each.screw().shank()));
    }

    private static Dim smaller(Dim a, Dim b) {
        return a.compareTo(b) <= 0 ? a : b;
    }

    private static List<Dim> places(Meeting at, Bench bench, Driven driven) {
        JointRules rules = bench.rules();
        Dim half = driven.screw().clearance().half();
        Box whole = at.across(
                at.start(at.run()),
                at.end(at.run()),
                at.middle().minus(half),
                at.middle().plus(half));
        Dim deepE = driven.through() ? driven.length().minus(at.room(true)) : at.room(false);
        Dim deepR = driven.through() ? at.room(true) : driven.length().minus(at.room(false));
        Row row = Row.clearOf(
                at,
                bench,
                at.pocket(whole, deepE, false),
                at.pocket(whole, deepR, true),
                rules.length("clear of another"));
        double length = Row.mm(at.runSize());
        double end = Math.max(
                Row.mm(rules.length("screw narrow")), Math.min(Row.mm(rules.length("screw first")), length / 4));
        double between = length - 2 * end;
        int count = between < Row.mm(rules.length("screw narrow"))
                ? 1
                : 1 + (int) Math.ceil(between / Row.mm(rules.length("screw spacing")) - 1e-9);
        return row.spread(
                count,
                Row.mm(driven.screw().clearance()),
                Math.min(end, length / 2),
                Row.mm(rules.length("screw narrow")));
    }

    private static void holes(Meeting at, Bench bench, int number, Dim place, Driven driven) {
        boolean through = driven.through();
        WoodScrew screw = driven.screw();
        Surface outside = opposite(at.surface(through));
        Dim board = at.room(through);
        hole(at, bench, through, number, place, screw.clearance(), board, outside, "Countersink for the head.");
        Dim pilot = screw.pilot(at.part(!through).material());
        hole(at, bench, !through, number, place, pilot, driven.length().minus(board), at.surface(!through), "Pilot.");
    }

    private static void hole(
            Meeting at,
            Bench bench,
            boolean receiving,
            int number,
            Dim place,
            Dim across,
            Dim deep,
            Surface from,
            String note) {
        Dim middle = at.start(at.run()).plus(place);
        Dim half = across.half();
        Box round = at.across(
                middle.minus(half),
                middle.plus(half),
                at.middle().minus(half),
                at.middle().plus(half));
        Map<String, Dim> sizes = new LinkedHashMap<>();
        sizes.put("depth stop", deep);
        bench.cut(
                at,
                receiving,
                at.pocket(round, deep, receiving),
                new Bench.Cut(
                        "screw " + number,
                        Feature.Kind.HOLE,
                        from,
                        Optional.of(half),
                        new Setting("drill", "twist bit " + bench.say(across), sizes, List.of(note))));
    }

    private static Surface opposite(Surface surface) {
        return switch (surface) {
            case FACE_SIDE -> Surface.BACK_SIDE;
            case BACK_SIDE -> Surface.FACE_SIDE;
            case FACE_EDGE -> Surface.BACK_EDGE;
            case BACK_EDGE -> Surface.FACE_EDGE;
            case NEAR_END -> Surface.FAR_END;
            case FAR_END -> Surface.NEAR_END;
        };
    }

    private static void explain(Meeting at, Bench bench, Driven driven, List<Dim> places) {
        WoodScrew screw = driven.screw();
        Part through = at.part(driven.through());
        Part into = at.part(!driven.through());
        Dim board = at.room(driven.through());
        Dim thread = driven.length().minus(board);
        bench.choose(
                at,
                screw.source(),
                "%d %s no. %s x %s through %s, %s thick, %s into %s: %s. Clearance holes of %s in %s, countersunk; pilots of %s in %s, which is %s. %s%s"
                        .formatted(
                                places.size(),
                                places.size() == 1 ? "screw" : "screws",
                                screw.gauge(),
                                bench.say(driven.length()),
                                through.path(),
                                bench.say(board),
                                bench.sayUnit(thread),
                                into.path(),
                                why(at, bench, driven),
                                bench.sayUnit(screw.clearance()),
                                through.path(),
                                bench.sayUnit(screw.pilot(into.material())),
                                into.path(),
                                wood(into),
                                where(bench, places),
                                Strengths.screw(into, isEnd(at.surface(!driven.through())), screw.shank(), thread)),
                driven.length(),
                board,
                screw.clearance(),
                screw.pilot(into.material()));
    }

    /** What kept it from being thicker, and how long it may be. */
    private static String why(Meeting at, Bench bench, Driven driven) {
        long stock = bench.rules().share(STOCK).numerator();
        return "the thickest that has %d times its own thickness of wood about it in %s, and as long as both let it be"
                .formatted(stock, bench.sayUnit(at.thinSize()));
    }

    private static String wood(Part part) {
        return switch (part.material().kind()) {
            case SHEET -> "a sheet and drilled like hardwood";
            default -> WoodScrew.isSoft(part.material()) ? "softwood" : "hardwood";
        };
    }

    private static String where(Bench bench, List<Dim> places) {
        String at = places.stream().map(bench::say).collect(Collectors.joining(", "));
        return places.size() == 1
                ? "It stands %s along the joint.".formatted(bench.sayUnit(places.get(0)))
                : "They stand at %s along the joint.".formatted(at);
    }

    /** Where the parts only overlap a little, or a thin panel stands on its edge, its neighbours hold it. */
    private static void none(Meeting at, Bench bench) {
        Dim thinner = smaller(at.entering().thickness(), at.receiving().thickness());
        boolean partly = at.thinSize().compareTo(thinner) < 0;
        if (partly || thinner.compareTo(bench.rules().length("screwed edge")) < 0) {
            bench.choose(
                    at,
                    bench.rules().share(STOCK).source(),
                    "no screws: the parts meet over %s only; glue it, its neighbours hold it."
                            .formatted(bench.sayUnit(at.thinSize())),
                    at.thinSize());
        } else {
            tooThin(at, bench);
        }
    }

    private static void tooThin(Meeting at, Bench bench) {
        WoodScrew thinnest = bench.rules().screws().stream()
                .filter(screw -> screw.leastBoard().isPresent())
                .findFirst()
                .orElseThrow();
        Dim least = thinnest.shank().times(bench.rules().share(STOCK).numerator());
        bench.find(
                Finding.Severity.CAUTION,
                at,
                "No screw suits where %s meet: %s by %s, and a no. %s wants %s of wood about it."
                        .formatted(
                                Bench.both(at),
                                bench.say(at.runSize()),
                                bench.sayUnit(at.thinSize()),
                                thinnest.gauge(),
                                bench.sayUnit(least)),
                bench.rules().share(STOCK).source(),
                "Glue it and pin it, or make the stock at least %s thick.".formatted(bench.sayUnit(least)),
                at.runSize(),
                at.thinSize(),
                least);
    }
}
