package scantling.packet;

import java.util.List;

/**
 * What is shown to others than the maker.
 *
 * @param names whether the build record says who made the piece and for whom
 * @param pictures photographs of the work, in order
 */
public record Shown(boolean names, List<Picture> pictures) {
    /** No names, no pictures. */
    public static final Shown NOTHING = new Shown(false, List.of());

    /** A photograph. @param kind {@code jpg} or {@code png} @param caption what stands under it; may be empty */
    public record Picture(String kind, byte[] bytes, String caption) {}

    /** Takes its own copy. */
    public Shown {
        pictures = List.copyOf(pictures);
    }
}
