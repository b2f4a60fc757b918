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
        Map<String, Set<String>> wheres = new LinkedHashMap<>();
        Map<String, String[]> keys = new LinkedHashMap<>();
        for (FinishGroup.Mask mask : group.masks()) {
            Part part = first.get(mark(mask.part()));
            if (part != null && part.path().equals(mask.part())) {
                String key = mark(mask.part()) + "|" + mask.surface();
                keys.putIfAbsent(
                        key, new String[] {mark(mask.part()), mask.surface().words()});
                wheres.computeIfAbsent(key, k -> new LinkedHashSet<>()).add(where(part, mask.surface(), mask.patch()));
            }
        }
        Map<List<String>, List<String>> alike = new LinkedHashMap<>();
        wheres.forEach((key, where) -> {
            String[] both = keys.getOrDefault(key, new String[] {"", ""});
            alike.computeIfAbsent(List.of(both[1], String.join("; ", where)), k -> new ArrayList<>())
                    .add(both[0]);
        });
        List<FinishPages.Mask> rows = new ArrayList<>();
        alike.forEach((what, on) -> rows.add(new FinishPages.Mask(String.join(", ", on), what.get(0), what.get(1))));
        return rows;
    }

    private String mark(String path) {
        return marks.getOrDefault(path, path);
    }

    private String where(Part part, Surface surface, Face.Patch patch) {
        boolean end = surface == Surface.NEAR_END || surface == Surface.FAR_END;
        boolean edge = surface == Surface.FACE_EDGE || surface == Surface.BACK_EDGE;
        double reach = (end ? part.width() : part.length()).value().toMillimetres();
        double wide = (end || edge ? part.thickness() : part.width()).value().toMillimetres();
        String along = stretch(
                patch.alongFrom(),
                patch.alongTo(),
                reach,
                end ? "the face edge" : "the near end",
                end ? "the back edge" : "the far end");
        String across = stretch(
                patch.acrossFrom(),
                patch.acrossTo(),
                wide,
                end || edge ? "the face side" : "the face edge",
                end || edge ? "the back side" : "the back edge");
        if (along.isEmpty() && across.isEmpty()) {
            return "all of it";
        }
        return along.isEmpty() || across.isEmpty() ? along + across : along + ", there " + across;
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
