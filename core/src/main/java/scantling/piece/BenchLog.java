package scantling.piece;

import java.util.List;
import java.util.Map;
import scantling.measure.Length;
import scantling.measure.Span;

/**
 * What the bench says of a piece: sizes that were measured, parts that are cut, and rough pieces that are sawn.
 *
 * @param measured sizes taken at the bench
 * @param cut parts that are cut and keep their size
 * @param sawn rough pieces that have left their stock and need not be sawn again
 */
public record BenchLog(List<Measured> measured, List<Cut> cut, List<Sawn> sawn) {
    /** Nothing has been measured or cut yet. */
    public static final BenchLog EMPTY = new BenchLog(List.of(), List.of());

    /** Takes its own copies. */
    public BenchLog {
        measured = List.copyOf(measured);
        cut = List.copyOf(cut);
        sawn = List.copyOf(sawn);
    }

    /** Nothing sawn but what is cut. */
    public BenchLog(List<Measured> measured, List<Cut> cut) {
        this(measured, cut, List.of());
    }

    /** A size taken at the bench. @param path name of the number @param span where it was said */
    public record Measured(String path, Length size, Span span) {}

    /**
     * A part that is cut.
     *
     * @param path name of the part
     * @param sizes its length, width or thickness as measured; one that is not said came out as planned
     * @param span where it was said
     */
    public record Cut(String path, Map<String, Length> sizes, Span span) {
        /** Takes its own copy. */
        public Cut {
            sizes = Map.copyOf(sizes);
        }
    }

    /**
     * Rough pieces sawn for a part.
     *
     * @param path name of the part
     * @param length of each, along the grain
     * @param width of each
     * @param pieces how many: a glued-up blank takes several
     */
    public record Sawn(String path, Length length, Length width, int pieces) {}
}
