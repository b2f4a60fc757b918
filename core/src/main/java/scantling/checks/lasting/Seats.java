package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import scantling.construct.Assembly;
import scantling.construct.Change;
import scantling.construct.Changes;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.space.Axis;

/** Boards that a person sits or steps on, one load in the middle: whether they bend too far or come near to breaking. */
final class Seats {
    private static final List<String> WORDS = List.of("seat", "bench", "stool", "step");

    private final Assembly assembly;
    private final Woods woods;
    private final Stiffness stiffness;
    private final Say say;

    Seats(Assembly assembly, Woods woods) {
        this.assembly = assembly;
        this.woods = woods;
        this.stiffness = new Stiffness(woods);
        this.say = Say.of(assembly);
    }

    List<Finding> check() {
        List<Finding> findings = new ArrayList<>();
        Set<String> told = new HashSet<>();
        for (Part part : assembly.parts()) {
            if (isSat(part) && !part.box().isEmpty() && told.add(Parts.likeness(part))) {
                judge(part).ifPresent(findings::add);
            }
        }
        return findings;
    }

    /** A flat part called so, or a low top of a piece called so. */
    private boolean isSat(Part part) {
        boolean flat = part.lie().thickness() == Axis.UP;
        boolean called = WORDS.stream().anyMatch(word -> Scope.says(Parts.role(part), word));
        String title = assembly.piece().title().toLowerCase(Locale.ROOT);
        boolean top = Parts.isTop(part) && WORDS.stream().anyMatch(word -> Scope.says(title, word));
        return flat && (called || top);
    }

    private Optional<Finding> judge(Part part) {
        Supports supports = new Supports(assembly, part);
        Axis along = part.lie().length();
        Optional<Dim> span = supports.isBedded() ? Optional.empty() : supports.findSpan(along);
        OptionalDouble elasticity = stiffness.find(part, along);
        return span.isEmpty() || elasticity.isEmpty()
                ? Optional.empty()
                : judge(part, span.get(), elasticity.getAsDouble());
    }

    private Optional<Finding> judge(Part part, Dim span, double elasticity) {
        double wide = Parts.mm(part.box().extent(part.lie().length().third(Axis.UP)));
        double load = Figures.of("sitter mass") * Figures.of("gravity");
        SatBoard board = new SatBoard(elasticity, wide, Parts.mm(part.thickness()), Parts.mm(span), load);
        OptionalDouble breaks = woods.findSpecies(part).stream()
                .flatMapToDouble(species -> species.mechanics().bending().stream())
                .findFirst();
        boolean weak = breaks.isPresent() && board.stress() * Figures.of("sitter safety") > breaks.getAsDouble();
        boolean limp = board.sag() > Parts.mm(span) / Figures.of("seat span over");
        return weak || limp ? Optional.of(finding(part, span, board, breaks)) : Optional.empty();
    }

    private Finding finding(Part part, Dim span, SatBoard board, OptionalDouble breaks) {
        OptionalDouble least = Solve.least(
                thick -> {
                    SatBoard other = board.thick(thick);
                    return other.sag() <= board.span() / Figures.of("seat span over")
                            && !(breaks.isPresent()
                                    && other.stress() * Figures.of("sitter safety") > breaks.getAsDouble());
                },
                1,
                Figures.of("thickest shelf"));
        Dim sag = Dim.worked(Length.ofMillimetres(board.sag()), "one load in the middle, Wood Handbook Eq. 9-1");
        return new Finding(
                        Finding.Severity.CAUTION,
                        part.path(),
                        "A person of %s on the middle of %s bends it %s over %s and stresses it to %.0f MPa%s."
                                .formatted(
                                        Say.mass(Figures.of("sitter mass")),
                                        part.path(),
                                        say.near(board.sag()),
                                        say.near(span.value()),
                                        board.stress(),
                                        breaks.isPresent()
                                                ? "; small clear pieces of it broke at %.0f"
                                                        .formatted(breaks.getAsDouble())
                                                : ""),
                        List.of(sag, span, part.thickness()),
                        "load: %s; limit: %s; Wood Handbook Eq. 9-1"
                                .formatted(Figures.sourceOf("sitter mass"), Figures.sourceOf("seat span over")),
                        least.isPresent()
                                ? "Make it %s thick, or set a rail under its middle."
                                        .formatted(say.atLeast(least.getAsDouble()))
                                : "Set a rail under its middle.")
                .by("seat")
                .offering(thicker(part, least));
    }

    private List<Change> thicker(Part part, OptionalDouble least) {
        return least.isPresent()
                ? Changes.bring(part.thickness(), say.stock(least.getAsDouble()), assembly.piece()).stream()
                        .toList()
                : List.of();
    }
}
