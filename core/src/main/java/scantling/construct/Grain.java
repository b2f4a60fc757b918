package scantling.construct;

import java.util.Arrays;
import java.util.Comparator;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Lie;
import scantling.space.Side;

/** Which way the grain of a part runs when the maker does not say. */
final class Grain {
    private Grain() {}

    /** Along the longer direction of a board whose face looks that way. */
    static Lie alongLonger(Box box, Side faceSide) {
        Axis longest = Arrays.stream(Axis.values())
                .filter(axis -> axis != faceSide.axis())
                .max(Comparator.comparing(axis -> box.extent(axis)))
                .orElseThrow();
        return Lie.along(longest, faceSide);
    }
}
