package scantling.web;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Ledger;
import scantling.measure.LengthFormat;
import scantling.measure.Making;
import scantling.plan.Plan;

/** What depends on a number, and what moves when it does. */
public final class Follow {
    /** So many moves are told where there is little room. */
    static final int MOST = 12;

    private Follow() {}

    /** A size that moves. @param part whose @param size which @param before as it is @param after as it would be */
    public record Move(String part, String size, String before, String after) {}

    /**
     * What a change does.
     *
     * @param moves sizes of parts that follow
     * @param more how many more move
     * @param said findings that the change brings
     * @param cleared findings that it clears
     */
    public record Change(List<Move> moves, int more, List<Finding> said, List<Finding> cleared) {
        /** Whether nothing at all happens. */
        public boolean isNothing() {
            return moves.isEmpty() && said.isEmpty() && cleared.isEmpty();
        }
    }

    /** Sizes of parts that are worked out from a number, at most twelve. */
    static List<Move> of(Plan plan, String name, LengthFormat format) {
        Map<Dim, Boolean> known = new IdentityHashMap<>();
        List<Move> all = new ArrayList<>();
        for (Part part : plan.assembly().parts()) {
            for (Size size : sizes(part)) {
                if (all.size() < MOST && !size.is(name) && uses(size.dim(), name, known)) {
                    String figure = format.format(size.dim().value());
                    all.add(new Move(part.path(), size.word(), figure, figure));
                }
            }
        }
        return List.copyOf(all);
    }

    private record Size(String word, Dim dim) {
        boolean is(String name) {
            return dim.findPath().filter(name::equals).isPresent();
        }
    }

    private static List<Size> sizes(Part part) {
        return List.of(
                new Size("length", part.length()),
                new Size("width", part.width()),
                new Size("thickness", part.thickness()));
    }

    private static boolean uses(Dim dim, String name, Map<Dim, Boolean> known) {
        Boolean found = known.get(dim);
        if (found != null) {
            return found;
        }
        boolean uses = dim.findPath().filter(name::equals).isPresent()
                || inputs(dim.making()).stream().anyMatch(input -> uses(input, name, known));
        known.put(dim, uses);
        return uses;
    }

    private static List<Dim> inputs(Making making) {
        return making.inputs().stream().map(Making.Input::dim).toList();
    }

    /** What differs between two plans of one piece, apart from the number that was changed. @param most moves that are told */
    static Change change(Plan before, Plan after, String name, int most, LengthFormat format) {
        List<Move> moves = new ArrayList<>();
        after.assembly().names().forEach((path, dim) -> {
            Optional<Dim> old = Optional.ofNullable(before.assembly().names().get(path));
            if (!path.equals(name)
                    && isPartSize(after, path)
                    && old.isPresent()
                    && !old.get().value().equals(dim.value())) {
                moves.add(new Move(
                        owner(path),
                        path.substring(path.lastIndexOf(Ledger.SEPARATOR) + Ledger.SEPARATOR.length()),
                        format.format(old.get().value()),
                        format.format(dim.value())));
            }
        });
        int shown = Math.min(most, moves.size());
        return new Change(
                List.copyOf(moves.subList(0, shown)),
                moves.size() - shown,
                without(after.findings(), before.findings()),
                without(before.findings(), after.findings()));
    }

    private static boolean isPartSize(Plan plan, String path) {
        return plan.assembly().parts().stream()
                .anyMatch(part -> path.equals(Ledger.path(part.path(), "length"))
                        || path.equals(Ledger.path(part.path(), "width"))
                        || path.equals(Ledger.path(part.path(), "thickness")));
    }

    private static String owner(String path) {
        int end = path.lastIndexOf(Ledger.SEPARATOR);
        return end < 0 ? path : path.substring(0, end);
    }

    private static List<Finding> without(List<Finding> all, List<Finding> others) {
        return all.stream()
                .filter(finding -> others.stream().noneMatch(other -> isAlike(finding, other)))
                .toList();
    }

    /** The same thing said of the same part; its figures may differ. */
    static boolean isAlike(Finding one, Finding other) {
        return one.severity() == other.severity()
                && one.subject().equals(other.subject())
                && one.sentence().replaceAll("\\d", "").equals(other.sentence().replaceAll("\\d", ""));
    }
}
