package scantling.hardware;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import scantling.construct.Finding;
import scantling.construct.Fitting;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Side;
import scantling.stock.CupHinge;
import scantling.stock.HardwareProfiles;

/** The cups of one door and the plates beside it. */
final class HingeWork {
    private static final String PROFILE = HardwareProfiles.CUP_HINGE;

    private final Workings workings;
    private final Door door;
    private final Fitting fitting;
    private final CupHinge hinge;
    private final HingePlaces places;

    private HingeWork(Workings workings, Door door, CupHinge hinge) {
        this.workings = workings;
        this.door = door;
        this.hinge = hinge;
        fitting = door.fitting();
        places = new HingePlaces(workings, door, PROFILE, this::holes);
    }

    /**
     * Drills all doors of one opening: their hinges sit alike, as far from the ends as usual, or as near to that as nothing
     * is in the way of any of them.
     */
    static void drill(Workings workings, List<Door> doors) {
        List<HingeWork> hung = new ArrayList<>();
        for (Door door : doors) {
            CupHinge.solve(door.overlay(), workings.profiles())
                    .ifPresentOrElse(
                            hinge -> hung.add(new HingeWork(workings, door, hinge)), () -> noHinge(workings, door));
        }
        if (hung.isEmpty()) {
            return;
        }
        List<Dim> distances = hung.get(0).places.distances();
        Optional<Dim> free = distances.stream()
                .filter(from ->
                        hung.stream().allMatch(work -> work.places.at(from).clear()))
                .findFirst();
        Dim from = free.orElse(distances.get(0));
        hung.forEach(work -> work.drill(work.places.at(from), !from.equals(distances.get(0))));
    }

    private void drill(HingePlaces.Found found, boolean moved) {
        explain(found, moved);
        new HingeChecks(workings, door, places).check(found);
        found.holes().forEach(workings::addAll);
        int plates = (int) workings.made(fitting.path()).stream()
                .filter(hole -> hole.path().contains(" / plate "))
                .count();
        workings.needs(fitting.path(), plates, "system screw", workings.say(size("plate hole")));
        workings.needs(fitting.path(), found.holes().size() * 2, "wood screw", "no. 6");
    }

    /** All holes of one hinge at a height: the cup, its two screws, and the two of the plate as far as wood holds them. */
    private List<Feature> holes(Dim up, int index) {
        List<Feature> all = new ArrayList<>(cup(up, index));
        all.addAll(plate(up, index));
        return all;
    }

    private List<Feature> cup(Dim up, int index) {
        Dim middle = door.in(hinge.cup());
        Dim behind = door.in(hinge.cup().plus(size("screws behind cup")));
        Dim apart = size("screws apart").half();
        Part leaf = door.leaf();
        Drill cup = new Drill(Drill.FORSTNER, size("cup"), size("cup depth"));
        Drill screw = new Drill(
                Drill.TWIST,
                workings.screw(6).pilot(leaf.material()),
                Dim.smallerOf(size("screw depth"), leaf.thickness().minus(size("least behind cup"))),
                List.of("Wood screws No. 6."));
        String path = "%s / cup %d".formatted(fitting.path(), index + 1);
        Dim face = leaf.box().back();
        return List.of(
                workings.hole(path, fitting.path(), leaf, Side.BACK, new Spot(middle, face, up), cup),
                workings.hole(
                        path + " lower screw",
                        fitting.path(),
                        leaf,
                        Side.BACK,
                        new Spot(behind, face, up.minus(apart)),
                        screw),
                workings.hole(
                        path + " upper screw",
                        fitting.path(),
                        leaf,
                        Side.BACK,
                        new Spot(behind, face, up.plus(apart)),
                        screw));
    }

    private List<Feature> plate(Dim up, int index) {
        List<Feature> holes = new ArrayList<>();
        Dim half = size("plate holes apart").half();
        for (Dim at : List.of(up.minus(half), up.plus(half))) {
            Spot spot = new Spot(door.wall().plane(), door.plateRow(), at);
            door.wall().holding(spot, size("plate hole")).ifPresent(part -> {
                String path = "%s / plate %d %s hole"
                        .formatted(fitting.path(), index + 1, holes.isEmpty() ? "lower" : "upper");
                Dim deep = Dim.smallerOf(
                        size("plate hole depth"),
                        part.box().extent(Axis.ACROSS).minus(workings.profiles().of("hole", "least behind")));
                Drill drill = new Drill(Drill.BRAD_POINT, size("plate hole"), deep, List.of("System screws."));
                holes.add(workings.hole(path, fitting.path(), part, door.hung().opposite(), spot, drill));
            });
        }
        return holes;
    }

    private void explain(HingePlaces.Found found, boolean moved) {
        workings.choose(
                fitting.path(),
                "%d hinges for a door %s high; %s arm on a plate %s: overlay %s comes of %s for the arm, %s to the cup's edge, %s for the plate; cups %s from the door's edge and %s from its ends.%s"
                                .formatted(
                                        fitting.count(),
                                        workings.say(door.face().extent(Axis.UP)),
                                        hinge.arm().words(),
                                        workings.say(hinge.plate()),
                                        workings.say(door.overlay()),
                                        workings.say(door.overlay()
                                                .minus(hinge.boring())
                                                .plus(hinge.plate())),
                                        workings.say(hinge.boring()),
                                        workings.say(hinge.plate()),
                                        workings.say(hinge.cup()),
                                        workings.say(found.fromEnd()),
                                        moved ? " Moved clear of what stands in their way." : "")
                        + " The plates take system screws of %s: they leave less play in a punched plate than pan-head screws."
                                .formatted(workings.say(size("plate hole"))),
                List.of(door.overlay(), hinge.boring(), hinge.plate(), hinge.cup(), found.fromEnd()),
                "overlay = fixed distance + boring distance - plate, hinge makers' sheets; check the sheet that came"
                        + " with your hinge");
    }

    private static void noHinge(Workings workings, Door door) {
        HardwareProfiles profiles = workings.profiles();
        workings.find(new Finding(
                Finding.Severity.CAUTION,
                door.fitting().path(),
                "No arm and plate of the profile overlays %s on the %s of %s."
                        .formatted(
                                workings.say(door.overlay()),
                                door.hung().word(),
                                door.leaf().path()),
                List.of(door.overlay()),
                "hinge makers' sheets: overlay = fixed distance + boring distance - plate",
                "Straight arms reach %s to %s, half cranks %s to %s, inset hinges %s to %s."
                        .formatted(
                                workings.say(CupHinge.reach(CupHinge.Arm.STRAIGHT, false, profiles)),
                                workings.say(CupHinge.reach(CupHinge.Arm.STRAIGHT, true, profiles)),
                                workings.say(CupHinge.reach(CupHinge.Arm.HALF, false, profiles)),
                                workings.say(CupHinge.reach(CupHinge.Arm.HALF, true, profiles)),
                                workings.say(CupHinge.reach(CupHinge.Arm.FULL, false, profiles)),
                                workings.say(CupHinge.reach(CupHinge.Arm.FULL, true, profiles)))));
    }

    private Dim size(String value) {
        return workings.profiles().of(PROFILE, value);
    }
}
