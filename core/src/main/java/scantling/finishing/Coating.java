package scantling.finishing;

import java.util.List;
import java.util.Optional;

/**
 * One coat on one group.
 *
 * @param step what the maker calls the step: seal, top
 * @param coat what goes on
 * @param number which coat of the step, from 1
 * @param of how many the step has
 * @param method how it is put on
 * @param area square metres it goes on
 * @param spread square metres to a litre as put on; nothing when the coat's figures do not say
 * @param litres of the coat as put on, mixed and thinned, waste included
 * @param thinned parts of thinner to one of the coat
 * @param sand the grit before it, when the surface is sanded
 * @param drying until the next thing
 * @param spray where to begin with a gun
 * @param passes of the gun over all faces
 * @param cautions what to mind
 * @param notes what else to know, sentences
 */
public record Coating(
        String step,
        Coat coat,
        int number,
        int of,
        Method method,
        double area,
        Optional<Amount> spread,
        Amount litres,
        double thinned,
        Optional<Amount> sand,
        Drying drying,
        Optional<Spray> spray,
        int passes,
        List<Caution> cautions,
        List<String> notes) {
    private static final double PERCENT = 0.01;

    /**
     * Time nobody's hands are needed, at the air it dries in.
     *
     * @param least hours before the next coat
     * @param most hours after which the next coat wants a scuff; nothing when it can wait
     * @param handle hours before it can be handled
     * @param source who says so
     */
    public record Drying(Amount least, Optional<Double> most, Amount handle, String source) {}

    /** Takes its own copies. */
    public Coating {
        cautions = List.copyOf(cautions);
        notes = List.copyOf(notes);
    }

    /** As a title: waterborne lacquer, coat 2 of 3. */
    public String title() {
        return of == 1 ? coat.name() : "%s, coat %d of %d".formatted(coat.name(), number, of);
    }

    /** Micrometres to lay on wet so that the dry film comes out, thinned as it is; nothing for what builds no film. */
    public Optional<Amount> wetFilm() {
        Optional<Amount> solids = coat.find("solids");
        return coat.film() && solids.isPresent()
                ? coat.find("dry film").map(dry -> wetFilm(dry, solids.get()))
                : Optional.empty();
    }

    private Amount wetFilm(Amount dry, Amount solids) {
        return new Amount(
                Coverage.wetFilm(dry.low(), solids.likely() * PERCENT, thinned),
                Coverage.wetFilm(dry.likely(), solids.likely() * PERCENT, thinned),
                Coverage.wetFilm(dry.high(), solids.likely() * PERCENT, thinned));
    }
}
