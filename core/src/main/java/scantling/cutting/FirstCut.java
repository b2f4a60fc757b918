package scantling.cutting;

/** What the first cuts on a sheet must be. */
public enum FirstCut {
    /** Whatever gives the better plan. */
    ANY,
    /** Rips along the length first. */
    ALONG,
    /** Crosscuts first. */
    ACROSS;

    /** Whether a first cut in this direction is allowed. */
    public boolean allows(CutDirection direction) {
        return this == ANY || name().equals(direction.name());
    }
}
