package scantling.hardware;

import java.util.Arrays;
import java.util.List;
import scantling.construct.Fitting;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Side;

/** A bolt through a leg into a cross-dowel nut in the rail, as in beds. */
final class BoltWork {
    private static final String PROFILE = "bed fitting";

    private final Workings workings;
    private final Fitting fitting;

    BoltWork(Workings workings, Fitting fitting) {
        this.workings = workings;
        this.fitting = fitting;
    }

    void drill() {
        List<Part> on = fitting.on().stream()
                .flatMap(path -> workings.find(path).stream())
                .toList();
        Side end = Arrays.stream(Side.values())
                .filter(side -> fitting.is("end", side.word()))
                .findFirst()
                .orElse(Side.LEFT);
        if (on.size() == 2 && on.stream().allMatch(part -> part.turn().isEmpty())) {
            for (int i = 0; i < fitting.count(); i++) {
                bolt(on.get(0), on.get(1), end, height(on.get(0), i), i + 1);
            }
        }
    }

    /** One bolt in the middle of the rail, or two about it. */
    private Dim height(Part rail, int index) {
        Dim middle = rail.box().bottom().plus(rail.box().extent(Axis.UP).half());
        if (fitting.count() == 1) {
            return middle;
        }
        Dim half = size("apart").half();
        return index == 0 ? middle.minus(half) : middle.plus(half);
    }

    private void bolt(Part rail, Part leg, Side end, Dim up, int index) {
        Axis through = rail.lie().thickness();
        Dim middle =
                rail.box().plane(Side.of(through, false)).plus(rail.thickness().half());
        Dim outside = leg.box().plane(end);
        Dim shoulder = leg.box().plane(end.opposite());
        Spot at = new Spot(middle, middle, up).with(end.axis(), outside);
        String path = "%s / %%s %d".formatted(fitting.path(), index);
        String owner = fitting.path();
        Dim across = leg.box().extent(end.axis());
        workings.add(workings.hole(
                path.formatted("head"),
                owner,
                leg,
                end,
                at,
                new Drill(
                        Drill.FORSTNER,
                        size("head"),
                        size("head depth"),
                        List.of("First, for the head and its washer."))));
        workings.add(workings.hole(
                path.formatted("bolt hole in leg"),
                owner,
                leg,
                end,
                at,
                new Drill(
                        Drill.BRAD_POINT, size("bolt hole"), across, List.of("On through the middle of the recess."))));
        inRail(rail, end, at.with(end.axis(), shoulder), path);
    }

    private void inRail(Part rail, Side end, Spot shoulder, String path) {
        Dim rests = rail.box().plane(end);
        Dim tenon = end.isFar()
                ? rests.minus(shoulder.on(end.axis()))
                : shoulder.on(end.axis()).minus(rests);
        Dim deep = size("nut in").plus(size("nut")).plus(tenon);
        Dim nutAt = end.isFar()
                ? shoulder.on(end.axis()).minus(size("nut in"))
                : shoulder.on(end.axis()).plus(size("nut in"));
        Side inside = rail.lie().faceSide().opposite();
        Drill bolt = new Drill(
                Drill.BRAD_POINT,
                size("bolt hole"),
                deep,
                List.of("Through the leg, with the joint put together dry."));
        Drill nut = new Drill(
                Drill.BRAD_POINT,
                size("nut"),
                rail.thickness().minus(size("nut wood behind")),
                List.of("From the side that does not show."));
        workings.add(workings.hole(path.formatted("bolt hole in rail"), fitting.path(), rail, end, shoulder, bolt));
        workings.add(workings.hole(
                path.formatted("nut"), fitting.path(), rail, inside, shoulder.with(end.axis(), nutAt), nut));
    }

    private Dim size(String value) {
        return workings.size(PROFILE, value);
    }
}
