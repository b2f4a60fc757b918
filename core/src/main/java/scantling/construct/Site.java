package scantling.construct;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import scantling.measure.Dim;
import scantling.measure.Ledger;
import scantling.measure.LengthFormat;
import scantling.measure.Span;
import scantling.measure.Tolerance;
import scantling.piece.Element;
import scantling.piece.Material;
import scantling.piece.Piece;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;
import scantling.stock.HardwareProfiles;

/**
 * A space being built in: the air, the name everything in it starts with, and the assembly that grows. Elements see the
 * piece through it.
 */
final class Site {
    private final Works works;
    private final String path;
    private final Box space;

    /** @param path what names in it start with; empty for the piece itself */
    Site(Works works, String path, Box space) {
        this.works = works;
        this.path = path;
        this.space = space;
    }

    /** The air that is left. */
    Box space() {
        return space;
    }

    /** The whole piece as described. */
    Piece piece() {
        return works.piece();
    }

    /** The parts that stand already, in the order they were built. */
    List<Part> parts() {
        return List.copyOf(works.parts());
    }

    /** What everything here is named after; empty at the piece itself. */
    String path() {
        return path;
    }

    /** The full name of something here. */
    String path(String name) {
        return path.isEmpty() ? name : Ledger.path(path, name);
    }

    /** The name of a part as it is called here. */
    String nameOf(Part part) {
        String before = path.isEmpty() ? "" : path + Ledger.SEPARATOR;
        return part.path().startsWith(before) ? part.path().substring(before.length()) : part.path();
    }

    /** A number in the words of the piece: with its unit, as the maker would write it. */
    String say(Dim dim) {
        return LengthFormat.of(piece().unit()).formatWithUnit(dim.value());
    }

    /** A space inside this one with a name of its own; a name used before gets a number. */
    Site inside(String name, Box air) {
        return new Site(works, works.uniquePath(path(name)), air);
    }

    /** The same place with other air. */
    Site with(Box air) {
        return new Site(works, path, air);
    }

    /** Names a number here that is only worked out. */
    Dim name(String name, Dim planned) {
        return works.ledger().name(path(name), planned);
    }

    /** Names a number here that a process makes. */
    Dim name(String name, Dim planned, Tolerance tolerance) {
        return works.ledger().name(path(name), planned, tolerance);
    }

    /** Begins a part; it is there once placed. */
    PartMaker part(String name, Material material) {
        return new PartMaker(works, works.uniquePath(path(name)), material);
    }

    /** Tells of a joint between two parts. */
    void joint(Joint.Kind kind, Part entering, Part receiving, Map<String, Dim> sizes) {
        joint(kind, entering, receiving, sizes, entering.box().meet(receiving.box()));
    }

    /** Tells of a joint whose wood the boxes do not tell. @param overlap a box around what both share */
    void joint(Joint.Kind kind, Part entering, Part receiving, Map<String, Dim> sizes, Box overlap) {
        works.joints()
                .add(new Joint(
                        works.uniquePath(entering.path() + " to " + lastName(receiving.path())),
                        kind,
                        entering.path(),
                        receiving.path(),
                        overlap.isEmpty() ? Optional.empty() : Optional.of(overlap),
                        sizes));
    }

    /** Tells of air that something must fit; its width, depth and height get names. */
    Opening opening(String name, Box air) {
        String full = works.uniquePath(path(name));
        Dim width = works.ledger().name(Ledger.path(full, "width"), air.extent(Axis.ACROSS));
        Dim depth = works.ledger().name(Ledger.path(full, "depth"), air.extent(Axis.DEEP));
        Dim height = works.ledger().name(Ledger.path(full, "height"), air.extent(Axis.UP));
        Opening opening = new Opening(full, width, depth, height, air, List.of());
        works.openings().add(opening);
        return opening;
    }

    /**
     * What lies in an opening, as much wider and higher as the bench has measured the opening to be; its left and its bottom
     * stay. Openings that nobody has measured leave it as it is.
     *
     * @param air the opening by the plan
     */
    static Box follow(Opening opening, Box air, Box lying) {
        Box following = followWide(opening, air, lying);
        if (opening.height().isMeasured()) {
            Dim higher = opening.height().minus(air.extent(Axis.UP));
            following = following.with(Side.TOP, following.top().plus(higher));
        }
        return following;
    }

