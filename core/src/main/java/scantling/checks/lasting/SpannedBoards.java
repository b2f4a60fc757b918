package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import scantling.checks.lasting.Section.Strip;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Contact;
import scantling.space.Side;
import scantling.timber.Table;

/** Finds the shelves, tops and bottoms that span, and how each is held. */
final class SpannedBoards {
    private static final Table FITTINGS = Table.read("hardware/fittings.csv");

    private final Assembly assembly;
    private final Stiffness stiffness;
    private final Map<String, List<Spanned>> groups = new LinkedHashMap<>();
    private final List<Part> unheld = new ArrayList<>();
    private final List<Part> unknown = new ArrayList<>();

    SpannedBoards(Assembly assembly, Woods woods) {
        this.assembly = assembly;
        this.stiffness = new Stiffness(woods);
        for (Part part : assembly.parts()) {
            if (Parts.isShelf(part) && !part.box().isEmpty() && !standsOnFloor(part) && !isCovered(part)) {
                find(part)
                        .ifPresent(one -> groups.computeIfAbsent(one.likeness(), key -> new ArrayList<>())
                                .add(one));
            }
        }
    }

    /** Those that sag alike, together, in building order. */
    List<List<Spanned>> alike() {
        return List.copyOf(groups.values());
    }

    /** Boards that nothing was found to carry at both ends. */
    List<Part> unheld() {
        return unheld;
    }

    /** Boards of which no table says how stiff they are. */
    List<Part> unknown() {
        return unknown;
    }

    /** Whether another board lies on it and takes the load: a top under a top. */
    private boolean isCovered(Part part) {
        return assembly.parts().stream()
                .filter(other -> other.lie().thickness() == Axis.UP)
                .flatMap(other -> Contact.between(part.box(), other.box()).stream())
                .filter(at -> at.side() == Side.TOP)
                .anyMatch(at -> 2 * area(at.patch()) > area(part.box()));
    }

    static double area(Box box) {
        return Parts.mm(box.extent(Axis.ACROSS)) * Parts.mm(box.extent(Axis.DEEP));
    }

    private static boolean standsOnFloor(Part part) {
        return !part.box().bottom().value().isPositive();
    }

    private Optional<Spanned> find(Part part) {
        Supports supports = new Supports(assembly, part);
        if (supports.isBedded()) {
            return Optional.empty();
        }
        List<Spanned> ways = new ArrayList<>();
        boolean held = false;
        for (Axis along : List.of(Axis.ACROSS, Axis.DEEP)) {
            Optional<Dim> span = supports.findSpan(along);
            held |= span.isPresent();
            span.flatMap(clear -> spanned(part, clear, along, supports)).ifPresent(ways::add);
        }
        if (ways.isEmpty()) {
            (held ? unknown : unheld).add(part);
        }
        return ways.stream()
                .min((a, b) -> Double.compare(a.shelf().sag(1, false), b.shelf().sag(1, false)))
                .map(stiffer -> ways.size() < 2 ? stiffer : sharing(stiffer, ways));
    }

    /** Held both ways, each takes what bends it as far as the other: Grashof's crossing strips. */
    private static Spanned sharing(Spanned stiffer, List<Spanned> ways) {
        double sum =
                ways.stream().mapToDouble(way -> 1 / way.shelf().sag(1, false)).sum();
        double takes = 1 / (sum * stiffer.shelf().sag(1, false));
        Ends ends = stiffer.shelf().ends();
        Shelf shelf = stiffer.shelf().held(new Ends(ends.turning(), ends.past(), takes));
        return new Spanned(stiffer.part(), stiffer.span(), shelf, stiffer.turning());
    }

    private Optional<Spanned> spanned(Part part, Dim span, Axis along, Supports supports) {
        OptionalDouble elasticity = stiffness.find(part, along);
        if (elasticity.isEmpty()) {
            return Optional.empty();
        }
        Shelf shelf = new Shelf(
                        elasticity.getAsDouble(),
                        Parts.mm(part.box().extent(along.third(Axis.UP))),
                        Parts.mm(part.thickness()),
                        Parts.mm(span),
                        strips(part, along),
                        stiffness.creepFactor(part))
                .held(new Ends(0, supports.past(along)))
                .on(pins(part, along));
        return Optional.of(new Spanned(part, span, shelf, new HeldEnds(assembly, stiffness).turning(part)));
    }

    /** Lippings, and rails glued along under it or at its edges. */
    private List<Strip> strips(Part part, Axis along) {
        Set<String> joined = Parts.joinedTo(assembly, part);
        Set<String> glued = Parts.gluedTo(assembly, part);
        return assembly.parts().stream()
                .filter(other -> joined.contains(other.path()) && Parts.isLipping(other)
                        || glued.contains(other.path()) && other.lie().thickness() != Axis.UP && Parts.isStrip(other))
                .flatMap(other -> strip(other, part, along))
                .toList();
    }

    private Stream<Strip> strip(Part other, Part part, Axis along) {
        if (other.lie().length() != along) {
            return Stream.empty();
        }
        double bottom = Parts.mm(other.box().bottom()) - Parts.mm(part.box().bottom());
        double wide = Parts.mm(other.box().extent(along.third(Axis.UP)));
        double deep = Parts.mm(other.box().extent(Axis.UP));
        return stiffness.find(other, along).stream().mapToObj(stiff -> new Strip(stiff, wide, deep, bottom));
    }

    private Pins pins(Part part, Axis along) {
        boolean lies = assembly.fittings().stream()
                .anyMatch(fitting -> fitting.is("profile", "shelf pin")
                        && fitting.on().contains(part.path())
                        && fitting.on().indexOf(part.path()) == 0);
        OptionalDouble across = stiffness.find(part, along.third(Axis.UP));
        return lies && across.isPresent() ? new Pins(setIn(), across.getAsDouble()) : Pins.NONE;
    }

    /** From the edge of the shelf to its pins, mm, as the hardware table has it. */
    static double setIn() {
        return FITTINGS.rows().stream()
                .filter(row -> row.text("profile").equals("shelf pin")
                        && row.text("value").equals("from edge"))
                .map(row -> row.text("size").replace(" mm", ""))
                .mapToDouble(Double::parseDouble)
                .findFirst()
                .orElse(0);
    }
}
