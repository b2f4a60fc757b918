package scantling.hardware;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import scantling.construct.Fitting;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Side;

/** Adjustable fixings of one drawer front: a blind hole in its back, and a loose hole through the front of the box. */
final class FrontWork {
    private static final String PROFILE = "drawer-front fixing";

    private final Workings workings;
    private final Fitting fitting;

    FrontWork(Workings workings, Fitting fitting) {
        this.workings = workings;
        this.fitting = fitting;
    }

    void drill() {
        Optional<Part> front = part(0);
        Optional<Part> boxFront = part(1);
        if (front.isEmpty() || boxFront.isEmpty()) {
            return;
        }
        Drill blind = new Drill(Drill.FORSTNER, size("hole"), depth(front.get()), List.of("For the fixing."));
        Drill loose = new Drill(
                Drill.BRAD_POINT,
                size("clearance"),
                boxFront.get().thickness(),
                List.of("Right through; the screw has play in it."));
        int index = 0;
        for (Spot at : spots(boxFront.get())) {
            index++;
            String path = fitting.path() + " / %s " + index;
            workings.add(workings.hole(path.formatted("hole"), fitting.path(), front.get(), Side.BACK, at, blind));
            workings.add(
                    workings.hole(path.formatted("screw hole"), fitting.path(), boxFront.get(), Side.BACK, at, loose));
        }
    }

    private Optional<Part> part(int index) {
        return index < fitting.on().size() ? workings.find(fitting.on().get(index)) : Optional.empty();
    }

    private Dim depth(Part front) {
        Dim deep = Dim.smallerOf(size("hole depth"), front.thickness().minus(size("least behind")));
        if (deep.compareTo(size("hole depth")) < 0) {
            workings.caution(
                    fitting.path(),
                    "%s is %s thick; the fixing wants a hole %s deep and %s left behind it."
                            .formatted(
                                    front.path(),
                                    workings.say(front.thickness()),
                                    workings.say(size("hole depth")),
                                    workings.say(size("least behind"))),
                    List.of(front.thickness(), size("hole depth")),
                    "check the sheet that came with the fixing",
                    "Make the front %s thick, or screw it on through oversize holes."
                            .formatted(workings.say(size("hole depth").plus(size("least behind")))));
        }
        return deep;
    }

    private List<Spot> spots(Part boxFront) {
        Dim left = boxFront.box().left().plus(size("from side"));
        Dim right = boxFront.box().right().minus(size("from side"));
        List<Dim> ups = fitting.count() > 2
                ? List.of(
                        boxFront.box().bottom().plus(size("from edge")),
                        boxFront.box().top().minus(size("from edge")))
                : List.of(boxFront.box()
                        .bottom()
                        .plus(boxFront.box().extent(Axis.UP).half()));
        List<Spot> spots = new ArrayList<>();
        for (Dim up : ups) {
            spots.add(new Spot(left, boxFront.box().back(), up));
            spots.add(new Spot(right, boxFront.box().back(), up));
        }
        return spots;
    }

    private Dim size(String value) {
        return workings.size(PROFILE, value);
    }
}