    /** The same for what lies across an opening and is as high as it is made: only its width follows. */
    static Box followWide(Opening opening, Box air, Box lying) {
        return opening.width().isMeasured()
                ? lying.with(Side.RIGHT, lying.right().plus(opening.width().minus(air.extent(Axis.ACROSS))))
                : lying;
    }

    /** Tells which parts must fit an opening. */
    void fills(Opening opening, List<Part> parts) {
        Opening filled = new Opening(
                opening.path(),
                opening.width(),
                opening.depth(),
                opening.height(),
                opening.box(),
                parts.stream().map(Part::path).toList());
        works.openings().replaceAll(each -> each.path().equals(opening.path()) ? filled : each);
    }

    /** Tells of hardware of which nothing else is to be said. */
    void fitting(String name, String what, int count, String per, List<Part> on, Map<String, Dim> sizes) {
        fitting(name, what, count, per, on, sizes, Map.of());
    }

    /** Tells of hardware. @param words what else decides how it is fixed */
    void fitting(
            String name,
            String what,
            int count,
            String per,
            List<Part> on,
            Map<String, Dim> sizes,
            Map<String, String> words) {
        works.fittings()
                .add(new Fitting(
                        works.uniquePath(path(name)),
                        what,
                        count,
                        per,
                        on.stream().map(Part::path).toList(),
                        sizes,
                        words));
    }

    /** What slides, hinges and the like ask for. */
    HardwareProfiles hardware() {
        return works.hardware();
    }

    /** Tells that the inside of a case is drilled on the 32 mm system. */
    void drilledBySystem(SystemCase inside) {
        works.systemCases().add(inside);
    }

    /** The words that say how holes in air are laid out: by the system of the case it lies in, or nothing. */
    Map<String, String> holes(Box air) {
        return works.systemCases().stream()
                .filter(system -> system.holds(air))
                .findFirst()
                .map(SystemCase::words)
                .orElse(Map.of());
    }

    /** Tells why something cannot be built as written. */
    void problem(Span span, String message, String remedy) {
        works.problem(span, message, remedy);
    }

    /** Tells what was built otherwise than the maker said. */
    void find(Finding finding) {
        works.find(finding);
    }

    /** Leaves something until everything stands that is built with it. */
    void later(Runnable work) {
        works.later(work);
    }

    /** Whether two parts are joined already. */
    boolean areJoined(Part one, Part other) {
        Set<String> both = Set.of(one.path(), other.path());
        return works.joints().stream()
                .anyMatch(joint -> both.equals(Set.copyOf(List.of(joint.entering(), joint.receiving()))));
    }

    /** Notes a part that stands for nothing but itself. */
    void standsAlone(Part part) {
        works.alone().add(part.path());
    }

    /** Whether a part stands for nothing but itself. */
    boolean isAlone(Part part) {
        return works.alone().contains(part.path());
    }

    /** Takes back the joint of two parts that only touch, so that another takes its place. */
    void partFrom(Part one, Part other) {
        Set<String> both = Set.of(one.path(), other.path());
        works.joints()
                .removeIf(joint -> joint.overlap().isEmpty()
                        && both.equals(Set.copyOf(List.of(joint.entering(), joint.receiving()))));
    }

    /** Builds elements in {@link BuildOrder}, each in what the one before left. @return what the last one left */
    Box buildAll(List<Element> steps) {
        return works.buildAll(steps, this);
    }

    /** Builds elements in the space as it is seen from another side. @return what is left, as it is seen there */
    Box buildTurned(List<Element> steps, Quarter quarter) {
        Works apart = works.apart();
        Box left = apart.buildAll(steps, new Site(apart, path, quarter.inside()));
        apart.settle();
        works.take(apart, quarter);
        return left;
    }

    private static String lastName(String path) {
        int cut = path.lastIndexOf(Ledger.SEPARATOR);
        return cut < 0 ? path : path.substring(cut + Ledger.SEPARATOR.length());
    }
}
