package scantling.finishing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import scantling.construct.Finding;
import scantling.timber.Table;

/** Holds the steps of one group against the rules. */
final class RuleCheck {
    private static final Table OVER = Table.read("finishing/over.csv");

    private final String subject;
    private final Habits habits;
    private final List<Applied> steps;
    private final List<Face> faces;
    private final List<Finding> findings = new ArrayList<>();

    RuleCheck(String subject, Habits habits, List<Applied> steps, List<Face> faces) {
        this.subject = subject;
        this.habits = habits;
        this.steps = steps;
        this.faces = faces;
    }

    List<Finding> findings() {
        for (int i = 1; i < steps.size(); i++) {
            over(steps.get(i - 1), steps.get(i));
        }
        if (!steps.isEmpty()) {
            sanding();
            woods();
            holes();
        }
        steps.forEach(this::airAndWindow);
        tooThick();
        cure();
        return findings;
    }

    /** What one coat does on another, by {@code over.csv}. */
    private void over(Applied under, Applied above) {
        for (Table.Row row : OVER.rows()) {
            double enough = row.findNumber("unless").orElse(Double.POSITIVE_INFINITY);
            if (matches(under.coat(), row.text("under"))
                    && matches(above.coat(), row.text("over"))
                    && above.after() < enough) {
                findings.add(new Finding(
                        Finding.Severity.valueOf(row.text("severity")),
                        subject,
                        "%s over %s: %s"
                                .formatted(above.coat().name(), under.coat().name(), row.text("says")),
                        List.of(),
                        row.source(),
                        row.text("remedy")));
            }
        }
    }

    private static boolean matches(Coat coat, String selector) {
        return List.of(selector.split("\\|", -1)).stream()
                .anyMatch(one -> List.of(one.split("&", -1)).stream().allMatch(word -> is(coat, word.strip())));
    }

    private static boolean is(Coat coat, String word) {
        return switch (word) {
            case "film" -> coat.film();
            case "penetrating" -> !coat.film();
            case "stain" -> coat.role().equals("stain");
            default -> coat.binder().equals(word);
        };
    }

    /** Coats of which the next step cannot be planned, and systems that end too soon. */
    private void holes() {
        for (int i = 0; i + 1 < steps.size(); i++) {
            Coat coat = steps.get(i).coat();
            if (coat.find("recoat after").isEmpty() && steps.get(i + 1).after() == 0) {
                rule("no wait known", coat.name(), steps.get(i + 1).coat().name());
            }
        }
        Coat last = steps.get(steps.size() - 1).coat();
        if (last.role().equals("stain")) {
            rule("stain last", last.name());
        }
    }

    private void sanding() {
        Coat top = steps.get(steps.size() - 1).coat();
        String rule = top.film() ? "too fine under film" : "too fine under oil";
        double finest = Figures.of(top.film() ? "finest under film" : "finest under oil");
        habits.sand().filter(grit -> grit > finest && !top.role().equals("wax")).ifPresent(grit -> {
            List<String> words = List.of(Say.number(grit), top.name(), Say.number(finest));
            findings.add(Rule.get(rule).finding(subject, words, List.of()));
        });
    }

    private void woods() {
        Coat first = steps.get(0).coat();
        boolean pigment = first.role().equals("stain")
                && !first.binder().equals("dye")
                && !first.name().contains("gel");
        boolean filled = steps.stream().anyMatch(step -> step.coat().role().equals("filler"));
        boolean closed = steps.stream()
                        .filter(step -> step.coat().film() && step.coat().role().equals("top"))
                        .mapToInt(Applied::times)
                        .sum()
                > 2;
        TreeSet<String> told = new TreeSet<>();
        for (Face face : faces) {
            Optional<Wood> wood = Wood.of(face.part()).filter(one -> told.add(one.name()));
            wood.filter(one -> one.blotches() && pigment).ifPresent(one -> rule("blotch", one.name(), first.name()));
            wood.filter(one -> one.oily() && first.film() && !first.binder().equals("shellac"))
                    .ifPresent(one -> rule("oily wood", one.name(), first.name()));
            wood.filter(one -> one.openPored() && closed && !filled).ifPresent(one -> rule("filler", one.name()));
        }
    }

    private void rule(String name, String... words) {
        findings.add(Rule.get(name).finding(subject, List.of(words), List.of()));
    }

    private void airAndWindow(Applied step) {
        Coat coat = step.coat();
        Air air = habits.air();
        coat.find("coldest")
                .filter(least -> air.celsius() < least.low())
                .ifPresent(least -> rule("too cold", Say.number(air.celsius()), coat.name(), Say.number(least.low())));
        coat.find("dampest")
                .filter(most -> air.humidity() > most.high())
                .ifPresent(most -> rule("too damp", Say.number(air.humidity()), coat.name(), Say.number(most.high())));
        Optional<Amount> before = coat.find("recoat before");
        double ready = coat.find("recoat after").map(Amount::low).orElse(0.0)
                * air.slower(coat).low();
        if (before.isPresent() && ready >= before.get().high()) {
            findings.add(Rule.get("window")
                    .finding(
                            subject,
                            List.of(
                                    coat.name(),
                                    Say.number(ready),
                                    Say.number(before.get().high())),
                            List.of(coat.find("sand between").map(Say::range).orElse("320"))));
        }
    }

    private void tooThick() {
        for (Applied step : steps) {
            Optional<Amount> most = step.coat().find("most dry film");
            Optional<Amount> each = step.coat().find("dry film");
            if (most.isPresent() && each.isPresent()) {
                double all = each.get().likely() * step.times();
                if (all > most.get().high()) {
                    rule(
                            "too thick",
                            step.coat().name(),
                            Say.rough(all),
                            Say.number(most.get().high()));
                }
            }
        }
    }

    private void cure() {
        if (habits.use().isPresent() && !steps.isEmpty()) {
            Coat last = steps.get(steps.size() - 1).coat();
            String use = habits.use().get().equals("food") ? "food" : "a small child";
            last.find("cure").ifPresent(days -> rule("cure", last.name(), Say.range(days), use));
        }
    }
}
