package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Part;

/** Whether wood that was measured is as dry as it will be in the home; if not, how long it should rest and where to. */
final class Dryness {
    private final Assembly assembly;
    private final Climate home;
    private final Climate.Range range;
    private final Wetness shop;

    Dryness(Assembly assembly, Climate home, Climate.Range range, Wetness shop) {
        this.assembly = assembly;
        this.home = home;
        this.range = range;
        this.shop = shop;
    }

    List<Finding> check() {
        List<Finding> findings = new ArrayList<>();
        for (String material : MoistureCheck.materials(assembly)) {
            Part first = assembly.parts().stream()
                    .filter(part ->
                            Parts.isSolid(part) && part.material().name().equals(material))
                    .findFirst()
                    .orElseThrow();
            shop.find(first).flatMap(moisture -> judge(material, moisture)).ifPresent(findings::add);
        }
        return findings;
    }

    private Optional<Finding> judge(String material, double moisture) {
        double least = Math.min(range.driest(), Figures.of("furniture moisture from"));
        double most = Math.max(range.dampest(), Figures.of("furniture moisture to"));
        if (moisture >= least && moisture <= most) {
            return Optional.empty();
        }
        boolean wet = moisture > most;
        String sentence =
                "%s was measured at %s %%; the home keeps wood between %s and %s %%, and kiln-dried furniture wood is sold at %s to %s %%."
                        .formatted(
                                material,
                                Say.one(moisture),
                                Say.one(range.driest()),
                                Say.one(range.dampest()),
                                Say.one(Figures.of("furniture moisture from")),
                                Say.one(Figures.of("furniture moisture to")));
        String rest =
                "Rest it in sticks, in air like the home's, till two readings a week apart agree near %s %%, then mill it to size; correct the meter for the wood and its warmth."
                        .formatted(Say.one((range.driest() + range.dampest()) / 2));
        return Optional.of(new Finding(
                        wet ? Finding.Severity.CAUTION : Finding.Severity.NOTE,
                        material,
                        sentence + (wet ? " It will shrink in the piece." : " It will swell in the piece."),
                        List.of(),
                        "%s; Wood Handbook Eq. 4-5 for %s; resting: common practice"
                                .formatted(Figures.sourceOf("furniture moisture from"), home.name()),
                        rest)
                .by("moisture"));
    }
}
