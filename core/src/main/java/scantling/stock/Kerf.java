package scantling.stock;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import scantling.measure.Dim;
import scantling.timber.Names;
import scantling.timber.Table;

/**
 * What a saw turns to dust.
 *
 * @param saw which saw and blade
 * @param aliases other names it goes by
 * @param width usual width of the cut
 * @param least the narrowest that is usual
 * @param most the widest that is usual
 */
public record Kerf(String saw, List<String> aliases, Dim width, Dim least, Dim most) {
    private static final List<Kerf> ALL =
            Table.read("stock/kerfs.csv").rows().stream().map(Kerf::of).toList();
    private static final Names<Kerf> NAMES =
            Names.of(ALL, kerf -> Stream.concat(Stream.of(kerf.saw()), kerf.aliases().stream()));

    /** Takes its own copy. */
    public Kerf {
        aliases = List.copyOf(aliases);
    }

    private static Kerf of(Table.Row row) {
        String saw = row.text("saw");
        return new Kerf(
                saw,
                row.list("aliases"),
                row.dim("kerf", saw + " kerf"),
                row.dim("least", saw + " least kerf"),
                row.dim("most", saw + " greatest kerf"));
    }

    /** All saws in the order of the table. */
    public static List<Kerf> all() {
        return ALL;
    }

    /** The saw of this name. */
    public static Optional<Kerf> find(String saw) {
        return NAMES.find(saw);
    }
}
