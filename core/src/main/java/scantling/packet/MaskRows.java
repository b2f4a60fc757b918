package scantling.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import scantling.construct.Part;
import scantling.feature.Surface;
import scantling.finishing.Face;
import scantling.finishing.FinishGroup;
import scantling.measure.Length;
import scantling.measure.LengthFormat;

/** Where to keep a part bare for glue, in the bench's words: surfaces that are masked alike stand on one line. */
final class MaskRows {
    private static final double NEAR = 1;
    private static final int SIDES = 4;

    private final LengthFormat format;
    private final Map<String, String> marks;

    MaskRows(LengthFormat format, Map<String, String> marks) {
        this.format = format;
        this.marks = marks;
    }

    /** Of one group; of parts with the same mark only the first, for the others are alike. */
    List<FinishPages.Mask> of(FinishGroup group) {
        Map<String, Part> first = new LinkedHashMap<>();
        group.faces().forEach(face -> first.putIfAbsent(mark(face.part().path()), face.part()));
        Map<List<String>, Set<String>> surfaces = new LinkedHashMap<>();
        first.forEach((mark, part) -> {
            Map<Surface, List<Face.Patch>> patches = new LinkedHashMap<>();
            group.masks().stream()
                    .filter(mask -> mask.part().equals(part.path()))
                    .forEach(mask -> patches.computeIfAbsent(mask.surface(), k -> new ArrayList<>())
                            .add(mask.patch()));
            patches.forEach((surface, all) -> surfaces.computeIfAbsent(
                            List.of(mark, where(part, surface, all)), k -> new LinkedHashSet<>())
                    .add(surface.words()));
        });
        Map<List<String>, List<String>> alike = new LinkedHashMap<>();
        surfaces.forEach((on, names) -> alike.computeIfAbsent(
                        List.of(String.join(", ", names), on.get(1)), k -> new ArrayList<>())
                .add(on.get(0)));
        List<FinishPages.Mask> rows = new ArrayList<>();
        alike.forEach((what, on) -> rows.add(new FinishPages.Mask(String.join(", ", on), what.get(0), what.get(1))));
        return rows;
    }

    /** Each place in words; four strips as wide along all sides are a rim. */
    private String where(Part part, Surface surface, List<Face.Patch> patches) {
        Set<String> places = new LinkedHashSet<>();
        patches.forEach(patch -> places.add(where(part, surface, patch, patches)));
        Set<String> widths = new LinkedHashSet<>();
        places.forEach(place -> widths.add(place.replaceAll(" from the .*", "")));
        boolean rim = places.size() == SIDES
                && widths.size() == 1
                && places.stream().noneMatch(place -> place.contains("there") || place.contains(" to "));
        return rim ? widths.iterator().next() + " all round" : String.join("; ", places);
    }

    private String mark(String path) {
        return marks.getOrDefault(path, path);
    }

    private String where(Part part, Surface surface, Face.Patch patch, List<Face.Patch> all) {
        boolean end = surface == Surface.NEAR_END || surface == Surface.FAR_END;
        boolean edge = surface == Surface.FACE_EDGE || surface == Surface.BACK_EDGE;
        double reach = (end ? part.width() : part.length()).value().toMillimetres();
        double wide = (end || edge ? part.thickness() : part.width()).value().toMillimetres();
        Face.Patch grown = grown(patch, all);
        String along = stretch(
                grown.alongFrom(),
                grown.alongTo(),
                reach,
                end ? "the face edge" : "the near end",
                end ? "the back edge" : "the far end");
        String across = stretch(
                grown.acrossFrom(),
                grown.acrossTo(),
                wide,
                end || edge ? "the face side" : "the face edge",
                end || edge ? "the back side" : "the back edge");
        if (along.isEmpty() && across.isEmpty()) {
            return "all of it";
        }
        return along.isEmpty() || across.isEmpty() ? along + across : along + ", there " + across;
    }

    /** A strip with the corners in which it runs into others. */
    private static Face.Patch grown(Face.Patch patch, List<Face.Patch> all) {
        Face.Patch grown = patch;
        for (Face.Patch other : all) {
            boolean across = other.alongFrom() <= patch.alongFrom() + NEAR && other.alongTo() >= patch.alongTo() - NEAR;
            boolean along =
                    other.acrossFrom() <= patch.acrossFrom() + NEAR && other.acrossTo() >= patch.acrossTo() - NEAR;
            if (across && touches(other.acrossFrom(), other.acrossTo(), patch.acrossFrom(), patch.acrossTo())) {
                grown = new Face.Patch(
                        grown.alongFrom(),
                        grown.alongTo(),
                        Math.min(grown.acrossFrom(), other.acrossFrom()),
                        Math.max(grown.acrossTo(), other.acrossTo()));
            } else if (along && touches(other.alongFrom(), other.alongTo(), patch.alongFrom(), patch.alongTo())) {
                grown = new Face.Patch(
                        Math.min(grown.alongFrom(), other.alongFrom()),
                        Math.max(grown.alongTo(), other.alongTo()),
                        grown.acrossFrom(),
                        grown.acrossTo());
            }
        }
        return grown;
    }

    private static boolean touches(double from, double to, double thisFrom, double thisTo) {
        return from <= thisTo + NEAR && to >= thisFrom - NEAR;
    }

    /** Empty when it is the whole of it. */
    private String stretch(double from, double to, double whole, String near, String far) {
        boolean begins = from <= NEAR;
        boolean ends = to >= whole - NEAR;
        if (begins && ends) {
            return "";
        }
        if (begins) {
            return "%s from %s".formatted(length(to), near);
        }
        return ends
                ? "%s from %s".formatted(length(whole - from), far)
                : "%s to %s from %s".formatted(format.format(Length.ofMillimetres(from)), length(to), near);
    }

    private String length(double millimetres) {
        return format.formatWithUnit(Length.ofMillimetres(millimetres));
    }
}
