package scantling.stock;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import scantling.measure.Dim;
import scantling.timber.Table;

/**
 * What is added to finished sizes on the way to the saw, and what the shop's machines and yard set as limits. Each
 * knows its source; a shop replaces any of them by its key.
 *
 * @param length added to the finished length of a part
 * @param width added to the finished width of a part
 * @param thickness least taken off in planing, both faces together, beyond what the rough class says
 * @param boardExtra extra length bought with each board for machine faults and splits
 * @param jointEdge taken off each edge to true it for a glue joint
 * @param kerf saw cut in solid wood
 * @param sheetKerf saw cut in sheets
 * @param edgeTrim trimmed off each factory edge of a sheet
 * @param endTrim cut off each end of a board before the first part
 * @param leftLong how much longer parts are kept that are trimmed to fit
 * @param widestStrip widest strip of a glue-up
 * @param widestPlaner widest board or glue-up the thickness planer takes
 * @param shortestPlaner shortest piece that goes safely through it
 * @param boardWidth width of a typical board to buy
 * @param boardLength length of a typical board to buy
 * @param offcutLength shortest offcut worth keeping
 * @param offcutWidth narrowest offcut worth keeping
 */
public record Allowances(
        Dim length,
        Dim width,
        Dim thickness,
        Dim boardExtra,
        Dim jointEdge,
        Dim kerf,
        Dim sheetKerf,
        Dim edgeTrim,
        Dim endTrim,
        Dim leftLong,
        Dim widestStrip,
        Dim widestPlaner,
        Dim shortestPlaner,
        Dim boardWidth,
        Dim boardLength,
        Dim offcutLength,
        Dim offcutWidth) {
    private static final Table TABLE = Table.read("stock/allowances.csv");
    private static final Allowances STANDARD = with(key -> Optional.empty());

    /** The table's own. */
    public static Allowances standard() {
        return STANDARD;
    }

    /** The keys by which a shop can replace them. */
    public static List<String> keys() {
        return TABLE.rows().stream().map(row -> row.text("key")).toList();
    }

    /**
     * The shop's own where it has one, else the table's.
     *
     * @param own by key, see {@link #keys}
     */
    public static Allowances with(Function<String, Optional<Dim>> own) {
        Function<String, Dim> pick =
                key -> own.apply(key).orElseGet(() -> TABLE.getRow("key", key).dim("value", key));
        return new Allowances(
                pick.apply("length over finished"),
                pick.apply("width over finished"),
                pick.apply("thickness over finished"),
                pick.apply("extra length per board"),
                pick.apply("joint allowance per edge"),
                pick.apply("kerf"),
                pick.apply("sheet kerf"),
                pick.apply("sheet edge trim"),
                pick.apply("board end trim"),
                pick.apply("left long for trimming"),
                pick.apply("widest strip"),
                pick.apply("widest planer"),
                pick.apply("shortest through the planer"),
                pick.apply("typical board width"),
                pick.apply("typical board length"),
                pick.apply("least offcut length"),
                pick.apply("least offcut width"));
    }
}
