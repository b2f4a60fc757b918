package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.timber.Movement;

/** Whether the wood is dry enough to be made into parts, and what it does after: the air and the wood judged together. */
final class MoistureCheck {
    private final Assembly assembly;
    private final Woods woods;

    MoistureCheck(Assembly assembly, Woods woods) {
        this.assembly = assembly;
        this.woods = woods;
    }

    List<Finding> check(Climate home, Wetness shop) {
        List<Finding> findings = new ArrayList<>();
        Optional<Climate.Range> range = home.findRange();
        List<String> refusals = new ArrayList<>(home.refusals());
        moistures(shop).forEach((moisture, part) -> {
            // Any shrinkage shows whether the formula takes the moisture content.
            List<String> remarks = Movement.wide(1, moisture, moisture).remarks();
            remarks.stream().limit(1).forEach(refusals::add);
        });
        if (!refusals.isEmpty() || range.isEmpty()) {
            new LinkedHashSet<>(refusals).forEach(reason -> findings.add(refused(home, reason)));
            return findings;
        }
        findings.addAll(new Dryness(assembly, home, range.get(), shop).check());
        findings.addAll(new MovementCheck(assembly, new Movements(woods, shop, range.get())).check());
        return findings;
    }

    /** Each moisture content that solid parts are made at, with the first of them. */
    private Map<Double, Part> moistures(Wetness shop) {
        Map<Double, Part> moistures = new LinkedHashMap<>();
        assembly.parts().stream().filter(Parts::isSolid).forEach(part -> moistures.putIfAbsent(shop.of(part), part));
        return moistures;
    }

    private Finding refused(Climate home, String reason) {
        return new Finding(
                Finding.Severity.CAUTION,
                assembly.piece().title(),
                reason + " Movement was not judged.",
                List.of(),
                home.source(),
                "Put the climate (%s) or the moisture of the wood right.".formatted(home.name()));
    }

    /** Materials of solid parts, in building order. */
    static Set<String> materials(Assembly assembly) {
        Set<String> names = new LinkedHashSet<>();
        assembly.parts().stream()
                .filter(Parts::isSolid)
                .forEach(part -> names.add(part.material().name()));
        return names;
    }
}
