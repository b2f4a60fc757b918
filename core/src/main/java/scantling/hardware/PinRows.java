package scantling.hardware;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import scantling.construct.Fitting;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Side;

/**
 * Holes for shelf pins: two rows in each side, for the shelf as drawn and a few pitches up and down, as far as nothing is
 * in the way. In a case on the 32 mm system they lie on its rows.
 */
final class PinRows {
    private static final String PROFILE = "shelf pin";

    private final Workings workings;
    private final Map<String, Set<Side>> drilledFrom = new TreeMap<>();

    PinRows(Workings workings) {
        this.workings = workings;
    }

    void drill() {
        List<Fitting> all = workings.fittings(PROFILE);
        for (Fitting fitting : all) {
            shelf(fitting)
                    .ifPresent(shelf -> holders(fitting)
                            .forEach(holder -> drilledFrom
                                    .computeIfAbsent(holder.path(), key -> new TreeSet<>())
                                    .add(inside(shelf, holder))));
        }
        for (Fitting fitting : all) {
            shelf(fitting).ifPresent(shelf -> drill(fitting, shelf));
        }
    }

    private Optional<Part> shelf(Fitting fitting) {
        return fitting.on().stream().findFirst().flatMap(workings::find);
    }

    private List<Part> holders(Fitting fitting) {
        return fitting.on().stream()
                .skip(1)
                .flatMap(path -> workings.find(path).stream())
                .filter(part -> part.turn().isEmpty())
                .toList();
    }

    /** The side of a holder that looks at the shelf. */
    private static Side inside(Part shelf, Part holder) {
        return holder.box().right().compareTo(shelf.box().left()) <= 0 ? Side.RIGHT : Side.LEFT;
    }

    private void drill(Fitting fitting, Part shelf) {
        Optional<Grid> grid = Grid.of(fitting, workings);
        Dim wanted = shelf.box().bottom().minus(size("below shelf"));
        Dim up = grid.map(rows -> rows.nearest(wanted)).orElse(wanted);
        for (Part holder : holders(fitting)) {
            Side from = inside(shelf, holder);
            List<Dim> rows = rows(fitting, shelf, holder, grid.isPresent());
            for (int i = 0; i < rows.size(); i++) {
                String row = from.opposite().word() + (i == 0 ? " front" : " back");
                column(fitting, holder, from, rows.get(i), up, row);
            }
        }
        grid.ifPresent(rows -> workings.choose(
                fitting.path(),
                "On the row at %s: %s comes to lie %s %s than drawn."
                        .formatted(
                                workings.say(up),
                                shelf.path(),
                                workings.say(away(up, wanted)),
                                up.compareTo(wanted) < 0 ? "lower" : "higher"),
                List.of(up, wanted),
                "32 mm system: pins stand on its rows"));
    }

    private static Dim away(Dim a, Dim b) {
        return Dim.largerOf(a, b).minus(Dim.smallerOf(a, b));
    }

    /** Where the two rows are, from the front; one where there is no room for two. */
    private List<Dim> rows(Fitting fitting, Part shelf, Part holder, boolean system) {
        Dim front =
                system ? systemRow(fitting, shelf, holder) : shelf.box().front().plus(size("from edge"));
        Dim last = shelf.box().back().minus(size("from edge"));
        Dim back = last;
        if (system) {
            List<Dim> row = Spots.row(front, size("pitch"), last);
            back = row.isEmpty() ? last : row.get(row.size() - 1);
        }
        return back.minus(front).compareTo(size("pitch")) < 0 ? List.of(front) : List.of(front, back);
    }

    /** The front row of the system: behind the edge of the side, and behind inset doors that close it. */
    private Dim systemRow(Fitting fitting, Part shelf, Part holder) {
        Dim edge = holder.box().front();
        String panel = fitting.words().getOrDefault("panel", "");
        return workings.assembly().fittings().stream()
                .filter(other -> other.is("panel", panel) && other.is("set", "inset") && other.is("hung", "left"))
                .flatMap(other -> Door.of(workings, other).stream())
                .filter(door -> door.face().bottom().compareTo(shelf.box().bottom()) < 0
                        && door.face().top().compareTo(shelf.box().bottom()) > 0)
                .map(door -> door.face().back())
                .findFirst()
                .orElse(edge)
                .plus(workings.size("32 mm system", "front row"));
    }

    /** One upright row: the shelf's own hole first, so that a spare one never takes its place, then the spare ones. */
    private void column(Fitting fitting, Part holder, Side from, Dim deep, Dim up, String row) {
        hole(fitting, holder, from, new Spot(holder.box().plane(from), deep, up), row + " hole")
                .ifPresent(clash -> blocked(fitting, holder, up, clash));
        List<Dim> spare = Spots.row(size("pitch"), size("pitch"), size("spare up and down"));
        for (int i = 0; i < spare.size(); i++) {
            Spot above = new Spot(holder.box().plane(from), deep, up.plus(spare.get(i)));
            Spot below = new Spot(holder.box().plane(from), deep, up.minus(spare.get(i)));
            hole(fitting, holder, from, above, "%s hole, %d up".formatted(row, i + 1));
            hole(fitting, holder, from, below, "%s hole, %d down".formatted(row, i + 1));
        }
    }

    /** Drills a hole unless the part ends before it or it is there already. @return what is in its way */
    private Optional<Feature> hole(Fitting fitting, Part holder, Side from, Spot at, String name) {
        if (!onPart(holder, at)) {
            return Optional.empty();
        }
        Drill drill = new Drill(Drill.BRAD_POINT, size("hole"), depth(holder));
        Feature hole = workings.hole(fitting.path() + " / " + name, fitting.path(), holder, from, at, drill);
        Optional<Feature> clash = workings.findClash(hole);
        if (clash.isEmpty()) {
            workings.add(hole);
        }
        return clash.filter(other -> !Cut.same(hole, other));
    }

    private boolean onPart(Part holder, Spot at) {
        Dim margin = size("hole").half().plus(workings.size("hole", "least wood"));
        return at.up().minus(margin).compareTo(holder.box().bottom()) >= 0
                && at.up().plus(margin).compareTo(holder.box().top()) <= 0
                && at.deep().minus(margin).compareTo(holder.box().front()) >= 0
                && at.deep().plus(margin).compareTo(holder.box().back()) <= 0;
    }

    /** Where pins stand on both faces of a board, their holes share its thickness. */
    private Dim depth(Part holder) {
        Dim wood = holder.box().extent(Axis.ACROSS).minus(workings.size("hole", "least behind"));
        boolean both = drilledFrom.getOrDefault(holder.path(), Set.of()).size() > 1;
        return Dim.smallerOf(size("hole depth"), both ? wood.half() : wood);
    }

    private void blocked(Fitting fitting, Part holder, Dim up, Feature other) {
        Dim fromEnd = Cut.fromMark(holder, holder.lie().nearEnd(), up);
        workings.caution(
                fitting.path(),
                "A pin hole in %s, %s from its near end, runs into %s."
                        .formatted(holder.path(), workings.say(fromEnd), other.path()),
                List.of(fromEnd, other.along().middle()),
                "common practice: 3 mm of wood between two holes",
                "Set the shelf %s higher or lower, or set it back.".formatted(workings.say(size("pitch"))));
    }

    private Dim size(String value) {
        return workings.size(PROFILE, value);
    }
}
