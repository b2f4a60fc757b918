package scantling.joinery;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Range;
import scantling.feature.Setting;
import scantling.feature.Surface;
import scantling.measure.Dim;
import scantling.measure.Ledger;
import scantling.measure.Length;
import scantling.measure.Making;
import scantling.space.EndCut;

/** Ends of splayed and leaning parts, as the saw is set for them: mitre gauge and blade tilt off square. */
final class SawnEnds {
    /** Less than this a saw cannot be set to: common practice, the eye reads a tenth of a degree off a gauge. */
    static final double NOTHING = 0.05;

    private SawnEnds() {}

    /** A feature for each end that is not square. */
    static List<Feature> of(List<Part> parts) {
        List<Feature> all = new ArrayList<>();
        for (Part part : parts) {
            end(part, part.ends().near(), false).ifPresent(all::add);
            end(part, part.ends().far(), true).ifPresent(all::add);
        }
        return all;
    }

    private static Optional<Feature> end(Part part, EndCut cut, boolean far) {
        Map<String, Double> angles = angles(cut);
        if (angles.isEmpty()) {
            return Optional.empty();
        }
        Surface surface = far ? Surface.FAR_END : Surface.NEAR_END;
        Dim run = run(part, cut);
        Dim from = far ? part.length().minus(run) : Dim.ZERO;
        String owner = Ledger.path(part.path(), surface.words());
        return Optional.of(new Feature(
                Ledger.path(owner, "saw cut in " + part.path()),
                part.path(),
                owner,
                Feature.Kind.MITRE,
                surface,
                new Range(from, from.plus(run)),
                new Range(Dim.ZERO, part.width()),
                new Range(Dim.ZERO, part.thickness()),
                Optional.empty(),
                new Setting("table saw", "crosscut blade", Map.of(), angles, List.of(longPoint(cut, far)))));
    }

    /** What a saw is set to for an end; nothing for a square one. */
    static Map<String, Double> angles(EndCut cut) {
        Map<String, Double> angles = new LinkedHashMap<>();
        add(angles, "mitre gauge", cut.mitreDegrees());
        add(angles, "blade tilt", cut.tiltDegrees());
        return angles;
    }

    private static void add(Map<String, Double> angles, String name, double degrees) {
        if (Math.abs(degrees) >= NOTHING) {
            angles.put(name, Math.abs(degrees));
        }
    }

    /** How far the shortest corner of the end lies behind the longest. */
    private static Dim run(Part part, EndCut cut) {
        double wide = Math.abs(cut.overWidth());
        double thick = Math.abs(cut.overThickness());
        return Dim.worked(
                Length.ofMillimetres(Row.mm(part.width()) * wide + Row.mm(part.thickness()) * thick),
                "width and thickness, each by how much the cut runs on over it",
                new Making.Input(wide, part.width()),
                new Making.Input(thick, part.thickness()));
    }

    private static String longPoint(EndCut cut, boolean far) {
        List<String> where = new ArrayList<>();
        if (Math.abs(cut.mitreDegrees()) >= NOTHING) {
            where.add(cut.overWidth() > 0 == far ? "back edge" : "face edge");
        }
        if (Math.abs(cut.tiltDegrees()) >= NOTHING) {
            where.add(cut.overThickness() > 0 == far ? "back side" : "face side");
        }
        return "%s: the long point is at the %s."
                .formatted(far ? "Far end" : "Near end", String.join(" and the ", where));
    }
}
