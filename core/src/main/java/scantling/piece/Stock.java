package scantling.piece;

import java.util.Optional;
import scantling.measure.Dim;

/** A material as an element uses it, with a width where one was given: {@code leg 40}. */
public record Stock(Material material, Optional<Dim> width) {
    /** The thickness to build with. */
    public Dim thickness() {
        return material.thickness();
    }
}
