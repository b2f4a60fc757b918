package scantling.feature;

import java.util.Arrays;
import scantling.space.Lie;
import scantling.space.Side;

/** One of the six surfaces of a part, named by its marks. */
public enum Surface {
    /** The wide side that is marked as true. */
    FACE_SIDE("face side"),
    /** The wide side opposite the face side. */
    BACK_SIDE("back side"),
    /** The edge that is marked as true. */
    FACE_EDGE("face edge"),
    /** The edge opposite the face edge. */
    BACK_EDGE("back edge"),
    /** The end that lengths are measured from. */
    NEAR_END("near end"),
    /** The other end. */
    FAR_END("far end");

    private final String words;

    Surface(String words) {
        this.words = words;
    }

    /** Which way of the piece it looks on a part that lies so. */
    public Side side(Lie lie) {
        return switch (this) {
            case FACE_SIDE -> lie.faceSide();
            case BACK_SIDE -> lie.faceSide().opposite();
            case FACE_EDGE -> lie.faceEdge();
            case BACK_EDGE -> lie.faceEdge().opposite();
            case NEAR_END -> lie.nearEnd();
            case FAR_END -> lie.nearEnd().opposite();
        };
    }

    /** The surface of a part that looks one way of the piece. */
    public static Surface of(Side side, Lie lie) {
        return Arrays.stream(values())
                .filter(surface -> surface.side(lie) == side)
                .findFirst()
                .orElseThrow();
    }

    /** Whether it lies opposite its mark: depths from it are measured against the mark. */
    public boolean isFar() {
        return this == BACK_SIDE || this == BACK_EDGE || this == FAR_END;
    }

    /** What the bench calls it. */
    public String words() {
        return words;
    }
}
