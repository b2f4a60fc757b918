package scantling.hardware;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Setting;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;
import scantling.stock.HardwareProfiles;

/**
 * Butt hinges of an inset door: a bed for a leaf in the door's edge and one beside it, each as deep as leaves the gap:
 * (closed thickness - gap) / 2.
 */
final class ButtWork {
    private static final String PROFILE = HardwareProfiles.BUTT_HINGE;
    private static final int GAUGE = 6;

    private final Workings workings;
    private final Door door;
    private final Dim length;
    private final Dim deep;

    private ButtWork(Workings workings, Door door) {
        this.workings = workings;
        this.door = door;
        length = lengthFor(workings, door);
        Dim gap = Dim.ZERO.minus(door.overlay());
        deep = workings.size(PROFILE, "closed thickness").minus(gap).half();
    }

    /** Cuts the doors of one opening, their hinges alike. */
    static void cut(Workings workings, List<Door> doors) {
        for (Door door : doors) {
            if (door.isInset()) {
                new ButtWork(workings, door).cut();
            } else {
                overlay(workings, door);
            }
        }
    }

    private static Dim lengthFor(Workings workings, Door door) {
        List<Dim> heights = workings.profiles().all(PROFILE, "door up to");
        List<Dim> lengths = workings.profiles().all(PROFILE, "length");
        for (int i = 0; i < heights.size() - 1; i++) {
            if (door.height().compareTo(heights.get(i)) <= 0) {
                return lengths.get(i);
            }
        }
        return lengths.get(lengths.size() - 1);
    }

    private void cut() {
        if (!deep.value().isPositive()) {
            workings.caution(
                    door.fitting().path(),
                    "The gap beside %s is %s; a butt hinge closes to %s and would stand in no bed."
                            .formatted(
                                    door.leaf().path(),
                                    workings.say(Dim.ZERO.minus(door.overlay())),
                                    workings.say(size("closed thickness"))),
                    List.of(door.overlay(), size("closed thickness")),
                    "check the hinge in hand",
                    "Make the gap smaller than %s.".formatted(workings.say(size("closed thickness"))));
            return;
        }
        HingePlaces places = new HingePlaces(workings, door, PROFILE, this::beds);
        List<Dim> distances = places.distances();
        Dim from = distances.stream()
                .filter(distance -> places.at(distance).clear())
                .findFirst()
                .orElse(distances.get(0));
        HingePlaces.Found found = places.at(from);
        found.holes().forEach(workings::addAll);
        explain(found);
        new HingeChecks(workings, door, places).checkHeld(found, 2 + screws() * 2);
    }

    private int screws() {
        return length.compareTo(size("third screw from")) >= 0 ? 3 : 2;
    }

    private List<Feature> beds(Dim up, int index) {
        String path = "%s / hinge %d".formatted(door.fitting().path(), index + 1);
        List<Feature> all = new ArrayList<>(
                bed(path + " in door", door.leaf(), door.hung(), door.face().plane(door.hung()), up));
        Spot middle = new Spot(door.wall().plane(), leafMiddle(), up);
        door.wall()
                .holding(
                        middle,
                        size("leaf").minus(workings.size("hole", "least wood").times(2)))
                .ifPresent(part -> all.addAll(bed(
                        path + " in side",
                        part,
                        door.hung().opposite(),
                        part.box().plane(door.hung().opposite()),
                        up)));
        return all;
    }

    private Dim leafMiddle() {
        return door.face().front().plus(size("leaf").half());
    }

    private List<Feature> bed(String path, Part part, Side from, Dim plane, Dim up) {
        Dim bottom = from.isFar() ? plane.minus(deep) : plane.plus(deep);
        Box bed = part.box()
                .with(from, plane)
                .with(from.opposite(), bottom)
                .with(Side.FRONT, door.face().front())
                .with(Side.BACK, door.face().front().plus(size("leaf")))
                .with(Side.BOTTOM, up.minus(length.half()))
                .with(Side.TOP, up.plus(length.half()));
        List<Feature> all = new ArrayList<>();
        all.add(Cut.of(
                path + " bed",
                door.fitting().path(),
                Feature.Kind.RECESS,
                part,
                bed,
                from,
                Optional.empty(),
                setting()));
        Dim room = part.box().extent(Axis.ACROSS).minus(workings.size("hole", "least behind"));
        Drill drill = new Drill(
                Drill.TWIST,
                workings.screw(GAUGE).pilot(part.material()),
                Dim.smallerOf(size("screw depth"), room),
                List.of("Wood screws No. %d; centre them in the holes of the leaf.".formatted(GAUGE)));
        for (int i = 0; i < screws(); i++) {
            Dim first = up.minus(length.half()).plus(size("screws from end"));
            Dim at = first.plus(length.minus(size("screws from end").times(2)).share(i, screws() - 1L));
            all.add(workings.hole(
                    "%s screw %d".formatted(path, i + 1),
                    door.fitting().path(),
                    part,
                    from,
                    new Spot(plane, leafMiddle(), at),
                    drill));
        }
        return all;
    }

    private Setting setting() {
        Map<String, Dim> sizes = new LinkedHashMap<>();
        sizes.put("depth", deep);
        sizes.put("width", size("leaf"));
        sizes.put("length", length);
        return new Setting(
                "trim router or chisel",
                "",
                sizes,
                List.of("Scribe round the leaf itself; square the corners with a chisel."));
    }

    private void explain(HingePlaces.Found found) {
        workings.choose(
                door.fitting().path(),
                "%d butt hinges %s long, %s from the ends of the door; beds %s deep: closed they are %s, and the gap is %s."
                        .formatted(
                                door.fitting().count(),
                                workings.say(length),
                                workings.say(found.fromEnd()),
                                workings.say(deep),
                                workings.say(size("closed thickness")),
                                workings.say(Dim.ZERO.minus(door.overlay()))),
                List.of(length, found.fromEnd(), deep),
                "common practice: each leaf let in by half of what its hinge is thicker than the gap; check the hinge"
                        + " in hand");
    }

    private static void overlay(Workings workings, Door door) {
        workings.caution(
                door.fitting().path(),
                "%s lies before the case; butt hinges hang doors inside it."
                        .formatted(door.leaf().path()),
                List.of(door.overlay()),
                "common practice",
                "Say set: inset, or hung on: cup hinges.");
    }

    private Dim size(String value) {
        return workings.size(PROFILE, value);
    }
}
