package scantling.pricing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import scantling.construct.Finding;

/** What a maker must hear about an estimate while it is made. */
final class Told {
    private final List<Finding> findings = new ArrayList<>();
    private final Set<String> examples = new TreeSet<>();
    private boolean complete = true;

    void unpriced(String what, String quantity) {
        complete = false;
        findings.add(new Finding(
                Finding.Severity.CAUTION,
                "price / " + what,
                "No price is known for %s (%s); it is left out.".formatted(what, quantity),
                List.of(),
                "the shop's rates",
                "Put \"%s\" under prices in your rates, or a price beside the material.".formatted(what)));
    }

    void noHours() {
        complete = false;
        findings.add(new Finding(
                Finding.Severity.CAUTION,
                "price / hours",
                "Nobody has said how many hours it takes; the price holds no labour.",
                List.of(),
                "the shop's rates",
                "Put your own guess under work in your rates: work: {milling: 5 to 8 h}."));
    }

    void disagree(String sentence) {
        findings.add(new Finding(
                Finding.Severity.CAUTION,
                "price / hours",
                sentence,
                List.of(),
                Figures.sourceOf("hours agree"),
                "Find out which operation the two see differently before you promise."));
    }

    void example(String what) {
        examples.add(what);
    }

    boolean isComplete() {
        return complete;
    }

    List<Finding> findings() {
        List<Finding> all = new ArrayList<>(findings);
        if (!examples.isEmpty()) {
            all.add(new Finding(
                    Finding.Severity.NOTE,
                    "price / example",
                    "Invented example prices stand in for: %s.".formatted(String.join(", ", examples)),
                    List.of(),
                    "the example shop",
                    "Put what you pay under prices in your rates."));
        }
        return all;
    }
}
