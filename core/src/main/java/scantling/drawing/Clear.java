package scantling.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import scantling.feature.Feature;
import scantling.feature.Range;

/** Where on a template there is no work. */
final class Clear {
    private Clear() {}

    /** The longest stretch without work, in millimetres of the part. @param whole of the length of the template */
    record Band(double from, double to, double whole) {
        double size() {
            return to - from;
        }
    }

    /** In one direction, between the ends of a template. */
    static Band band(double from, double to, List<Feature> features, Function<Feature, Range> range) {
        List<Range> ranges = features.stream()
                .map(range)
                .sorted(Comparator.comparing(Range::from))
                .toList();
        List<Band> bands = new ArrayList<>();
        double reached = from;
        for (Range each : ranges) {
            bands.add(new Band(reached, each.from().value().toMillimetres(), to - from));
            reached = Math.max(reached, each.to().value().toMillimetres());
        }
        bands.add(new Band(reached, to, to - from));
        return bands.stream().max(Comparator.comparingDouble(Band::size)).orElseThrow();
    }
}
