package scantling.cutting;

import scantling.timber.Table;

/**
 * What makes one plan better than another that costs the same money. Everything is told in fence settings, so that it can be
 * weighed: a cut is worth a part of one, an offcut some.
 *
 * @param setting moving the fence once; 0 when only money counts
 * @param cut one cut
 * @param offcut one offcut to keep that is as large as the largest stock; a smaller one counts by the square of its share, so
 *     that one large offcut is worth more than two halves
 * @param sizes one more size of part on a piece of stock
 * @param nearEdge the first cuts come off near the edge, so that one person can hold what falls and the heavy rest lies on
 *     the table; otherwise the widest piece comes off first
 * @param together taking the strips that are glued into one part from one piece of stock less
 */
public record Wishes(double setting, double cut, double offcut, double sizes, boolean nearEdge, double together) {
    /** Only money counts. */
    public static final Wishes MONEY_ONLY = new Wishes(0, 0, 0, 0, false, 0);

    /** What counts for a maker who has not said: the values of {@code cutting/wishes.csv}. */
    public static final Wishes USUAL = usual();

    public Wishes {
        if (!(setting >= 0 && cut >= 0 && offcut >= 0 && sizes >= 0 && together >= 0)) {
            throw new IllegalArgumentException(
                    "Setting (%s), cut (%s), offcut (%s), sizes (%s) and together (%s) must be 0 or more."
                            .formatted(setting, cut, offcut, sizes, together));
        }
    }

    private static Wishes usual() {
        Table table = Table.read("cutting/wishes.csv");
        return new Wishes(
                value(table, "setting"),
                value(table, "cut"),
                value(table, "offcut"),
                value(table, "sizes"),
                false,
                value(table, "together"));
    }

    private static double value(Table table, String name) {
        return table.findRow("name", name).orElseThrow().number("value");
    }

    /** The same, with another value of a whole offcut. */
    public Wishes withOffcut(double value) {
        return new Wishes(setting, cut, value, sizes, nearEdge, together);
    }

    /** The same, with another value of one more size on a sheet. */
    public Wishes withSizes(double value) {
        return new Wishes(setting, cut, offcut, value, nearEdge, together);
    }

    /** The same, with the first cuts near the edge or not. */
    public Wishes withNearEdge(boolean first) {
        return new Wishes(setting, cut, offcut, sizes, first, together);
    }

    /** The same, with another value of moving the fence once. */
    public Wishes withSetting(double value) {
        return new Wishes(value, cut, offcut, sizes, nearEdge, together);
    }

    /** The same, with another value of one cut. */
    public Wishes withCut(double value) {
        return new Wishes(setting, value, offcut, sizes, nearEdge, together);
    }

    /** The same, with another value of strips from one piece of stock. */
    public Wishes withTogether(double value) {
        return new Wishes(setting, cut, offcut, sizes, nearEdge, value);
    }

    /** Whether anything but money counts. */
    public boolean any() {
        return setting > 0 || cut > 0 || offcut > 0 || sizes > 0 || together > 0;
    }
}
