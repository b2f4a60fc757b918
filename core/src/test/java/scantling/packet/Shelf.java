package scantling.packet;

import com.openhtmltopdf.util.XRLog;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Fitting;
import scantling.construct.Joint;
import scantling.construct.Opening;
import scantling.construct.Part;
import scantling.drawing.CutSheet;
import scantling.feature.Feature;
import scantling.feature.Features;
import scantling.feature.Range;
import scantling.feature.Setting;
import scantling.feature.Surface;
import scantling.measure.Dim;
import scantling.measure.Ledger;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.measure.Span;
import scantling.measure.Tolerance;
import scantling.measure.Unit;
import scantling.piece.Material;
import scantling.piece.Piece;
import scantling.route.Route;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Lie;
import scantling.space.Side;

/**
 * A wall shelf of five parts, by hand: 800 wide, 200 deep, 600 high, of 18 ash; two shelves 6 deep in dados of the ends,
 * a back rail screwed under the upper shelf.
 */
public final class Shelf {
    static {
        XRLog.setLoggingEnabled(false);
    }

    private static final Span SPAN = new Span(2, 7, 20, 23);

    private final Ledger ledger = new Ledger(Map.of(), Map.of(), Tolerance.NONE);
    private final Dim wide = ledger.name("width", given("800", "width"));
    private final Dim deep = ledger.name("depth", given("200", "depth"));
    private final Dim high = ledger.name("height", given("600", "height"));
    private final Dim thick = given("18", "ash");
    private final Dim housed = Dim.lookedUp(Length.mm(6), "dados", "a third of 18", "common practice");
    private final Material ash = new Material(
            "ash",
            Material.Kind.SOLID,
            "white ash",
            thick,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            true,
            Optional.empty());

    Shelf() {}

    /** The assembly. */
    public static Assembly assembly() {
        return new Shelf().build();
    }

    /** A packet with everything in it. */
    public static PacketContent content() {
        Shelf shelf = new Shelf();
        Assembly assembly = shelf.build();
        Features features = shelf.features();
        List<PartGroup> groups = PartGroups.of(assembly, features);
        Part end = assembly.parts().get(0);
        Finding stop = new Finding(
                Finding.Severity.STOP,
                "lower shelf",
                "The lower shelf bends too far under books:",
                List.of(Dim.ZERO.plus(given("2.4", "bend"))),
                "beam on two supports; common practice allows 1 in 360",
                "Put a rail under it.");
        Finding note = new Finding(
                Finding.Severity.NOTE,
                "width",
                "The shelf fits between two studs < 900 & > 700.",
                List.of(),
                "common practice",
                "");
        List<BlankRow> blanks = List.of(new BlankRow(
                "A1",
                1,
                end.length().plus(given("20", "over")),
                end.width().plus(given("6", "over")),
                given("26", "rough"),
                "glue-up of two",
                "plane, joint, glue, to width"));
        JobLines job = new JobLines(
                "Thistle Yard Workshop", "26-031", List.of(new JobLines.Line("Wanted by", "Fri 20 March")));
        return new PacketContent(
                assembly,
                features,
                groups,
                blanks,
                List.of(cutSheet()),
                Route.NONE,
                List.of(stop, note),
                LengthFormat.MM,
                job);
    }

    /** Two dados in each end, cut from the side that faces the shelves, and two screw holes through the back rail. */
    public Features features() {
        List<Feature> all = new ArrayList<>();
        for (String end : List.of("left end", "right end")) {
            all.add(dadoIn(end, "lower shelf", "100"));
            all.add(dadoIn(end, "upper shelf", "450"));
        }
        all.add(hole("60"));
        all.add(hole("716"));
        Features.Choice choice = new Features.Choice(
                "lower shelf to left end",
                "A third of the end's thickness is left to the dado.",
                List.of(thick),
                "common practice");
        return new Features(all, List.of(choice), List.of());
    }

    private Feature dadoIn(String end, String shelf, String up) {
        Dim from = given(up, shelf + " from the floor");
        return new Feature(
                shelf + " to " + end + " / dado",
                end,
                shelf + " to " + end,
                Feature.Kind.DADO,
                Surface.FACE_SIDE,
                new Range(from, from.plus(thick)),
                new Range(Dim.ZERO, deep),
                new Range(Dim.ZERO, housed),
                Optional.empty(),
                new Setting(
                        "router", "straight bit 18", Map.of("depth stop", housed), List.of("Climb out at the back.")));
    }

    private Feature hole(String along) {
        Dim across = given("5", "screw hole");
        return new Feature(
                "back rail / screws / hole at " + along,
                "back rail",
                "back rail / screws",
                Feature.Kind.HOLE,
                Surface.FACE_SIDE,
                Range.around(given(along, "along"), across),
                Range.around(given("30", "from the edge"), across),
                new Range(Dim.ZERO, thick),
                Optional.of(across.half()),
                new Setting("drill press", "brad-point 5", Map.of("fence", given("30", "from the edge")), List.of()));
    }

