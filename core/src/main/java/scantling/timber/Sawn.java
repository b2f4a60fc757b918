package scantling.timber;

/** How a board was sawn, which decides the direction in which it is wide. */
public enum Sawn {
    /** Plain or flat sawn: wide along the growth rings, moves most. */
    FLAT,
    /** Quarter sawn: wide along the radius, moves least. */
    QUARTER,
    /** Rift, unknown or of both kinds: somewhere between; the greater movement is taken. */
    MIXED
}
