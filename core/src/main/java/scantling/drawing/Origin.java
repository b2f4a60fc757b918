package scantling.drawing;

import scantling.measure.Dim;
import scantling.measure.Making;

/** Where a figure comes from, as its line style says on every output. */
public enum Origin {
    /** Typed by the maker. */
    GIVEN("given", "given"),
    /** From a table. */
    LOOKED_UP("looked up", "worked"),
    /** The result of a sum. */
    WORKED("worked out", "worked"),
    /** Measured at the bench. */
    MEASURED("measured", "measured");

    private final String words;
    private final String style;

    Origin(String words, String style) {
        this.words = words;
        this.style = style;
    }

    /** Where this number comes from. A name alone changes nothing: what is only named comes from where its sum does. */
    public static Origin of(Dim dim) {
        Making making = dim.making();
        if (making instanceof Making.Named named) {
            return of(named.planned());
        }
        if (making instanceof Making.Measured) {
            return MEASURED;
        }
        if (making instanceof Making.LookedUp) {
            return LOOKED_UP;
        }
        return making instanceof Making.Given || making instanceof Making.Set ? GIVEN : WORKED;
    }

    /** For people and files. */
    public String words() {
        return words;
    }

    /** The class of the figure: given, worked or measured. */
    public String style() {
        return style;
    }
}
