package scantling.timber;

import java.util.Optional;
import scantling.measure.Length;
import scantling.measure.Tolerance;

/**
 * How thick a sheet sold as one thickness may honestly be.
 *
 * @param nominal as sold
 * @param least the thinnest allowed
 * @param most the thickest allowed
 * @param standard which standard says so
 * @param source where that was seen
 */
public record ThicknessRange(Length nominal, Length least, Length most, String standard, String source) {
    private static final Table TABLE = Table.read("timber/thickness-tolerance.csv");
    private static final Length STEP = Length.mm("0.1");

    /** By a standard such as {@code EN 315}; empty when the standard is not tabulated for this thickness. */
    public static Optional<ThicknessRange> find(String standard, Length nominal) {
        return TABLE.rows().stream()
                .filter(row -> row.text("standard").equals(standard)
                        && nominal.compareTo(row.length("over")) > 0
                        && nominal.compareTo(row.length("up_to")) <= 0)
                .findFirst()
                .map(row -> new ThicknessRange(
                        nominal,
                        nominal.minus(allowance(row, "minus", nominal)),
                        nominal.plus(allowance(row, "plus", nominal)),
                        standard,
                        row.source()));
    }

    // The published rows are the formula cut, not rounded, to 0.1 mm.
    private static Length allowance(Table.Row row, String side, Length nominal) {
        Length perMillimetre = row.length(side + "_per_mm");
        return row.length(side + "_mm")
                .plus(nominal.times(
                        perMillimetre.tenthNanometres(), Length.mm(1).tenthNanometres()))
                .roundedDownTo(STEP);
    }

    /** The larger of both sides, for carrying through a fit. */
    public Tolerance tolerance() {
        return new Tolerance(most.minus(nominal).max(nominal.minus(least)), "sheet as bought");
    }

    /** Whether a measured thickness is within it. */
    public boolean holds(Length measured) {
        return measured.compareTo(least) >= 0 && measured.compareTo(most) <= 0;
    }
}
