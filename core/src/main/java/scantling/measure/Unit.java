package scantling.measure;

/** A unit of length that a maker writes. */
public enum Unit {
    /** Millimetre. */
    MM("mm", Length.mm(1)),
    /** Centimetre. */
    CM("cm", Length.mm(10)),
    /** Metre. */
    M("m", Length.mm(1000)),
    /** Inch of 25.4 mm exactly. */
    INCH("in", Length.inches(1)),
    /** Foot of twelve inches. */
    FOOT("ft", Length.inches(12));

    private final String symbol;
    private final Length length;

    Unit(String symbol, Length length) {
        this.symbol = symbol;
        this.length = length;
    }

    /** As written after a number: mm, cm, m, in, ft. */
    public String symbol() {
        return symbol;
    }

    /** The length of one. */
    public Length length() {
        return length;
    }
}
