package scantling.construct;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import scantling.measure.Dim;
import scantling.piece.Element;
import scantling.space.Side;

/**
 * How long and how high a drawer box comes out, and on what it runs. What the maker said is kept where it fits; where it
 * does not, the nearest that does is built in its place, and a finding tells both.
 *
 * @param in what the drawer is named after
 * @param box what was said of its box
 * @param front what lies before it
 * @param opening what it must go into
 */
record DrawerRun(Site in, Element box, Part front, Opening opening) {
    private static final String SHEET = "the profile of the slide; check the sheet that came with your slide";

    /** What is built. */
    record Found(Slides slides, Dim length, Dim height) {}

    /** Nothing where there is no room for any box, which the site has been told. @param room from the front to the back */
    Optional<Found> find(Slides slides, Dim room) {
        Optional<Found> onSlides = on(slides, room);
        if (onSlides.isPresent()) {
            told(onSlides.get(), room);
            return onSlides;
        }
        Optional<Found> onWood = slides.isBought() ? on(slides.onWood(), room) : Optional.empty();
        onWood.ifPresentOrElse(found -> noSlide(slides, found, room), () -> noBox(slides, room));
        return onWood;
    }

    private Optional<Found> on(Slides slides, Dim room) {
        Dim free = room.minus(slides.behind());
        Optional<Dim> length = saidLength().filter(said -> said.compareTo(free) <= 0);
        Dim high = high(slides);
        Dim least = least(slides);
        if (least.compareTo(high) > 0) {
            return Optional.empty();
        }
        Dim height = Dim.smallerOf(high, Dim.largerOf(least, saidHeight().orElse(high)));
        return length.or(() -> slides.longest(free)).map(found -> new Found(slides, found, height));
    }

    private Optional<Dim> saidLength() {
        return box.findLength("slide length");
    }

    private Optional<Dim> saidHeight() {
        return box.findLength("height");
    }

    /** How high a box on those slides may be. */
    private Dim high(Slides slides) {
        return opening.height().minus(slides.below()).minus(slides.above());
    }

    /** How high it must be to hold its floor with as much above as below. */
    private Dim least(Slides slides) {
        return slides.floorUp().plus(box.stock("floor").thickness()).times(2);
    }

    private void told(Found found, Dim room) {
        saidLength().filter(said -> said.compareTo(found.length()) > 0).ifPresent(said -> tooLong(found, said, room));
        saidHeight().filter(said -> !said.equals(found.height())).ifPresent(said -> wrongHeight(found, said));
    }

    private void tooLong(Found found, Dim said, Dim room) {
        Dim more = said.minus(room.minus(found.slides().behind()));
        in.find(new Finding(
                        Finding.Severity.STOP,
                        in.path(found.slides().isBought() ? "slides" : "box"),
                        "A %s %s long does not fit between %s and %s: there are %s, of which %s must stay free behind it."
                                .formatted(
                                        found.slides().isBought() ? "slide" : "box",
                                        in.say(said),
                                        front.path(),
                                        behind(),
                                        in.say(room),
                                        in.say(found.slides().behind())),
                        List.of(said, room, found.length()),
                        SHEET,
                        "The longest that fits is %s, and the drawer is planned with it: write slide length: %s, or make the piece %s deeper."
                                .formatted(in.say(found.length()), in.say(found.length()), in.say(more)))
                .offering(Changes.bring(said, found.length().value(), in.piece()).stream()
                        .toList()));
    }

    private void wrongHeight(Found found, Dim said) {
        boolean high = said.compareTo(found.height()) > 0;
        String limits = high
                ? "%s of it stay free below and above"
                        .formatted(in.say(
                                found.slides().below().plus(found.slides().above())))
                : "a box holds its floor from %s on".formatted(in.say(least(found.slides())));
        in.find(new Finding(
                        Finding.Severity.STOP,
                        in.path("box"),
                        "A box %s high behind %s does not go with an opening %s high: %s."
                                .formatted(in.say(said), front.path(), in.say(opening.height()), limits),
                        List.of(said, opening.height(), found.height()),
                        SHEET,
                        "The nearest that fits is %s, and the drawer is planned with it: write height: %s, or make the row %s."
                                .formatted(in.say(found.height()), in.say(found.height()), high ? "higher" : "lower"))
                .offering(Changes.bring(said, found.height().value(), in.piece()).stream()
                        .toList()));
    }

