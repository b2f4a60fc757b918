package scantling.stock;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import scantling.measure.Dim;
import scantling.timber.Names;
import scantling.timber.Table;

/**
 * A size in which sheets are sold.
 *
 * @param name {@code 4 x 8 ft}
 * @param aliases other ways to write it
 * @param length the longer side
 * @param width the shorter side
 * @param source who says so
 */
public record SheetSize(String name, List<String> aliases, Dim length, Dim width, String source) {
    private static final List<SheetSize> ALL = Table.read("stock/sheet-sizes.csv").rows().stream()
            .map(SheetSize::of)
            .toList();
    private static final Names<SheetSize> NAMES =
            Names.of(ALL, size -> Stream.concat(Stream.of(size.name()), size.aliases().stream()));

    /** Takes its own copy. */
    public SheetSize {
        aliases = List.copyOf(aliases);
    }

    private static SheetSize of(Table.Row row) {
        String name = row.text("name");
        return new SheetSize(
                name,
                row.list("aliases"),
                row.dim("length", name + " sheet length"),
                row.dim("width", name + " sheet width"),
                row.source());
    }

    /** All sizes in the order of the table; the first is the usual one. */
    public static List<SheetSize> all() {
        return ALL;
    }

    /** The size written so: {@code 4x8}, {@code 2440 x 1220}. */
    public static Optional<SheetSize> find(String name) {
        return NAMES.find(name);
    }

    /** The size that comes as usual for a kind of sheet: multi-ply birch five by five feet, else four by eight. */
    public static SheetSize usualFor(String panel) {
        String key = Table.read("stock/usual-sheets.csv")
                .findRow("panel", panel)
                .map(row -> row.text("size"))
                .orElse(ALL.get(0).name());
        return NAMES.find(key).orElseThrow();
    }
}
