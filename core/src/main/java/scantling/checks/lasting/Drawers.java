package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Assembly;
import scantling.construct.Fitting;
import scantling.construct.Opening;
import scantling.construct.Part;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Extent;

/** The drawers of a piece: what belongs to each, how far it opens, what it holds. */
final class Drawers {
    private static final double MM3_PER_DM3 = 1e6;

    private final Assembly assembly;
    private final Map<String, List<Part>> byPath = new LinkedHashMap<>();

    Drawers(Assembly assembly) {
        this.assembly = assembly;
        for (Part part : assembly.parts()) {
            if (!part.box().isEmpty()) {
                Parts.findDrawer(part)
                        .ifPresent(path -> byPath.computeIfAbsent(path, key -> new ArrayList<>())
                                .add(part));
            }
        }
    }

    /** One drawer. @param opens how far it comes forward, mm @param volume storage, dm3 @param extent of it shut */
    record Drawer(String path, List<Part> parts, double opens, double volume, Extent extent) {}

    List<Drawer> all() {
        List<Drawer> drawers = new ArrayList<>();
        byPath.forEach((path, parts) -> {
            Extent extent = extent(parts);
            drawers.add(new Drawer(path, parts, opens(path, extent), volume(parts), extent));
        });
        return drawers;
    }

    static Extent extent(List<Part> parts) {
        List<Extent> each = parts.stream().map(part -> Extent.of(part.box())).toList();
        return new Extent(
                each.stream().mapToDouble(Extent::left).min().orElse(0),
                each.stream().mapToDouble(Extent::right).max().orElse(0),
                each.stream().mapToDouble(Extent::front).min().orElse(0),
                each.stream().mapToDouble(Extent::back).max().orElse(0),
                each.stream().mapToDouble(Extent::bottom).min().orElse(0),
                each.stream().mapToDouble(Extent::top).max().orElse(0));
    }

    private double opens(String path, Extent extent) {
        return assembly.fittings().stream()
                .filter(fitting -> fitting.path().startsWith(path + " / "))
                .filter(Drawers::opensFully)
                .flatMap(fitting -> Optional.ofNullable(fitting.sizes().get("length")).stream())
                .mapToDouble(length -> Parts.mm(length) * Figures.of("full extension opens by"))
                .findFirst()
                .orElse((extent.back() - extent.front()) * Figures.of("drawer opens by"));
    }

    private static boolean opensFully(Fitting fitting) {
        String what = fitting.what().toLowerCase(Locale.ROOT);
        return what.contains("full extension");
    }

    /** Storage volume: the plan of the floor up to what is over the drawer, less what the rule takes off. */
    private double volume(List<Part> parts) {
        Optional<Box> floor = parts.stream()
                .filter(part -> part.lie().thickness() == Axis.UP)
                .map(Part::box)
                .findFirst();
        Extent all = extent(parts);
        double top =
                findOpening(parts).map(opening -> Parts.mm(opening.box().top())).orElse(all.top());
        double low = floor.map(box -> Parts.mm(box.top())).orElse(all.bottom());
        double plan = floor.map(box -> Parts.mm(box.extent(Axis.ACROSS)) * Parts.mm(box.extent(Axis.DEEP)))
                .orElse((all.right() - all.left()) * (all.back() - all.front()));
        return Math.max(0, top - low - Figures.of("drawer height less")) * plan / MM3_PER_DM3;
    }

    private Optional<Opening> findOpening(List<Part> parts) {
        return assembly.openings().stream()
                .filter(opening ->
                        parts.stream().anyMatch(part -> opening.fills().contains(part.path())))
                .findFirst();
    }

    /** Storage volume behind doors, dm3. */
    double behindDoors() {
        return Figures.of("door volume share")
                * assembly.openings().stream()
                        .filter(opening -> !opening.box().isEmpty() && hasDoor(opening))
                        .map(Opening::box)
                        .mapToDouble(box -> Parts.mm(box.extent(Axis.ACROSS))
                                * Parts.mm(box.extent(Axis.DEEP))
                                * Parts.mm(box.extent(Axis.UP)))
                        .sum()
                / MM3_PER_DM3;
    }

    private static boolean hasDoor(Opening opening) {
        return opening.fills().stream()
                .map(path -> path.toLowerCase(Locale.ROOT))
                .anyMatch(path -> path.contains("door") || path.contains("flap") || path.contains("leaf"));
    }
}
