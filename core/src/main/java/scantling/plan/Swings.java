package scantling.plan;

import java.util.List;
import scantling.checks.lasting.Climate;
import scantling.checks.lasting.LastingChecks;
import scantling.construct.Assembly;
import scantling.joinery.Swing;

/** Between what moistures the wood of a piece lives, by the air of its home. */
final class Swings {
    private Swings() {}

    /** By its home; as is usual where that says nothing. */
    static Swing of(Assembly assembly) {
        Climate home = LastingChecks.climate(assembly);
        List<Double> year = home.moisture().stream()
                .flatMap(month -> month.find().stream().boxed())
                .toList();
        return year.isEmpty()
                ? Swing.usual()
                : new Swing(
                        year.stream().mapToDouble(each -> each).min().orElse(0),
                        year.stream().mapToDouble(each -> each).max().orElse(0),
                        home.source());
    }
}
