package scantling.hardware;

import java.util.ArrayList;
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
            for (Dim deep : rows(fitting, shelf, holder, grid.isPresent())) {
                column(fitting, holder, inside(shelf, holder), deep, up);
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

    /** One upright row: the shelf's own hole and the spare ones about it. */
    private void column(Fitting fitting, Part holder, Side from, Dim deep, Dim up) {
        Drill drill = new Drill(Drill.BRAD_POINT, size("hole"), depth(holder));
        Dim plane = holder.box().plane(from);
        List<Feature> column = new ArrayList<>();
        for (Dim height : heights(up)) {
            Spot at = new Spot(plane, deep, height);
            if (onPart(holder, at)) {
                column.add(workings.hole("", fitting.path(), holder, from, at, drill));
            }
        }
        for (Feature hole : column) {
            boolean own =
                    Cut.same(hole, workings.hole("", fitting.path(), holder, from, new Spot(plane, deep, up), drill));
            Optional<Feature> clash = workings.findClash(hole);
            if (clash.isEmpty()) {
                workings.add(named(hole, fitting, holder));
            } else if (own && !Cut.same(hole, clash.get())) {
                blocked(fitting, hole, clash.get());
            }
        }
    }

    /** The shelf's own height first, so that a spare hole never takes the place of one that is needed. */
    private List<Dim> heights(Dim up) {
        List<Dim> all = new ArrayList<>(List.of(up));
        for (Dim spare : Spots.row(size("pitch"), size("pitch"), size("spare up and down"))) {
            all.add(up.plus(spare));
            all.add(up.minus(spare));
        }
        return all;
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

    private static Feature named(Feature hole, Fitting fitting, Part holder) {
        String path = "%s / hole in %s at %s, %s"
                .formatted(
                        fitting.path(),
                        holder.path(),
                        hole.across().middle().value().millimetres().toPlainString(),
                        hole.along().middle().value().millimetres().toPlainString());
        return Cut.named(hole, path);
    }

    private void blocked(Fitting fitting, Feature hole, Feature other) {
        workings.caution(
                fitting.path(),
                "A pin hole in %s, %s from its near end, runs into %s."
                        .formatted(hole.part(), workings.say(hole.along().middle()), other.path()),
                List.of(hole.along().middle(), other.along().middle()),
                "common practice: 3 mm of wood between two holes",
                "Set the shelf %s higher or lower, or set it back.".formatted(workings.say(size("pitch"))));
    }

    private Dim size(String value) {
        return workings.size(PROFILE, value);
    }
}
