package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Part;

/** What the year's damp and dry do to solid wood: panels, faces that open, cross-grain glue-ups, tops. */
final class MovementCheck {
    private final Assembly assembly;
    private final Movements movements;

    MovementCheck(Assembly assembly, Movements movements) {
        this.assembly = assembly;
        this.movements = movements;
    }

    List<Finding> check() {
        return Stream.of(
                        new CrossGrain(assembly, movements).check(),
                        new HeldPanels(assembly, movements).check(),
                        new OpeningFaces(assembly, movements).check(),
                        new FreeTops(assembly, movements).check(),
                        unknown())
                .flatMap(List::stream)
                .toList();
    }

    static String source(Moving moving, Movements movements) {
        return "Wood Handbook Eq. 13-2, Eq. 4-5: %s made at %s %%, home from %s to %s %%; %s"
                .formatted(
                        moving.part().material().of(),
                        Say.one(movements.shop().of(moving.part())),
                        Say.one(movements.home().driest()),
                        Say.one(movements.home().dampest()),
                        switch (movements.shop().sawn(moving.part())) {
                            case QUARTER -> "quarter sawn, radial";
                            case FLAT -> "flat sawn, tangential";
                            case MIXED -> "tangential, the greater";
                        });
    }

    private List<Finding> unknown() {
        Set<String> told = new LinkedHashSet<>();
        List<Finding> findings = new ArrayList<>();
        for (Part part : assembly.parts()) {
            boolean silent = Parts.isSolid(part) && movements.find(part).isEmpty();
            if (silent && told.add(part.material().of())) {
                findings.add(unknown(part));
            }
        }
        return findings;
    }

    private Finding unknown(Part part) {
        String wood = part.material().of();
        return new Finding(
                        Finding.Severity.NOTE,
                        part.path(),
                        "How much %s moves is in no table; nothing was judged of it.".formatted(wood),
                        List.of(part.width()),
                        "the species table",
                        "Give its shrinkage. " + movements.woods().offer(part, Woods.Known.MOVEMENT))
                .by("movement");
    }
}
