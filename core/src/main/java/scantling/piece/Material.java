package scantling.piece;

import java.util.Optional;
import scantling.measure.Dim;

/**
 * A material by the maker's own name.
 *
 * @param name the maker's word: cherry, core, box
 * @param kind solid, sheet or stick
 * @param of what it is: a species for solid wood and sticks, a panel for sheets
 * @param thickness the finished thickness to build with; for a sheet the measured one where the maker gave it
 * @param nominal the thickness it is sold as, where that differs
 * @param sheetLength of the sheet along its grain, where given
 * @param sheetWidth of the sheet across its grain, where given
 * @param grained whether parts keep their grain along the sheet; true for solid wood and veneered sheets
 * @param prefinished whether its faces come finished, so that only what is cut needs a finish
 * @param price what one sheet, one board foot or one stick costs, in hundredths of the money unit, where given
 * @param supply the sizes, prices and numbers in which it is to be had, where the maker lists them
 */
public record Material(
        String name,
        Kind kind,
        String of,
        Dim thickness,
        Optional<Dim> nominal,
        Optional<Dim> sheetLength,
        Optional<Dim> sheetWidth,
        boolean grained,
        boolean prefinished,
        Optional<Long> price,
        Supply supply) {
    /** A material of which nothing is listed. */
    public Material(
            String name,
            Kind kind,
            String of,
            Dim thickness,
            Optional<Dim> nominal,
            Optional<Dim> sheetLength,
            Optional<Dim> sheetWidth,
            boolean grained,
            boolean prefinished,
            Optional<Long> price) {
        this(name, kind, of, thickness, nominal, sheetLength, sheetWidth, grained, prefinished, price, Supply.NONE);
    }

    /** A material that comes bare. */
    public Material(
            String name,
            Kind kind,
            String of,
            Dim thickness,
            Optional<Dim> nominal,
            Optional<Dim> sheetLength,
            Optional<Dim> sheetWidth,
            boolean grained,
            Optional<Long> price) {
        this(name, kind, of, thickness, nominal, sheetLength, sheetWidth, grained, false, price);
    }

    /** The same of another wood; what was listed was of the first. */
    public Material ofWood(String other) {
        return new Material(
                name, kind, other, thickness, nominal, sheetLength, sheetWidth, grained, prefinished, price);
    }

    /** What it comes as. */
    public enum Kind {
        /** Sawn timber, planed in the shop. */
        SOLID("sawn timber"),
        /** Plywood, fibreboard and the like. */
        SHEET("sheet"),
        /** Bought to section: edging, moulding, dowel rod. */
        STICK("bought to section");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** What it comes as. */
        public String words() {
            return words;
        }
    }
}
