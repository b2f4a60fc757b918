package scantling.hardware;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Fitting;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Setting;
import scantling.feature.Withdrawal;
import scantling.measure.Dim;
import scantling.piece.Material;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/**
 * Fastens a top so that it can move: clips in slots of upright rails, or screws through slotted holes of rails that lie
 * flat under it.
 */
final class TopWork {
    private static final String PROFILE = "table-top clip";
    private static final int GAUGE = 8;

    private final Workings workings;
    private final Fitting fitting;

    TopWork(Workings workings, Fitting fitting) {
        this.workings = workings;
        this.fitting = fitting;
    }

    void cut() {
        Optional<Part> rail = part(0);
        Optional<Part> top = part(1);
        if (rail.isEmpty() || top.isEmpty() || rail.get().turn().isPresent()) {
            return;
        }
        Dim deep = Dim.smallerOf(size("screw depth"), top.get().thickness().minus(size("least above")));
        int made = 0;
        List<Dim> places = places(rail.get());
        for (Dim along : places) {
            made += place(rail.get(), top.get(), along, deep, made + 1) ? 1 : 0;
        }
        explain(top.get(), made, deep);
    }

    private Optional<Part> part(int index) {
        return index < fitting.on().size() ? workings.find(fitting.on().get(index)) : Optional.empty();
    }

    private static boolean isFlat(Part rail) {
        return rail.lie().thickness() == Axis.UP;
    }

    /** The direction in which the fastenings follow each other. */
    private static Axis run(Part rail) {
        if (rail.lie().thickness() != Axis.UP) {
            return rail.lie().thickness() == Axis.ACROSS ? Axis.DEEP : Axis.ACROSS;
        }
        return rail.lie().length();
    }

