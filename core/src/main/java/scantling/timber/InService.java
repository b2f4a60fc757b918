package scantling.timber;

import java.util.List;

/**
 * The moisture content that interior woodwork comes to in a place.
 *
 * @param place where, or for what
 * @param average % of the dry mass
 * @param least driest piece, %
 * @param most dampest piece, %
 * @param source who says so
 */
public record InService(String place, double average, double least, double most, String source) {
    private static final List<InService> ALL = Table.read("timber/in-service.csv").rows().stream()
            .map(InService::of)
            .toList();

    private static InService of(Table.Row row) {
        return new InService(
                row.text("place"),
                row.number("average_pct"),
                row.number("least_pct"),
                row.number("most_pct"),
                row.source());
    }

    /** All that are tabulated. */
    public static List<InService> all() {
        return ALL;
    }
}
