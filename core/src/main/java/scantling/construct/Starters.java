package scantling.construct;

import java.io.InputStream;
import java.util.List;
import java.util.Objects;

/** Pieces to start from, as texts. */
public final class Starters {
    /** Their names, the quick start first. */
    public static final List<String> NAMES =
            List.of("wall-shelf", "bookcase", "bedside-chest", "sideboard", "dining-table", "kitchen");

    private Starters() {}

    /** The text of one. @throws NullPointerException for a name that is not among {@link #NAMES} */
    public static InputStream open(String name) {
        return Objects.requireNonNull(
                Starters.class.getResourceAsStream("/scantling/starters/" + name + ".yaml"), name);
    }
}
