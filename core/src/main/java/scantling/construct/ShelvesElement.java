package scantling.construct;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.measure.Dim;
import scantling.measure.LengthFormat;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.piece.Shape;
import scantling.piece.Stock;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Lie;
import scantling.space.Side;

/** Shelves in a space, let into its sides or on pins. The space stays; the openings between fixed shelves get names. */
final class ShelvesElement implements ElementKind {
    private static final Lie FLAT = Lie.along(Axis.ACROSS, Side.TOP);

    @Override
    public Shape shape() {
        return Shape.of(
                "shelves",
                "Shelves in the space, fixed or on pins.",
                Field.required("of", Field.Kind.STOCK, "What they are of.", "oak"),
                Field.optional("count", Field.Kind.COUNT, "How many, with equal openings between.", "3"),
                Field.optional(
                        "heights",
                        Field.Kind.LENGTHS,
                        "Where their upper faces are, each from the bottom of the space.",
                        "[300 mm, 580 mm]"),
                Field.choice("held", "How they are held.", "dado", "stopped dado", "pins"),
                Field.optional("housed", Field.Kind.LENGTH, "How deep fixed ones go into the sides.", "6 mm"),
                Field.usual("set back", Field.Kind.LENGTH, "0 mm", "common practice", "How far they stand back."),
                Field.usual(
                        "clearance",
                        Field.Kind.LENGTH,
                        "1 mm",
                        "common practice",
                        "The air at each end and behind a shelf on pins."));
    }

    @Override
    public Box build(Element element, Site outer) {
        Site site = Sides.siteOf(element, outer);
        List<Dim> planes = planes(element, site);
        boolean pins = element.is("held", "pins");
        String word = element.is("held", "pins") ? "adjustable shelf" : "shelf";
        Box air = site.space();
        Opening across = site.inside(element.name(), air).opening("opening", air);
        List<Part> shelves = new ArrayList<>();
        for (int i = 0; i < planes.size(); i++) {
            String name = planes.size() == 1 ? word : word + " " + (i + 1);
            Box place = place(element, site, planes.get(i));
            Part shelf = pins ? onPins(element, site, name, place, across) : fixed(element, site, name, place, across);
            shelves.add(shelf);
            if (!pins) {
                site.opening(
                        "opening below " + name, air.with(Side.TOP, shelf.box().bottom()));
            }
            air = air.with(Side.BOTTOM, shelf.box().top());
        }
        if (!pins && !planes.isEmpty()) {
            site.opening("opening above shelves", air);
        }
        site.fills(across, shelves);
        return site.space();
    }

    private static Box place(Element element, Site site, Dim top) {
        Dim thickness = element.stock("of").thickness();
        return site.space()
                .with(Side.TOP, top)
                .with(Side.BOTTOM, top.minus(thickness))
                .inset(Side.FRONT, element.length("set back"));
    }

    private static Part fixed(Element element, Site site, String name, Box place, Opening across) {
        Housing housing = new Housing(site, element, place)
                .into(Side.LEFT, element.findLength("housed"), UsualDepths::dado)
                .into(Side.RIGHT, element.findLength("housed"), UsualDepths::dado);
        Part shelf = placed(element, site, name, Site.followWide(across, site.space(), housing.box()));
        housing.join(
                shelf,
                element.is("held", "stopped dado") ? Joint.Kind.STOPPED_DADO : Joint.Kind.DADO,
                Joint.Kind.GLUED);
        return shelf;
    }

    private static Part onPins(Element element, Site site, String name, Box place, Opening across) {
        Dim clearance = element.length("clearance");
        List<Part> holders = new ArrayList<>(Neighbours.at(site.parts(), place, Side.LEFT));
        holders.addAll(Neighbours.at(site.parts(), place, Side.RIGHT));
        Box free =
                place.inset(Side.LEFT, clearance).inset(Side.RIGHT, clearance).inset(Side.BACK, clearance);
        Part shelf = placed(element, site, name, Site.followWide(across, site.space(), free));
        holders.forEach(holder -> site.joint(Joint.Kind.CARRIED, shelf, holder, Map.of("clearance", clearance)));
        List<Part> on = new ArrayList<>(List.of(shelf));
        on.addAll(holders);
        site.fitting(name + " / pins", "shelf pin 5 mm", 4, "piece", on, Map.of(), words(site, place));
        return shelf;
    }

    private static Map<String, String> words(Site site, Box place) {
        Map<String, String> words = new HashMap<>(site.holes(place));
        words.put("profile", "shelf pin");
        return words;
    }

    private static Part placed(Element element, Site site, String name, Box place) {
        return site.part(name, element.stock("of").material())
                .holding(Side.TOP)
                .showing(Side.TOP, Side.BOTTOM, Side.FRONT)
                .place(place, FLAT);
    }

    /** The planes of their upper faces, lowest first. */
    private static List<Dim> planes(Element element, Site site) {
        Optional<Integer> count = element.findCount("count");
        List<Dim> heights = element.lengths("heights");
        if (count.isPresent() == !heights.isEmpty()) {
            site.problem(element.span(), "Shelves need a count or heights, one of the two.", "Write: count: 3.");
            return List.of();
        }
        List<Dim> planes = count.map(number -> equal(element.stock("of"), site.space(), number))
                .orElseGet(() -> heights.stream()
                        .map(height -> site.space().bottom().plus(height))
                        .toList());
        return checked(element, site, planes);
    }

    private static List<Dim> equal(Stock of, Box space, int count) {
        Dim clear = space.extent(Axis.UP).minus(of.thickness().times(count)).share(1, count + 1L);
        List<Dim> planes = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            planes.add(space.bottom().plus(clear.plus(of.thickness()).times(i)));
        }
        return planes;
    }

    private static List<Dim> checked(Element element, Site site, List<Dim> planes) {
        LengthFormat format = LengthFormat.of(site.piece().unit());
        Dim floor = site.space().bottom();
        List<Dim> good = new ArrayList<>();
        for (Dim plane : planes) {
            boolean fits = plane.minus(element.stock("of").thickness()).compareTo(floor) > 0
                    && plane.compareTo(site.space().top()) < 0;
            if (fits) {
                good.add(plane);
                floor = plane;
            } else {
                site.problem(
                        element.span(),
                        "A shelf at (%s) does not fit in a space (%s) high above what is below it."
                                .formatted(
                                        format.formatWithUnit(
                                                plane.minus(site.space().bottom())
                                                        .value()),
                                        format.formatWithUnit(
                                                site.space().extent(Axis.UP).value())),
                        "Give heights from the lowest to the highest, each with room for the shelf.");
            }
        }
        return good;
    }
}
