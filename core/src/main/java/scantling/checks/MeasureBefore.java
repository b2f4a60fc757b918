package scantling.checks;

import java.util.List;
import scantling.construct.Finding;
import scantling.measure.Dim;
import scantling.measure.Length;

/**
 * A number to measure before parts are cut, because what it may be off by can use up the gap that is left for them.
 *
 * @param number a size of an opening
 * @param gap what the plan leaves to spare in it
 * @param worst what it may be off by when all that bounds it is off the same way
 * @param parts paths of those that are cut to it
 * @param finding the same as the plan says it
 */
public record MeasureBefore(Dim number, Length gap, Length worst, List<String> parts, Finding finding) {
    /** The rule that these findings are judged by. */
    public static final String RULE = "measure first";

    /** Takes its own copy. */
    public MeasureBefore {
        parts = List.copyOf(parts);
    }
}
