package scantling.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import scantling.drawing.CutDrawing;
import scantling.drawing.Drawing;
import scantling.drawing.Exploded;
import scantling.drawing.PartDrawing;
import scantling.drawing.Views;
import scantling.measure.Beside;

/** Every drawing of a packet, made once for all that show it; each kind is begun at once, beside the others. */
final class Drawings {
    /** What drawings and the gap after each may take of the narrower usual sheet, in millimetres. */
    private static final double ROW_MM = 180;

    private static final double GAP_MM = 4;

    private static final int SCALES_TRIED = 3;

    private final Beside<Seen> seen;
    private final Beside<List<Drawing>> exploded;
    private final Beside<List<Drawing>> parts;
    private final Beside<List<Drawing>> cuts;

    /** The piece as a whole. */
    private record Seen(
            Drawing front,
            Drawing section,
            Drawing side,
            Drawing top,
            List<List<Drawing>> rows,
            Optional<Drawing> legend) {}

    private Drawings(PacketContent content) {
        Map<String, String> marks = new TreeMap<>();
        content.groups().forEach(group -> group.paths().forEach(path -> marks.put(path, group.mark())));
        this.exploded = Beside.begin(() -> Exploded.all(content.assembly(), marks));
        this.parts = Beside.begin(
                () -> drawn(content.groups()).map(group -> part(content, group)).toList());
        this.seen = Beside.begin(() -> seen(views(content)));
        this.cuts = Beside.begin(() -> content.diagrams().stream()
                .map(sheet -> CutDrawing.of(sheet, content.format()))
                .toList());
    }

    static Drawings of(PacketContent content) {
        return new Drawings(content);
    }

    private static Seen seen(Views views) {
        Drawing front = views.front();
        Drawing section = views.section();
        Drawing side = views.side();
        Drawing top = views.top();
        List<List<Drawing>> rows = new ArrayList<>();
        if (views.areLong()) {
            rows.add(List.of(front));
            rows.add(List.of(top));
            rows.addAll(row(section, side));
        } else if (fit(front, section, side)) {
            rows.addAll(row(List.of(front, section, side), top));
        } else {
            rows.addAll(row(front, section));
            rows.addAll(row(side, top));
        }
        return new Seen(front, section, side, top, rows, views.legend());
    }

    /** From before it. */
    Drawing front() {
        return seen.get().front();
    }

    /** The views as they stand on paper. */
    List<List<Drawing>> rows() {
        return seen.get().rows();
    }

    /** What the hatches of the section mean, where it has any. */
    Optional<Drawing> legend() {
        return seen.get().legend();
    }

    /** Drawn apart, in one drawing or by units. */
    List<Drawing> exploded() {
        return exploded.get();
    }

    /** One to a group of parts that is drawn, in their order. */
    List<Drawing> parts() {
        return parts.get();
    }

    /** One to a cutting diagram, in their order. */
    List<Drawing> cuts() {
        return cuts.get();
    }

    /** Smaller than usual where that lets two stand beside each other, for figures in inches are long. */
    private static Views views(PacketContent content) {
        Views usual = new Views(content.assembly(), content.format());
        if (usual.areLong()) {
            return usual;
        }
        return Stream.iterate(usual, Views::smaller)
                .limit(SCALES_TRIED)
                .filter(views -> row(views.front(), views.section()).size() == 1
                        && row(views.side(), views.top()).size() == 1)
                .findFirst()
                .orElse(usual);
    }

    /** The groups that have a drawing: the second hand of a pair is told by the drawing of the first. */
    static Stream<PartGroup> drawn(List<PartGroup> groups) {
        return groups.stream().filter(group -> group.mirrors().isEmpty());
    }

    /** Drawings beside each other, or one below the others where a sheet is too narrow for all. */
    private static List<List<Drawing>> row(Drawing first, Drawing second) {
        return row(List.of(first), second);
    }

    private static List<List<Drawing>> row(List<Drawing> some, Drawing last) {
        List<Drawing> all = Stream.concat(some.stream(), Stream.of(last)).toList();
        return fit(all.toArray(Drawing[]::new)) ? List.of(all) : List.of(some, List.of(last));
    }

    private static boolean fit(Drawing... beside) {
        return Stream.of(beside)
                        .mapToDouble(drawing -> drawing.paperWidth() + GAP_MM)
                        .sum()
                <= ROW_MM;
    }

    private static Drawing part(PacketContent content, PartGroup group) {
        boolean right = group.sample().lie().hasNearEndRight();
        String hand = right && !group.work().isEmpty() ? ", near end at the right" : "";
        String count = group.count() > 1 ? ", " + group.count() + " off" : "";
        String mirror = content.groups().stream()
                .filter(other -> other.mirrors().equals(Optional.of(group.mark())))
                .map(other -> "; %s, %s, is its mirror image".formatted(other.mark(), other.names()))
                .collect(Collectors.joining());
        String title = group.mark() + ", " + group.names() + count + hand + mirror;
        return PartDrawing.of(group.sample(), group.work(), title, content.format());
    }

    /** Front, section, side and top, in this order. */
    List<Drawing> views() {
        Seen all = seen.get();
        return List.of(all.front(), all.section(), all.side(), all.top());
    }

    /** Each by the name of its file. */
    Map<String, Drawing> byName(List<PartGroup> groups) {
        Map<String, Drawing> all = new LinkedHashMap<>();
        all.put("front", seen.get().front());
        all.put("side", seen.get().side());
        all.put("top", seen.get().top());
        all.put("section", seen.get().section());
        List<Drawing> apart = exploded();
        for (int i = 0; i < apart.size(); i++) {
            all.put(apart.size() == 1 ? "exploded" : "exploded-" + (i + 1), apart.get(i));
        }
        List<PartGroup> drawn = drawn(groups).toList();
        for (int i = 0; i < drawn.size(); i++) {
            all.put("part-" + drawn.get(i).mark(), parts().get(i));
        }
        for (int i = 0; i < cuts().size(); i++) {
            all.put("cutting-" + (i + 1), cuts().get(i));
        }
        return all;
    }
}
