package scantling.cutting;

/** Which way a saw cut runs over a piece. */
public enum CutDirection {
    /** A rip: the cut runs along the length and divides the width. */
    ALONG,
    /** A crosscut: the cut runs across the length and divides it. */
    ACROSS;

    /** The direction square to this one. */
    public CutDirection other() {
        return this == ALONG ? ACROSS : ALONG;
    }
}
