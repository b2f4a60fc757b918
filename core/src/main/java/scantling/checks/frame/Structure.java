package scantling.checks.frame;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import scantling.checks.lasting.Parts;
import scantling.construct.Assembly;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.measure.Ledger;
import scantling.space.Axis;

/** Which parts of a piece bear, which brace, and where they are joined. Doors, drawers and lippings do neither. */
final class Structure {
    /** Parts longer than so many widths run along their grain whatever is joined to them. */
    private static final double STICK = 2.5;

    private final Map<String, Part> bars = new LinkedHashMap<>();
    private final Map<String, Part> sheets = new LinkedHashMap<>();
    private final List<Joined> joined = new ArrayList<>();
    private final List<Joined> links;
    private final Map<String, List<Joined>> byPart = new LinkedHashMap<>();

    /** Two parts and the face on which they meet. */
    record Joined(Joint joint, Part entering, Part receiving, Patch patch) {
        Part other(Part part) {
            return part.path().equals(entering.path()) ? receiving : entering;
        }
    }

    Structure(Assembly assembly) {
        Map<String, Part> bearing = new LinkedHashMap<>();
        assembly.parts().stream()
                .filter(part -> !part.box().isEmpty() && bears(part))
                .forEach(part -> bearing.put(part.path(), part));
        for (Joint joint : assembly.joints()) {
            Optional<Part> one = Optional.ofNullable(bearing.get(joint.entering()));
            Optional<Part> other = Optional.ofNullable(bearing.get(joint.receiving()));
            if (joint.kind() != Joint.Kind.CARRIED && one.isPresent() && other.isPresent()) {
                Patch.of(joint, one.get(), other.get())
                        .ifPresent(patch -> add(new Joined(joint, one.get(), other.get(), patch)));
            }
        }
        bearing.values().forEach(part -> (isSheet(part) ? sheets : bars).put(part.path(), part));
        this.links = joined.stream()
                .filter(each -> bars.containsKey(each.entering().path())
                        && bars.containsKey(each.receiving().path()))
                .toList();
    }

    private void add(Joined each) {
        joined.add(each);
        byPart.computeIfAbsent(each.entering().path(), key -> new ArrayList<>()).add(each);
        byPart.computeIfAbsent(each.receiving().path(), key -> new ArrayList<>())
                .add(each);
    }

    private static boolean bears(Part part) {
        boolean moves = Ledger.names(part.path()).stream()
                .map(name -> Ledger.withoutNumber(name.toLowerCase(Locale.ROOT)))
                .anyMatch(name -> name.endsWith("door")
                        || name.endsWith("drawer")
                        || name.equals("leaf")
                        || name.endsWith("flap")
                        || name.endsWith("lid"));
        return !moves && !Parts.isFace(part) && !Parts.isLipping(part);
    }

    private boolean isSheet(Part part) {
        return Parts.mm(part.thickness()) <= Numbers.of("thickest brace")
                && joints(part).stream()
                                .map(each -> each.other(part).path())
                                .distinct()
                                .count()
                        >= 2;
    }

    List<Joined> joints(Part part) {
        return byPart.getOrDefault(part.path(), List.of());
    }

    /** Joints between two bars. */
    List<Joined> links() {
        return links;
    }

    Map<String, Part> bars() {
        return bars;
    }

    /** Sheets that brace: solid wood lies loose in its groove and braces nothing. */
    List<Part> braces() {
        return sheets.values().stream().filter(part -> !Parts.isSolid(part)).toList();
    }

    boolean isBar(Part part) {
        return bars.containsKey(part.path());
    }

    /** The direction a bar is taken to run: along its grain, but for boards that are joined further apart across it. */
    Axis runs(Part part) {
        Axis grain = part.lie().length();
        Axis width = part.lie().width();
        boolean stick =
                Parts.mm(part.box().extent(grain)) > STICK * Parts.mm(part.box().extent(width));
        return !stick && spread(part, width) > 1.2 * spread(part, grain) ? width : grain;
    }

    private double spread(Part part, Axis axis) {
        double least = Double.MAX_VALUE;
        double most = -Double.MAX_VALUE;
        for (Joined each : joints(part)) {
            least = Math.min(least, each.patch().place().of(axis));
            most = Math.max(most, each.patch().place().of(axis));
        }
        return Math.max(0, most - least);
    }
}
