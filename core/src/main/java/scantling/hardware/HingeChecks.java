package scantling.hardware;

import java.util.List;
import java.util.Optional;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.stock.HardwareProfiles;

/** What stands against the hinges of a door where they are. */
record HingeChecks(Workings workings, Door door, HingePlaces places) {
    private static final String PROFILE = HardwareProfiles.CUP_HINGE;

    void check(HingePlaces.Found found) {
        if (found.clear()) {
            wood(found);
        }
        inTheWay(found);
        thickness();
        spacing(found);
        chart();
    }

    /** The same for hinges without cups. @param each how many features a hinge has that is held on both sides */
    void checkHeld(HingePlaces.Found found, int each) {
        inTheWay(found);
        spacing(found);
        chart();
        if (found.holes().stream().anyMatch(hinge -> hinge.size() < each)) {
            workings.caution(
                    door.fitting().path(),
                    "%s finds no wood for its hinges beside the opening."
                            .formatted(door.leaf().path()),
                    List.of(door.face().front()),
                    "worked out from the parts",
                    "Put a board or a stile there, flush with the side of the opening and the front of the door.");
        }
    }

    /** Higher or heavier than any door of the chart. */
    private void chart() {
        if (door.fitting().is("chart", "beyond")) {
            workings.caution(
                    door.fitting().path(),
                    "A door %s high and as heavy as %s is beyond the chart; %d hinges are the most it gives."
                            .formatted(
                                    workings.say(door.height()),
                                    Workings.parent(door.fitting().path()),
                                    door.fitting().count()),
                    List.of(door.height()),
                    "hinge maker's chart: five hinges to about 100 in and 60 lb",
                    "Make the door lighter, or two doors of it.");
        }
    }

    private void wood(HingePlaces.Found found) {
        boolean held = found.holes().stream().allMatch(hinge -> plates(hinge) == 2);
        if (!held) {
            workings.caution(
                    door.fitting().path(),
                    "%s finds no wood for the plates of its hinges beside the opening, %s behind its front."
                            .formatted(
                                    door.leaf().path(),
                                    workings.say(door.plateRow()
                                            .minus(door.opening().box().front()))),
                    List.of(door.plateRow()),
                    "32 mm system pages: plates 37 mm behind the front edge",
                    "Put a board or a filling strip there, flush with the side of the opening, or use hinges for face"
                            + " frames.");
        }
    }

    private static long plates(List<Feature> holes) {
        return holes.stream().filter(hole -> hole.path().contains(" / plate ")).count();
    }

    private void inTheWay(HingePlaces.Found found) {
        if (found.clear()) {
            return;
        }
        found.ups().forEach(up -> places.inTheWay(up).ifPresent(part -> blocked(part, up)));
        found.holes().stream()
                .flatMap(List::stream)
                .forEach(hole -> workings.findClash(hole).ifPresent(other -> tooNear(hole, other)));
    }

    /** The distance from the ends nearest to the usual one at which nothing is in the way. */
    private Optional<Dim> nearestFree() {
        return places.usualDistances().stream()
                .filter(from -> places.at(from).clear())
                .findFirst();
    }

    private void tooNear(Feature hole, Feature other) {
        workings.caution(
                door.fitting().path(),
                "The hole %s runs into %s in %s.".formatted(hole.path(), other.path(), hole.part()),
                List.of(hole.along().middle(), other.along().middle()),
                "common practice: 3 mm of wood between two holes",
                remedy("Move what %s belongs to.".formatted(other.path())));
    }

    private String remedy(String otherwise) {
        return nearestFree()
                .map(from -> "Say hinges from ends: %s, the nearest that is clear.".formatted(workings.say(from)))
                .orElse(otherwise);
    }

    private void blocked(Part part, Dim up) {
        workings.caution(
                door.fitting().path(),
                "A hinge of %s, its middle %s above the floor of the piece, runs into %s, which reaches from %s to %s."
                        .formatted(
                                door.leaf().path(),
                                workings.say(up),
                                part.path(),
                                workings.say(part.box().bottom()),
                                workings.say(part.box().top())),
                List.of(up, part.box().bottom(), part.box().top()),
                "arm and plate of the profile; check the sheet that came with your hinge",
                remedy("Move %s, or set it back behind the hinges.".formatted(part.path())));
    }

    private void thickness() {
        Dim behind = door.leaf().thickness().minus(size("cup depth"));
        if (behind.compareTo(size("least behind cup")) < 0) {
            workings.caution(
                    door.fitting().path(),
                    "Cups %s deep leave %s of %s, which is %s thick."
                            .formatted(
                                    workings.say(size("cup depth")),
                                    workings.say(behind),
                                    door.leaf().path(),
                                    workings.say(door.leaf().thickness())),
                    List.of(behind, door.leaf().thickness()),
                    "common practice: 3 mm behind the cup",
                    "Make it %s thick, or use hinges with a shallower cup."
                            .formatted(workings.say(size("cup depth").plus(size("least behind cup")))));
        }
    }

    private void spacing(HingePlaces.Found found) {
        Dim apart = found.ups().get(found.ups().size() - 1).minus(found.ups().get(0));
        Dim width = door.face().extent(Axis.ACROSS);
        if (apart.compareTo(width) <= 0) {
            workings.caution(
                    door.fitting().path(),
                    "The outer hinges of %s are %s apart, and the door is %s wide: it will sag on them."
                            .formatted(door.leaf().path(), workings.say(apart), workings.say(width)),
                    List.of(apart, width),
                    "hinge maker's sheet: the distance between top and bottom hinge must exceed the door's width",
                    "Make the door narrower than %s, or two doors of it.".formatted(workings.say(apart)));
        }
    }

    private Dim size(String value) {
        return workings.profiles().of(PROFILE, value);
    }
}
