package scantling.space;

/** Questions about outlines that need numbers. */
public final class Outlines {
    private Outlines() {}

    /** Whether it goes once around some wood: no two of its sides meet but neighbours, and it has an area. */
    public static boolean isSimple(Outline outline) {
        return Corners.isSimple(Corners.of(outline));
    }

    /** Its area in square millimetres. */
    public static double area(Outline outline) {
        return Math.abs(Corners.area(Corners.of(outline)));
    }
}
