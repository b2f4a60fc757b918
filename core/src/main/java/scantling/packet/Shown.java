package scantling.packet;

import java.util.List;

/**
 * What is shown to others than the maker.
 *
 * @param names whether the build record says who made the piece and for whom
 * @param pictures photographs of the work, in order
 * @param unprinted how many photographs there are besides that paper cannot take
 */
public record Shown(boolean names, List<Picture> pictures, int unprinted) {
    /** No names, no pictures. */
    public static final Shown NOTHING = new Shown(false, List.of());

    /** All photographs can be printed. */
    public Shown(boolean names, List<Picture> pictures) {
        this(names, pictures, 0);
    }

    /** A photograph. @param kind {@code jpg} or {@code png} @param caption what stands under it; may be empty */
    public record Picture(String kind, byte[] bytes, String caption) {}

    /** Takes its own copy. */
    public Shown {
        pictures = List.copyOf(pictures);
    }
}
