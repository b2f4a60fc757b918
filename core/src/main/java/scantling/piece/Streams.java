package scantling.piece;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Two lists side by side. */
final class Streams {
    private Streams() {}

    /** Two that stand at the same place. */
    record Pair<T>(T a, T b) {}

    /** Pairs of the items of two lists of the same length. */
    static <T> Stream<Pair<T>> zip(List<T> first, List<T> second) {
        return IntStream.range(0, first.size()).mapToObj(i -> new Pair<>(first.get(i), second.get(i)));
    }
}