    private void noSlide(Slides slides, Found onWood, Dim room) {
        boolean low = least(slides).compareTo(high(slides)) > 0;
        in.find(low ? lowerThanItsSlide(slides, onWood) : shallow(slides, onWood, room));
    }

    private Finding lowerThanItsSlide(Slides slides, Found onWood) {
        Dim needs = least(slides).plus(slides.below()).plus(slides.above());
        return new Finding(
                Finding.Severity.STOP,
                in.path("box"),
                "%s is %s high; a box on a %s slide needs %s behind %s: %s below, %s above and %s for the box."
                        .formatted(
                                opening.path(),
                                in.say(opening.height()),
                                slides.runs(),
                                in.say(needs),
                                front.path(),
                                in.say(slides.below()),
                                in.say(slides.above()),
                                in.say(least(slides))),
                List.of(opening.height(), needs, onWood.height()),
                SHEET,
                "It is planned to run on wood, with a box %s high: write runs on: wood, or make the row %s higher."
                        .formatted(in.say(onWood.height()), in.say(needs.minus(opening.height()))));
    }

    private Finding shallow(Slides slides, Found onWood, Dim room) {
        Dim shortest = Stream.concat(slides.shortest().stream(), saidLength().stream())
                .min(Dim::compareTo)
                .orElse(onWood.length());
        Dim needs = shortest.plus(slides.behind());
        return new Finding(
                Finding.Severity.STOP,
                in.path("box"),
                "No %s slide fits between %s and %s: there are %s, and the shortest, %s, needs %s."
                        .formatted(
                                slides.runs(), front.path(), behind(), in.say(room), in.say(shortest), in.say(needs)),
                List.of(room, shortest, needs),
                SHEET,
                "It is planned to run on wood, with a box %s long: write runs on: wood, or make the piece %s deeper."
                        .formatted(in.say(onWood.length()), in.say(needs.minus(room))));
    }

    /** What the box would strike: the part at the back of the opening. */
    private String behind() {
        return bound(Side.BACK);
    }

    /** Only the front is built. */
    private void noBox(Slides slides, Dim room) {
        Slides wood = slides.onWood();
        Dim needs = least(wood).plus(wood.below()).plus(wood.above());
        boolean low = needs.compareTo(opening.height()) > 0;
        in.find(low ? lowForAny(wood, needs) : shallowForAny(wood, room));
    }

    private Finding lowForAny(Slides wood, Dim needs) {
        return new Finding(
                Finding.Severity.STOP,
                in.path("box"),
                "No drawer box goes between %s and %s behind %s: there are %s, and even on wood it takes %s: %s below, %s above and %s for a box that holds its floor."
                        .formatted(
                                bound(Side.BOTTOM),
                                bound(Side.TOP),
                                front.path(),
                                in.say(opening.height()),
                                in.say(needs),
                                in.say(wood.below()),
                                in.say(wood.above()),
                                in.say(least(wood))),
                List.of(opening.height(), needs, least(wood)),
                "common practice: a drawer holds its floor in a groove with as much wood above as below",
                "It is planned with its front alone: make the row %s higher, which takes a box on wood, or leave the front fixed."
                        .formatted(in.say(needs.minus(opening.height()))));
    }

    private Finding shallowForAny(Slides wood, Dim room) {
        return new Finding(
                Finding.Severity.STOP,
                in.path("box"),
                "No drawer box goes between %s and %s: there are %s, and even on wood %s stay free behind it."
                        .formatted(front.path(), behind(), in.say(room), in.say(wood.behind())),
                List.of(room, wood.behind()),
                "common practice",
                "It is planned with its front alone: make the piece deeper by %s and the box's length, or leave the front fixed."
                        .formatted(in.say(Dim.largerOf(Dim.ZERO, wood.behind().minus(room)))));
    }

    /** What bounds the opening on a side. */
    private String bound(Side side) {
        return Holders.at(in, opening.box(), side).stream()
                .findFirst()
                .map(Part::path)
                .orElse("the " + side.word() + " of its opening");
    }
}
