package scantling.construct;

import java.util.List;
import scantling.measure.Dim;

/**
 * What a careful master would say on looking at the plan.
 *
 * @param severity how much it matters
 * @param subject path of the part, joint, opening or number it concerns
 * @param sentence what is so
 * @param numbers the numbers behind it
 * @param source who says so
 * @param remedy what to do
 */
public record Finding(
        Severity severity, String subject, String sentence, List<Dim> numbers, String source, String remedy) {
    /** How much a finding matters. */
    public enum Severity {
        /** Do not cut before this is put right. */
        STOP,
        /** Think before going on. */
        CAUTION,
        /** Good to know. */
        NOTE
    }
}
