package scantling.construct;

import java.util.Optional;
import scantling.measure.Dim;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.stock.HardwareProfiles;

/**
 * What a drawer runs on and what that asks of its box.
 *
 * @param profiles of the shop
 * @param runs the maker's words
 * @param profile the row of the table for the width
 */
record Slides(HardwareProfiles profiles, String runs, String profile) {
    private static final String UNDERMOUNT = HardwareProfiles.UNDERMOUNT;
    static final Field RUNS_ON =
            Field.choice("runs on", "What the drawer runs on.", UNDERMOUNT, HardwareProfiles.SIDE_MOUNT, "wood");
    static final Field LENGTH = Field.optional(
            "slide length",
            Field.Kind.LENGTH,
            "How long the slide is, and with it the box; the longest that fits when not said.",
            "350 mm");

    /** The slides for a box with sides of that thickness; the site is told when the sides are too thick for any. */
    static Slides of(Site site, Element box, Dim side) {
        HardwareProfiles profiles = site.hardware();
        String runs = box.text("runs on");
        if (!runs.equals(UNDERMOUNT) || side.compareTo(profiles.of(UNDERMOUNT, "thickest side")) <= 0) {
            return new Slides(profiles, runs, runs);
        }
        String thick = UNDERMOUNT + " for thick sides";
        Dim most = profiles.of(thick, "thickest side");
        if (side.compareTo(most) > 0) {
            site.problem(
                    box.span(),
                    "Concealed undermount slides take sides up to %s; these are %s."
                            .formatted(site.say(most), site.say(side)),
                    "Make the box of thinner stock, or run it on side mount slides or wood.");
        }
        return new Slides(profiles, runs, thick);
    }

    /** Inside width of a box for an opening of that width. */
    Dim insideWidth(Dim opening, Dim side) {
        return profiles.find(profile, "off inside")
                .map(opening::minus)
                .orElseGet(
                        () -> opening.minus(profiles.of(profile, "off outside")).minus(side.times(2)));
    }

    /** From the opening's wall to the outside of the box. */
    Dim beside(Dim side) {
        return profiles.find(profile, "off inside")
                .map(off -> off.half().minus(side))
                .orElseGet(() -> profiles.of(profile, "off outside").half());
    }

    Dim below() {
        return profiles.of(runs, "below");
    }

    Dim above() {
        return profiles.of(runs, "above");
    }

    Dim floorUp() {
        return profiles.of(runs, "floor up");
    }

    /** Whether it is bought, by the pair. */
    boolean isBought() {
        return !profiles.all(runs, "length").isEmpty();
    }

    /** What takes the place of slides where none fits: runners of wood, as long as the box. */
    Slides onWood() {
        return new Slides(profiles, "wood", "wood");
    }

    /** What must stay free behind the box. */
    Dim behind() {
        return profiles.of(runs, "behind");
    }

    /** The shortest slide there is; nothing where it runs on wood. */
    Optional<Dim> shortest() {
        return profiles.all(runs, "length").stream().min(Dim::compareTo);
    }

    /** The longest box for free room of that depth: as long as a slide, or as the room where it runs on wood. */
    Optional<Dim> longest(Dim free) {
        return isBought()
                ? profiles.all(runs, "length").stream()
                        .filter(length -> length.compareTo(free) <= 0)
                        .max(Dim::compareTo)
                : Optional.of(free).filter(dim -> dim.value().isPositive());
    }
}
