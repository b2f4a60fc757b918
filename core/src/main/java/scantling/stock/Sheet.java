package scantling.stock;

import java.util.Optional;
import scantling.measure.Length;

/**
 * A sheet. The grain of its face runs along its length unless it says otherwise.
 *
 * @param id what is written on it
 * @param material the panel
 * @param nominal the thickness it was sold as
 * @param measured its thickness by the calliper, if it was measured
 * @param length the longer side
 * @param width the other side
 * @param grain which way the face runs
 */
public record Sheet(
        String id, String material, Length nominal, Optional<Length> measured, Length length, Length width, Grain grain)
        implements Stock {
    /** Which way the grain of a sheet's face runs. */
    public enum Grain {
        /** Along the length. */
        ALONG,
        /** Across the length. */
        ACROSS,
        /** The face has no grain: MDF, hardboard, paint grade. */
        NONE
    }

    /** Checks that it has positive sizes. */
    public Sheet {
        Stock.check(id, material, nominal, measured.orElse(nominal), length, width);
    }

    /** A whole sheet of a size as sold, not measured. */
    public static Sheet whole(String id, String material, Length nominal, SheetSize size, Grain grain) {
        return new Sheet(
                id,
                material,
                nominal,
                Optional.empty(),
                size.length().value(),
                size.width().value(),
                grain);
    }

    /** Measured if it was, else as sold. */
    @Override
    public Length thickness() {
        return measured.orElse(nominal);
    }
}
