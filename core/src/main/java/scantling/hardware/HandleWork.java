package scantling.hardware;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import scantling.construct.Fitting;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/**
 * Screw holes of handles and knobs: on a drawer front level and even from left to right, on a door upright on its free
 * stile, at the end that is nearer to the hand.
 */
final class HandleWork {
    private static final String PROFILE = "handle";

    private final Workings workings;
    private final Fitting fitting;
    private final Dim centres;

    HandleWork(Workings workings, Fitting fitting) {
        this.workings = workings;
        this.fitting = fitting;
        centres = fitting.sizes().getOrDefault("centres", Dim.ZERO);
    }

    void drill() {
        Optional<Part> part = fitting.on().stream().findFirst().flatMap(workings::find);
        if (part.isEmpty() || part.get().turn().isPresent()) {
            return;
        }
        Optional<Door> door = workings.assembly().fittings().stream()
                .filter(other -> other.path().equals(Workings.parent(fitting.path()) + " / hinges"))
                .findFirst()
                .flatMap(hinges -> Door.of(workings, hinges));
        List<Spot> spots = door.map(found -> onDoor(part.get(), found)).orElseGet(() -> onDrawer(part.get()));
        drill(part.get(), spots);
    }

    private void drill(Part part, List<Spot> spots) {
        boolean drawer = part.lie().length() == Axis.ACROSS;
        List<String> notes =
                new ArrayList<>(List.of("Right through, on a board that keeps the far side from breaking out."));
        if (drawer) {
            notes.add("Drill on through the front of the box once the front is set.");
        }
        Drill drill = new Drill(Drill.BRAD_POINT, size("hole"), part.thickness(), notes);
        int index = 0;
        for (Spot at : spots) {
            index++;
            if (!holds(part, at)) {
                tooWide(part);
                return;
            }
            String path = "%s / hole %d".formatted(fitting.path(), index);
            workings.add(workings.hole(path, fitting.path(), part, Side.FRONT, at, drill));
        }
    }

    private List<Spot> onDrawer(Part front) {
        Box box = front.box();
        Dim up = box.bottom().plus(box.extent(Axis.UP).half());
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < fitting.count(); i++) {
            Dim middle = box.left().plus(box.extent(Axis.ACROSS).share(2L * i + 1, 2L * fitting.count()));
            for (Dim across : pair(middle)) {
                spots.add(new Spot(across, box.front(), up));
            }
        }
        return spots;
    }

    private List<Spot> onDoor(Part stile, Door door) {
        Box box = stile.box();
        boolean board = stile.path().equals(door.leaf().path());
        Dim free = door.face().plane(door.hung().opposite());
        Dim across = board
                ? door.hung().isFar() ? free.plus(size("from edge")) : free.minus(size("from edge"))
                : box.left().plus(box.extent(Axis.ACROSS).half());
        return pair(height(door.face())).stream()
                .map(up -> new Spot(across, box.front(), up))
                .toList();
    }

    /** The middle of a door's handle: at the top of low doors, at the bottom of high ones, at the hand between. */
    private Dim height(Box face) {
        Dim fromEnd = size("from end").plus(centres.half());
        if (face.top().compareTo(size("low doors end below")) <= 0) {
            return face.top().minus(fromEnd);
        }
        return face.bottom().compareTo(size("hand height")) >= 0 ? face.bottom().plus(fromEnd) : size("hand height");
    }

    private List<Dim> pair(Dim middle) {
        return centres.value().isZero()
                ? List.of(middle)
                : List.of(middle.minus(centres.half()), middle.plus(centres.half()));
    }

    private boolean holds(Part part, Spot at) {
        Dim margin = size("hole").half().plus(workings.size("hole", "least wood"));
        for (Axis axis : List.of(Axis.ACROSS, Axis.UP)) {
            if (at.on(axis).minus(margin).compareTo(part.box().plane(Side.of(axis, false))) < 0
                    || at.on(axis).plus(margin).compareTo(part.box().plane(Side.of(axis, true))) > 0) {
                return false;
            }
        }
        return true;
    }

    private void tooWide(Part part) {
        workings.caution(
                fitting.path(),
                "A handle with screws %s apart does not go on %s, which is %s long."
                        .formatted(workings.say(centres), part.path(), workings.say(part.length())),
                List.of(centres, part.length()),
                "worked out from the parts",
                "Say pull: knob, or handle centres that fit.");
    }

    private Dim size(String value) {
        return workings.size(PROFILE, value);
    }
}
