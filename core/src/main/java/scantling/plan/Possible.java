package scantling.plan;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Making;
import scantling.measure.Span;
import scantling.piece.BenchLog;
import scantling.piece.Problem;

/**
 * What a piece can be at all. A text is held to it where it is read; a size from the bench can still be a slip of the unit,
 * or leave nothing of another part.
 */
final class Possible {
    /** As in a text: no piece of furniture is longer. */
    private static final Length LONGEST = Length.mm(30_000);

    private Possible() {}

    /** Whether a size can have been measured on a piece. */
    static boolean size(Length size) {
        return size.abs().compareTo(LONGEST) <= 0;
    }

    /** That a size cannot have been measured. */
    static Problem tooLong(String path, Length size, Span span) {
        return new Problem(
                span,
                "%s: %s is absurdly long for a measured size. It is not used.".formatted(path, size),
                "At most 30 m; take it back and measure again. Is the unit right?");
    }

    /** What a bench says that cannot be: sizes of parts that are cut. */
    static List<Problem> sizes(BenchLog.Cut cut) {
        return cut.sizes().entrySet().stream()
                .filter(size -> !size(size.getValue()))
                .map(size -> tooLong(cut.path() + " / " + size.getKey(), size.getValue(), cut.span()))
                .toList();
    }

    /** Parts of which nothing is left. */
    static List<Problem> parts(Assembly assembly) {
        return assembly.parts().stream().flatMap(Possible::part).toList();
    }

    private static Stream<Problem> part(Part part) {
        return Stream.of(
                        Map.entry("length", part.length()),
                        Map.entry("width", part.width()),
                        Map.entry("thickness", part.thickness()))
                .filter(size -> !size.getValue().value().isPositive())
                .map(size -> new Problem(
                        spanOf(size.getValue()),
                        "Nothing is left of %s: its %s comes out at %s."
                                .formatted(
                                        part.path(),
                                        size.getKey(),
                                        size.getValue().value()),
                        "See how it is worked out, and change or take back the size that leaves no room for it."));
    }

    /** Where a number is written, or the first line. */
    static Span spanOf(Dim dim) {
        return dim.making() instanceof Making.Given given ? given.span() : new Span(1, 1, 0, 0);
    }
}
