package scantling.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import scantling.construct.Assembly;
import scantling.construct.Fitting;
import scantling.construct.Joint;
import scantling.construct.Opening;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Span;
import scantling.measure.Tolerance;
import scantling.measure.Unit;
import scantling.piece.Material;
import scantling.piece.Piece;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Lie;
import scantling.space.Outline;
import scantling.space.Side;
import scantling.space.Turn;

/** A small assembly put together by hand, part by part, in whole millimetres from the left front corner on the floor. */
public final class HandBuilt {
    private final Piece piece;
    private final List<Part> parts = new ArrayList<>();
    private final List<Joint> joints = new ArrayList<>();
    private final List<Opening> openings = new ArrayList<>();
    private final List<Fitting> fittings = new ArrayList<>();

    /** A piece of this overall size. */
    public HandBuilt(long width, long depth, long height) {
        piece = new Piece(
                "hand built",
                Optional.empty(),
                Unit.MM,
                given("width", width),
                given("depth", depth),
                given("height", height),
                Map.of(),
                List.of(),
                Map.of(),
                Map.of(),
                "");
    }

    /** A number the maker typed. */
    public static Dim given(String label, long mm) {
        return Dim.given(Length.mm(mm), label, mm + " mm", new Span(1, 1, 0, 1));
    }

    public static Dim given(long mm) {
        return given("a number", mm);
    }

    public static Box box(long left, long right, long front, long back, long bottom, long top) {
        return new Box(given(left), given(right), given(front), given(back), given(bottom), given(top));
    }

    public static Material material(Material.Kind kind, Dim thickness) {
        return new Material(
                "wood",
                kind,
                "black cherry",
                thickness,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                true,
                Optional.empty());
    }

    /** A part of solid wood that fills its box. */
    public static Part part(String path, Box box, Lie lie) {
        return part(path, box, lie, Optional.empty(), Optional.empty());
    }

    public static Part part(String path, Box box, Lie lie, Optional<Outline> outline, Optional<Turn> turn) {
        return new Part(
                path,
                material(Material.Kind.SOLID, box.extent(lie.thickness())),
                box.extent(lie.length()),
                box.extent(lie.width()),
                box.extent(lie.thickness()),
                box,
                lie,
                outline,
                turn,
                Set.of(),
                false);
    }

    /** Standing upright, its face to the left. */
    public static Part upright(String path, Box box) {
        return part(path, box, Lie.along(Axis.UP, Side.LEFT));
    }

    /** Lying from left to right, its face up. */
    public static Part lying(String path, Box box) {
        return part(path, box, Lie.along(Axis.ACROSS, Side.TOP));
    }

    public HandBuilt with(Part... more) {
        parts.addAll(List.of(more));
        return this;
    }

    public HandBuilt joined(Joint.Kind kind, String entering, String receiving, Box overlap) {
        joints.add(new Joint(entering + " to " + receiving, kind, entering, receiving, Optional.of(overlap), Map.of()));
        return this;
    }

    public HandBuilt joined(Joint.Kind kind, String entering, String receiving) {
        joints.add(new Joint(entering + " to " + receiving, kind, entering, receiving, Optional.empty(), Map.of()));
        return this;
    }

    public HandBuilt opening(String path, Box box, String... fills) {
        openings.add(new Opening(
                path,
                Dim.named(path + " / width", box.extent(Axis.ACROSS), Tolerance.NONE),
                Dim.named(path + " / depth", box.extent(Axis.DEEP), Tolerance.NONE),
                Dim.named(path + " / height", box.extent(Axis.UP), Tolerance.NONE),
                box,
                List.of(fills)));
        return this;
    }

    public HandBuilt hung(String what, String... on) {
        fittings.add(new Fitting(what, what, 1, "piece", List.of(on), Map.of()));
        return this;
    }

    public Assembly assembly() {
        return new Assembly(
                piece,
                List.copyOf(parts),
                List.copyOf(joints),
                List.copyOf(openings),
                List.copyOf(fittings),
                Map.of(),
                List.of());
    }
}
