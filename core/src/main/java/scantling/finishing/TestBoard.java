package scantling.finishing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What to try on a board of the same wood before the piece: each finish in full, and what could go otherwise. */
final class TestBoard {
    private TestBoard() {}

    static List<FinishPlan.Trial> of(List<FinishGroup> groups, Habits habits) {
        Set<String> seen = new LinkedHashSet<>();
        List<FinishPlan.Trial> trials = new ArrayList<>();
        for (FinishGroup group : groups) {
            if (!group.coatings().isEmpty() && seen.add(schedule(group))) {
                whole(trials, group);
            }
        }
        boolean sprayed = groups.stream()
                .flatMap(group -> group.coatings().stream())
                .anyMatch(coating -> coating.method().sprays());
        if (sprayed) {
            add(trials, "Gun on paper, then on the board: pattern, then one pass.", "an even oval; wet, without a run");
        }
        if (!trials.isEmpty() && habits.use().isPresent()) {
            add(trials, "Leave one strip for the full cure.", "no smell; water and a damp cloth leave no mark");
        }
        return trials;
    }

    private static String schedule(FinishGroup group) {
        StringBuilder text = new StringBuilder();
        group.coatings()
                .forEach(coating ->
                        text.append(coating.title()).append(coating.method().name()));
        return text.toString();
    }

    private static void whole(List<FinishPlan.Trial> trials, FinishGroup group) {
        Coating first = group.coatings().get(0);
        String grit = first.sand().map(Say::range).orElse("the last grit");
        add(trials, "Bare, sanded to %s.".formatted(grit), "scratches under a low light");
        StringBuilder so = new StringBuilder("Sanded to " + grit);
        for (Coating coating : group.coatings()) {
            if (coating.number() == coating.of()) {
                so.append(", ").append(coating.coat().name()).append(coating.of() == 1 ? "" : " x " + coating.of());
                so.append(" by ").append(coating.method().name());
                add(trials, so + ".", look(coating));
            }
        }
        if (first.coat().role().equals("stain")) {
            add(
                    trials,
                    "Shellac washcoat, then %s.".formatted(first.coat().name()),
                    "whether it blotches less, and how much paler it is");
        }
        if (first.coat().film() || group.coatings().size() > 1) {
            add(trials, "All coats over end grain, one and two grits finer.", "end grain no darker than the face");
        }
    }

    private static String look(Coating coating) {
        if (coating.coat().role().equals("stain")) {
            return "colour wet and dry, blotches, end grain";
        }
        return coating.coat().film()
                ? "colour, wrinkles, craters; next day, whether tape over a cross cut lifts it"
                : "colour, sheen, wet spots after an hour";
    }

    private static void add(List<FinishPlan.Trial> trials, String what, String look) {
        trials.add(new FinishPlan.Trial(trials.size() + 1, what, look));
    }
}
