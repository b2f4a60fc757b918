package scantling.checks;

import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.piece.Material;

/** One of the three sizes of a part, and what a bench does when it came out too big. */
enum Measure {
    LENGTH("length", "long", "short", "cut %s off one end"),
    WIDTH("width", "wide", "narrow", "plane %s off one edge"),
    THICKNESS("thickness", "thick", "thin", "plane %s off the side away from the face side");

    private final String word;
    private final String tooBig;
    private final String tooSmall;
    private final String trim;

    Measure(String word, String tooBig, String tooSmall, String trim) {
        this.word = word;
        this.tooBig = tooBig;
        this.tooSmall = tooSmall;
        this.trim = trim;
    }

    String word() {
        return word;
    }

    Dim of(Part part) {
        return switch (this) {
            case LENGTH -> part.length();
            case WIDTH -> part.width();
            case THICKNESS -> part.thickness();
        };
    }

    String wrong(boolean big) {
        return big ? tooBig : tooSmall;
    }

    /** What to do with a part that is too big; nobody planes the face of a sheet. */
    String remedy(Part part, String amount) {
        return this == THICKNESS && part.material().kind() == Material.Kind.SHEET
                ? "Cut its groove or rabbet %s wider, or take a thinner sheet.".formatted(amount)
                : Character.toUpperCase(trim.charAt(0)) + trim.substring(1).formatted(amount) + ".";
    }
}