    private List<Dim> places(Part rail) {
        Axis run = run(rail);
        Dim first = rail.box().plane(Side.of(run, false)).plus(size("from end"));
        Dim last = rail.box().plane(Side.of(run, true)).minus(size("from end"));
        int count = fitting.count();
        if (count < 2 || last.compareTo(first) <= 0) {
            return List.of(first.plus(last).half());
        }
        List<Dim> places = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            places.add(first.plus(last.minus(first).share(i, count - 1L)));
        }
        return places;
    }

    /** Makes one, moved along by steps where something is in the way. @return whether it found a place */
    private boolean place(Part rail, Part top, Dim along, Dim deep, int index) {
        Dim step = size("slot long").half();
        for (Dim at : List.of(along, along.plus(step), along.minus(step))) {
            List<Feature> features = isFlat(rail) ? flat(rail, top, at, deep, index) : clip(rail, top, at, deep, index);
            if (!features.isEmpty() && features.stream().allMatch(workings::isClear)) {
                workings.addAll(features);
                return true;
            }
        }
        return false;
    }

    private List<Feature> clip(Part rail, Part top, Dim along, Dim deep, int index) {
        Side inside = inside(rail, top);
        Axis run = run(rail);
        Dim face = rail.box().plane(inside);
        Dim in = inside.isFar() ? face.plus(size("screw in")) : face.minus(size("screw in"));
        Spot at =
                new Spot(along, along, rail.box().top()).with(inside.axis(), in).with(run, along);
        if (!holds(top.box(), at)) {
            return List.of();
        }
        Dim down = rail.box().top().minus(size("slot down"));
        Box slot = rail.box()
                .slab(inside, size("slot deep"))
                .with(Side.of(run, false), along.minus(size("slot long").half()))
                .with(Side.of(run, true), along.plus(size("slot long").half()))
                .with(Side.TOP, down.plus(size("slot wide").half()))
                .with(Side.BOTTOM, down.minus(size("slot wide").half()));
        String path = "%s / %%s %d".formatted(fitting.path(), index);
        return List.of(
                Cut.of(
                        path.formatted("slot"),
                        fitting.path(),
                        Feature.Kind.SLOT,
                        rail,
                        slot,
                        inside,
                        Optional.empty(),
                        slotSetting()),
                workings.hole(path.formatted("pilot"), fitting.path(), top, Side.BOTTOM, at, pilot(top, deep)));
    }

    private Setting slotSetting() {
        Map<String, Dim> sizes = new LinkedHashMap<>();
        sizes.put("fence height", size("slot down"));
        sizes.put("depth stop", size("slot deep"));
        return new Setting("biscuit joiner", "", sizes, List.of("From the upper edge, one plunge for each clip."));
    }

    private List<Feature> flat(Part rail, Part top, Dim along, Dim deep, int index) {
        Axis across = rail.lie().width();
        Dim middle = rail.box().plane(Side.of(across, false)).plus(rail.width().half());
        Spot at = new Spot(along, along, rail.box().top()).with(across, middle).with(run(rail), along);
        if (!holds(top.box(), at)) {
            return List.of();
        }
        String path = "%s / %%s %d".formatted(fitting.path(), index);
        Drill through = new Drill(
                Drill.TWIST, workings.screw(GAUGE).clearance(), rail.thickness(), List.of("From below, countersunk."));
        Feature hole = workings.hole(path.formatted("screw hole"), fitting.path(), rail, Side.BOTTOM, at, through);
        return List.of(
                moves(top) ? slotted(path, rail, top, at, through) : hole,
                workings.hole(path.formatted("pilot"), fitting.path(), top, Side.BOTTOM, at, pilot(top, deep)));
    }

    private static boolean moves(Part top) {
        return top.material().kind() != Material.Kind.SHEET;
    }

    /** Long across the grain of the top, so that the screw gives way as it moves. */
    private Feature slotted(String path, Part rail, Part top, Spot at, Drill through) {
        Axis moving = top.lie().width();
        Dim more = size("slotted hole").minus(through.diameter()).half();
        Box hole = at.with(Axis.UP, rail.box().bottom()).hole(Side.BOTTOM, through.diameter(), rail.thickness());
        Box slot = hole.inset(Side.of(moving, false), Dim.ZERO.minus(more))
                .inset(Side.of(moving, true), Dim.ZERO.minus(more));
        return Cut.of(
                path.formatted("slotted hole"),
                fitting.path(),
                Feature.Kind.SLOT,
                rail,
                slot,
                Side.BOTTOM,
                Optional.of(through.diameter().half()),
                through.setting(Cut.fence(rail, Side.BOTTOM, at), workings.say(through.diameter())));
    }

    private Drill pilot(Part top, Dim deep) {
        return new Drill(
                Drill.TWIST,
                workings.screw(GAUGE).pilot(top.material()),
                deep,
                List.of("Wood screws No. %d.".formatted(GAUGE)));
    }

    /** The side of an upright rail that looks at the middle of the top. */
    private static Side inside(Part rail, Part top) {
        Axis axis = rail.lie().thickness();
        boolean far = middle(rail.box(), axis).compareTo(middle(top.box(), axis)) < 0;
        return Side.of(axis, far);
    }

    private static Dim middle(Box box, Axis axis) {
        return box.plane(Side.of(axis, false))
                .plus(box.plane(Side.of(axis, true)))
                .half();
    }

    private boolean holds(Box top, Spot at) {
        Dim margin = size("screw in").half();
        return at.across().minus(margin).compareTo(top.left()) >= 0
                && at.across().plus(margin).compareTo(top.right()) <= 0
                && at.deep().minus(margin).compareTo(top.front()) >= 0
                && at.deep().plus(margin).compareTo(top.back()) <= 0;
    }

    private void explain(Part top, int made, Dim deep) {
        if (made == 0) {
            workings.caution(
                    fitting.path(),
                    "No place was found for a fastening of %s.".formatted(top.path()),
                    List.of(),
                    "worked out from the parts",
                    "Fasten it by hand, with slotted holes.");
            return;
        }
        Withdrawal.of(top.material(), workings.screw(GAUGE).shank(), deep)
                .ifPresent(load -> workings.choose(
                        fitting.path(),
                        "%d screws No. %d, %s in %s: in tests each draws out at about %.0f N; count on %.0f N."
                                .formatted(
                                        made,
                                        GAUGE,
                                        workings.say(deep),
                                        top.material().of(),
                                        load.ultimate(),
                                        load.design()),
                        List.of(deep),
                        load.source()));
    }

    private Dim size(String value) {
        return workings.size(PROFILE, value);
    }
}
