package scantling.stock;

import java.util.List;
import scantling.measure.Dim;
import scantling.timber.Table;

/** How many hinges a door hangs on, by its height and its weight: a hinge maker's chart in hinge-count.csv. */
public final class HingeCount {
    private static final List<Band> BANDS =
            Table.read("hardware/hinge-count.csv").rows().stream().map(Band::of).toList();

    private HingeCount() {}

    private record Band(int hinges, Dim height, double kilograms) {
        static Band of(Table.Row row) {
            int hinges = (int) row.number("hinges");
            return new Band(hinges, row.dim("height", hinges + " hinges"), row.number("weight_kg"));
        }

        boolean carries(Dim tall, double heavy) {
            return tall.compareTo(height) <= 0 && heavy <= kilograms;
        }
    }

    /** How many; the most the chart knows for a door beyond it. @param kilograms what the door weighs */
    public static int of(Dim height, double kilograms) {
        return BANDS.stream()
                .filter(band -> band.carries(height, kilograms))
                .mapToInt(Band::hinges)
                .findFirst()
                .orElse(BANDS.get(BANDS.size() - 1).hinges());
    }

    /** Whether the chart knows a door so high and heavy. */
    public static boolean knows(Dim height, double kilograms) {
        return BANDS.get(BANDS.size() - 1).carries(height, kilograms);
    }
}
