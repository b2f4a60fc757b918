package scantling.hardware;

import java.util.List;
import java.util.Optional;
import scantling.construct.Finding;
import scantling.construct.Fitting;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.stock.HardwareProfiles;

/** How high the line of a slide's screws lies: where its box asks for it, or on a row of the 32 mm system. */
record SlideLine(Workings workings, Fitting fitting, String profile) {
    /** The line above the piece's floor. @param boxSide a side of the box */
    Dim of(Part boxSide) {
        HardwareProfiles profiles = workings.profiles();
        Dim wanted = boxSide.box().bottom().plus(profiles.of(profile, "line up"));
        Optional<Grid> grid = Grid.of(fitting, workings);
        if (grid.isEmpty() || grid.get().has(wanted)) {
            return wanted;
        }
        return profiles.find(profile, "slide height")
                .flatMap(height -> onRow(boxSide, grid.get(), wanted, height.half()))
                .orElseGet(() -> offRow(grid.get(), wanted));
    }

    /** A side-mount slide may sit anywhere on the side of the box that covers it. */
    private Optional<Dim> onRow(Part boxSide, Grid grid, Dim wanted, Dim half) {
        Dim row = grid.nearest(wanted);
        Dim lowest = boxSide.box().bottom().plus(half);
        Dim highest = boxSide.box().top().minus(half);
        Dim line = row.compareTo(lowest) < 0 ? row.plus(grid.pitch()) : row;
        return Optional.of(line).filter(at -> at.compareTo(lowest) >= 0 && at.compareTo(highest) <= 0);
    }

    private Dim offRow(Grid grid, Dim wanted) {
        Dim row = grid.nearest(wanted);
        Dim off = row.minus(wanted);
        workings.find(new Finding(
                Finding.Severity.NOTE,
                fitting.path(),
                "The holes of %s lie at %s, which is no row of the 32 mm system in %s; the nearest row is at %s."
                        .formatted(
                                fitting.path(),
                                workings.say(wanted),
                                grid.panel().path(),
                                workings.say(row)),
                List.of(wanted, row, off),
                "32 mm system: rows 32 mm apart; heights of fronts that are 32 x m - gap keep drawers on them",
                "Drill these free, or move the drawer %s by %s: make the row below it so much %s."
                        .formatted(
                                off.value().isNegative() ? "down" : "up",
                                workings.say(Dim.largerOf(off, Dim.ZERO.minus(off))),
                                off.value().isNegative() ? "lower" : "higher")));
        return wanted;
    }
}
