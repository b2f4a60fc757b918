package scantling.hardware;

import java.util.List;
import java.util.Optional;
import scantling.measure.Dim;

/** Says how the rows of each case that is drilled on the 32 mm system are laid out. */
record Grids(Workings workings) {
    void explain() {
        workings.assembly().fittings().stream()
                .flatMap(fitting -> Optional.ofNullable(fitting.words().get("panel")).stream())
                .distinct()
                .flatMap(path -> workings.find(path).stream())
                .map(panel -> Grid.of(panel, workings.profiles()))
                .forEach(this::explain);
    }

    private void explain(Grid grid) {
        Dim high = grid.panel().length();
        workings.choose(
                grid.panel().path(),
                "Rows of the 32 mm system begin %s from either end: %s is twice that and %d times %s, so the side is drilled the same either way up. Slides, plates and pins share them."
                        .formatted(
                                workings.say(grid.start()),
                                workings.say(high),
                                grid.pitches(),
                                workings.say(grid.pitch())),
                List.of(grid.start(), high, grid.pitch()),
                "balanced panel: height = 2 x start + 32 x k; the start nearest to a cabinet shop's published 46.5 mm");
    }
}
