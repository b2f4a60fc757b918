package scantling.hardware;

import java.util.List;
import java.util.Optional;
import scantling.construct.Fitting;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Side;

/** Holes for the sleeves of levelling feet in the lower face of a bottom: at its corners, and pairs evenly between. */
final class FootWork {
    private static final String PROFILE = "levelling foot";

    private final Workings workings;
    private final Fitting fitting;

    FootWork(Workings workings, Fitting fitting) {
        this.workings = workings;
        this.fitting = fitting;
    }

    void drill() {
        Optional<Part> bottom = fitting.on().stream().findFirst().flatMap(workings::find);
        bottom.ifPresent(this::drill);
    }

    private void drill(Part bottom) {
        Dim in = workings.size(PROFILE, "in");
        Dim deep = Dim.smallerOf(
                workings.size(PROFILE, "hole depth"), bottom.thickness().minus(workings.size("hole", "least behind")));
        Drill drill = new Drill(
                Drill.BRAD_POINT, workings.size(PROFILE, "hole"), deep, List.of("For the sleeve of a levelling foot."));
        int pairs = fitting.count() / 2;
        Dim left = bottom.box().left().plus(in);
        Dim between = bottom.box().extent(Axis.ACROSS).minus(in.times(2));
        for (int i = 0; i < pairs; i++) {
            Dim across = left.plus(between.share(i, pairs - 1L));
            String path = "%s / %%s hole %d".formatted(fitting.path(), i + 1);
            hole(
                    bottom,
                    path.formatted("front"),
                    new Spot(across, bottom.box().front().plus(in), bottom.box().bottom()),
                    drill);
            hole(
                    bottom,
                    path.formatted("back"),
                    new Spot(across, bottom.box().back().minus(in), bottom.box().bottom()),
                    drill);
        }
    }

    private void hole(Part bottom, String path, Spot at, Drill drill) {
        workings.add(workings.hole(path, fitting.path(), bottom, Side.BOTTOM, at, drill));
    }
}
