package scantling.hardware;

import java.util.List;
import scantling.construct.Fitting;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Side;

/** Cams in the lower face of a board, bolts in its ends, and sockets for the bolts in the sides. */
final class KnockDownWork {
    private static final String PROFILE = "knock-down fitting";

    private final Workings workings;
    private final Fitting fitting;

    KnockDownWork(Workings workings, Fitting fitting) {
        this.workings = workings;
        this.fitting = fitting;
    }

    void drill() {
        List<Part> on = fitting.on().stream()
                .flatMap(path -> workings.find(path).stream())
                .toList();
        if (on.size() < 2) {
            return;
        }
        Part board = on.get(0);
        for (Part side : on.subList(1, on.size())) {
            boolean left = side.box().right().compareTo(board.box().left()) <= 0;
            end(board, side, left ? Side.LEFT : Side.RIGHT, fitting.count() / (on.size() - 1));
        }
    }

    private void end(Part board, Part side, Side end, int count) {
        Dim front = board.box().front().plus(size("from edge"));
        Dim between = board.box().back().minus(size("from edge")).minus(front);
        Dim up = board.box().bottom().plus(board.thickness().half());
        for (int i = 0; i < count; i++) {
            Dim deep = count == 1 ? front : front.plus(between.share(i, count - 1L));
            one(board, side, end, new Spot(board.box().plane(end), deep, up), i + 1);
        }
    }

    private void one(Part board, Part side, Side end, Spot at, int index) {
        Dim in = end.isFar() ? at.across().minus(size("cam in")) : at.across().plus(size("cam in"));
        Dim camDeep = Dim.smallerOf(size("cam depth"), board.thickness().minus(workings.size("hole", "least behind")));
        Dim socketDeep = Dim.smallerOf(
                size("socket depth"), side.box().extent(Axis.ACROSS).minus(workings.size("hole", "least behind")));
        String path = "%s / %s %%s %d".formatted(fitting.path(), end.word(), index);
        Drill cam = new Drill(Drill.FORSTNER, size("cam"), camDeep, List.of("For the cam, from below."));
        Drill bolt =
                new Drill(Drill.BRAD_POINT, size("bolt hole"), size("cam in"), List.of("In the end, for the bolt."));
        Drill socket = new Drill(Drill.BRAD_POINT, size("socket"), socketDeep, List.of("For the bolt's thread."));
        String owner = fitting.path();
        workings.add(
                workings.hole(path.formatted("cam"), owner, board, Side.BOTTOM, new Spot(in, at.deep(), at.up()), cam));
        workings.add(workings.hole(path.formatted("bolt"), owner, board, end, at, bolt));
        workings.add(workings.hole(path.formatted("socket"), owner, side, end.opposite(), at, socket));
    }

    private Dim size(String value) {
        return workings.size(PROFILE, value);
    }
}