    private static CutSheet cutSheet() {
        return new CutSheet(
                "Board 1, ash 26",
                Length.mm(2400),
                Length.mm(220),
                List.of(
                        placed("A1", 0, 14, 620, 206),
                        placed("A2", 623, 14, 620, 206),
                        placed("B", 1246, 14, 796, 206)),
                List.of(placed("", 2045, 0, 355, 220)),
                List.of(
                        cut(1, 621, 0, 621, 220, 620),
                        cut(2, 1244, 0, 1244, 220, 620),
                        cut(3, 2043, 0, 2043, 220, 796),
                        cut(4, 0, 12, 2043, 12, 206)),
                "No plan can use fewer than 1 board; this uses 1.");
    }

    private static CutSheet.Placed placed(String label, long x, long y, long length, long width) {
        return new CutSheet.Placed(label, Length.mm(x), Length.mm(y), Length.mm(length), Length.mm(width));
    }

    private static CutSheet.Cut cut(int order, long x1, long y1, long x2, long y2, long fence) {
        return new CutSheet.Cut(
                order,
                new CutSheet.Point(Length.mm(x1), Length.mm(y1)),
                new CutSheet.Point(Length.mm(x2), Length.mm(y2)),
                Length.mm(fence));
    }

    private static Dim given(String text, String label) {
        return Dim.given(Length.mm(text), label, text, SPAN);
    }

    Assembly build() {
        Box whole = Box.standing(wide, deep, high);
        Box left = whole.slab(Side.LEFT, thick);
        Box right = whole.slab(Side.RIGHT, thick);
        Box between = whole.with(Side.LEFT, left.right()).with(Side.RIGHT, right.left());
        Dim low = given("100", "lower shelf from the floor");
        Dim up = given("450", "upper shelf from the floor");
        Box lower = shelf(between, low);
        Box upper = shelf(between, up);
        Box rail = between.slab(Side.BACK, thick)
                .with(Side.TOP, upper.bottom())
                .with(Side.BOTTOM, upper.bottom().minus(given("60", "rail")));
        List<Part> parts = List.of(
                part("left end", left, new Lie(Axis.UP, Axis.ACROSS, Side.RIGHT, Side.FRONT, Side.BOTTOM)),
                part("right end", right, new Lie(Axis.UP, Axis.ACROSS, Side.LEFT, Side.FRONT, Side.BOTTOM)),
                part("lower shelf", lower, Lie.along(Axis.ACROSS, Side.TOP)),
                part("upper shelf", upper, Lie.along(Axis.ACROSS, Side.TOP)),
                part("back rail", rail, Lie.along(Axis.ACROSS, Side.FRONT)));
        List<Joint> joints = List.of(
                dado("lower shelf", lower, "left end", left),
                dado("lower shelf", lower, "right end", right),
                dado("upper shelf", upper, "left end", left),
                dado("upper shelf", upper, "right end", right),
                new Joint(
                        "back rail to upper shelf",
                        Joint.Kind.SCREW,
                        "back rail",
                        "upper shelf",
                        Optional.empty(),
                        Map.of()));
        Box air = between.with(Side.BOTTOM, lower.top()).with(Side.TOP, upper.bottom());
        List<Opening> openings = List.of(opening("middle", air));
        List<Fitting> fittings = List.of(new Fitting(
                "back rail / screws",
                "wall screw, 5 × 70",
                3,
                "piece",
                List.of("back rail"),
                Map.of("pilot", given("3", "pilot"))));
        Map<String, Material> materials = new LinkedHashMap<>(Map.of("ash", ash));
        Piece piece = new Piece(
                "Wall shelf",
                Optional.of("O. Finchweir"),
                Unit.MM,
                wide,
                deep,
                high,
                materials,
                List.of(),
                Map.of(),
                Map.of("oil", "hard oil × 2"),
                "");
        return new Assembly(piece, parts, joints, openings, fittings, ledger.names(), List.of());
    }

    private Box shelf(Box between, Dim bottom) {
        return between.inset(Side.LEFT, Dim.ZERO.minus(housed))
                .inset(Side.RIGHT, Dim.ZERO.minus(housed))
                .with(Side.BOTTOM, bottom)
                .with(Side.TOP, bottom.plus(thick));
    }

    private Opening opening(String path, Box box) {
        return new Opening(
                path,
                ledger.name(path + " / width", box.extent(Axis.ACROSS)),
                ledger.name(path + " / depth", box.extent(Axis.DEEP)),
                ledger.name(path + " / height", box.extent(Axis.UP)),
                box,
                List.of());
    }

    private Part part(String path, Box box, Lie lie) {
        return new Part(
                path,
                ash,
                ledger.name(path + " / length", box.extent(lie.length())),
                ledger.name(path + " / width", box.extent(lie.width())),
                ledger.name(path + " / thickness", box.extent(lie.thickness())),
                box,
                lie,
                Optional.empty(),
                Optional.empty(),
                Set.of(lie.faceSide()),
                false);
    }

    private Joint dado(String shelf, Box entering, String end, Box receiving) {
        return new Joint(
                shelf + " to " + end,
                Joint.Kind.DADO,
                shelf,
                end,
                Optional.of(entering.meet(receiving)),
                Map.of("depth", housed));
    }
}
