package scantling.checks.lasting;

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
import scantling.measure.Ledger;
import scantling.measure.Length;
import scantling.measure.Tolerance;
import scantling.measure.Unit;
import scantling.piece.Material;
import scantling.piece.Piece;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Lie;
import scantling.space.Side;

/** Small assemblies put together by hand, all sizes in millimetres. */
final class Made {
    private final String title;
    private final List<Part> parts = new ArrayList<>();
    private final List<Joint> joints = new ArrayList<>();
    private final List<Opening> openings = new ArrayList<>();
    private final List<Fitting> fittings = new ArrayList<>();

    Made(String title) {
        this.title = title;
    }

    static Dim mm(double value) {
        Length length = Length.ofMillimetres(value);
        return Dim.lookedUp(length, "test", "test", "test");
    }

    static Material solid(String species) {
        return material(Material.Kind.SOLID, species);
    }

    static Material sheet(String panel) {
        return material(Material.Kind.SHEET, panel);
    }

    private static Material material(Material.Kind kind, String of) {
        return new Material(
                of, kind, of, mm(18), Optional.empty(), Optional.empty(), Optional.empty(), true, Optional.empty());
    }

    static Box box(double left, double right, double front, double back, double bottom, double top) {
        return new Box(mm(left), mm(right), mm(front), mm(back), mm(bottom), mm(top));
    }

    /** @param grain direction of the grain @param face its wide side */
    Made part(String path, Material material, Axis grain, Side face, Box box) {
        Lie lie = Lie.along(grain, face);
        parts.add(new Part(
                path,
                material,
                Dim.named(Ledger.path(path, "length"), box.extent(lie.length()), exact()),
                Dim.named(Ledger.path(path, "width"), box.extent(lie.width()), exact()),
                Dim.named(Ledger.path(path, "thickness"), box.extent(lie.thickness()), exact()),
                box,
                lie,
                Optional.empty(),
                Optional.empty(),
                Set.of(),
                false));
        return this;
    }

    private static Tolerance exact() {
        return new Tolerance(Length.ZERO, "test");
    }

    Made joint(Joint.Kind kind, String entering, String receiving, Map<String, Dim> sizes) {
        joints.add(new Joint(entering + " to " + receiving, kind, entering, receiving, Optional.empty(), sizes));
        return this;
    }

    Made opening(String path, Box box, String... fills) {
        openings.add(new Opening(
                path, box.extent(Axis.ACROSS), box.extent(Axis.DEEP), box.extent(Axis.UP), box, List.of(fills)));
        return this;
    }

    Made pins(String shelf, String... holders) {
        List<String> on = new ArrayList<>(List.of(shelf));
        on.addAll(List.of(holders));
        fittings.add(new Fitting(
                shelf + " / pins", "shelf pin 5 mm", 4, "piece", on, Map.of(), Map.of("profile", "shelf pin")));
        return this;
    }

    Made slides(String drawer, String profile) {
        fittings.add(new Fitting(
                drawer + " / slides",
                profile + " slide 500",
                1,
                "pair",
                List.of(),
                Map.of(),
                Map.of("profile", profile)));
        return this;
    }

    Assembly assembly() {
        Piece piece = new Piece(
                title,
                Optional.empty(),
                Unit.MM,
                mm(900),
                mm(300),
                mm(900),
                Map.of(),
                List.of(),
                Map.of(),
                Map.of(),
                "");
        return new Assembly(piece, parts, joints, openings, fittings, Map.of(), List.of());
    }
}
