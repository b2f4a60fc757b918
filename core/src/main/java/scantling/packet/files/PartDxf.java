package scantling.packet.files;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Surface;
import scantling.feature.WorkGroup;
import scantling.measure.Dim;
import scantling.space.Outline.Corner;

/**
 * A part as a drawing exchange file, release 12, in millimetres: its face side up, x from the near end, y from the face edge.
 * Layers say what is done: {@code OUTLINE}, {@code DRILL_5_DEEP_12}, {@code GROOVE_DEEP_6}; work from the other face has
 * {@code BACK_} before it. Work on edges and ends is not in it.
 */
public final class PartDxf {
    private static final String OUTLINE = "OUTLINE";
    private static final int COLOURS = 7;

    private final StringBuilder out = new StringBuilder();
    private final Map<String, List<Shape>> layers = new LinkedHashMap<>();

    private PartDxf() {}

    /** Something drawn on a layer. */
    private sealed interface Shape permits Circle, Loop {}

    private record Circle(double x, double y, double radius) implements Shape {}

    private record Loop(List<double[]> corners) implements Shape {}

    /** Writes one part with the work on its two faces. */
    public static String of(Part part, List<WorkGroup> work) {
        PartDxf dxf = new PartDxf();
        dxf.add(OUTLINE, new Loop(dxf.outline(part)));
        for (WorkGroup group : work) {
            group.features().stream()
                    .filter(feature -> feature.surface() == Surface.FACE_SIDE || feature.surface() == Surface.BACK_SIDE)
                    .forEach(feature -> dxf.add(layer(feature), shape(feature)));
        }
        return dxf.write();
    }

    private void add(String layer, Shape shape) {
        layers.computeIfAbsent(layer, key -> new ArrayList<>()).add(shape);
    }

    private List<double[]> outline(Part part) {
        List<Corner> corners = part.outline().map(outline -> outline.corners()).orElseGet(() -> {
            Dim length = part.box().extent(part.lie().length());
            Dim width = part.box().extent(part.lie().width());
            return List.of(
                    new Corner(Dim.ZERO, Dim.ZERO),
                    new Corner(length, Dim.ZERO),
                    new Corner(length, width),
                    new Corner(Dim.ZERO, width));
        });
        return corners.stream()
                .map(corner -> new double[] {mm(corner.along()), mm(corner.across())})
                .toList();
    }

    private static String layer(Feature feature) {
        String back = feature.surface() == Surface.BACK_SIDE ? "BACK_" : "";
        String deep = "_DEEP_" + name(feature.depth());
        if (feature.kind() == Feature.Kind.HOLE) {
            return back + "DRILL_"
                    + name(feature.radius().map(radius -> radius.times(2)).orElse(Dim.ZERO)) + deep;
        }
        return back + feature.kind().words().toUpperCase(Locale.ROOT) + deep;
    }

    /** A size in a layer's name, where a full stop is not allowed: 12 or 12_5. */
    private static String name(Dim dim) {
        return dim.value().millimetres().stripTrailingZeros().toPlainString().replace('.', '_');
    }

    private static Shape shape(Feature feature) {
        if (feature.kind() == Feature.Kind.HOLE) {
            return new Circle(
                    mm(feature.middleAlong()),
                    mm(feature.middleAcross()),
                    feature.radius().map(PartDxf::mm).orElse(0.0));
        }
        double left = mm(feature.along().from());
        double right = mm(feature.along().to());
        double low = mm(feature.across().from());
        double high = mm(feature.across().to());
        return new Loop(
                List.of(new double[] {left, low}, new double[] {right, low}, new double[] {right, high}, new double[] {
                    left, high
                }));
    }

    private String write() {
        pair(0, "SECTION", 2, "HEADER", 9, "$ACADVER", 1, "AC1009", 0, "ENDSEC");
        pair(0, "SECTION", 2, "TABLES", 0, "TABLE", 2, "LAYER", 70, String.valueOf(layers.size()));
        int colour = 0;
        for (String layer : layers.keySet()) {
            pair(0, "LAYER", 2, layer, 70, "0", 62, String.valueOf(1 + colour++ % COLOURS), 6, "CONTINUOUS");
        }
        pair(0, "ENDTAB", 0, "ENDSEC", 0, "SECTION", 2, "ENTITIES");
        layers.forEach((layer, shapes) -> shapes.forEach(shape -> shape(layer, shape)));
        pair(0, "ENDSEC", 0, "EOF");
        return out.toString();
    }

    private void shape(String layer, Shape shape) {
        if (shape instanceof Circle circle) {
            pair(0, "CIRCLE", 8, layer, 10, number(circle.x()), 20, number(circle.y()), 30, "0.0");
            pair(40, number(circle.radius()));
        } else if (shape instanceof Loop loop) {
            pair(0, "POLYLINE", 8, layer, 66, "1", 70, "1", 10, "0.0", 20, "0.0", 30, "0.0");
            for (double[] corner : loop.corners()) {
                pair(0, "VERTEX", 8, layer, 10, number(corner[0]), 20, number(corner[1]), 30, "0.0");
            }
            pair(0, "SEQEND", 8, layer);
        }
    }

    private void pair(Object... codesAndValues) {
        for (int i = 0; i < codesAndValues.length; i += 2) {
            out.append(codesAndValues[i])
                    .append("\r\n")
                    .append(codesAndValues[i + 1])
                    .append("\r\n");
        }
    }

    private static String number(double value) {
        String plain = new BigDecimal(String.format(Locale.ROOT, "%.5f", value))
                .stripTrailingZeros()
                .toPlainString();
        return plain.contains(".") ? plain : plain + ".0";
    }

    private static double mm(Dim dim) {
        return dim.value().toMillimetres();
    }
}
