package scantling.finishing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import scantling.construct.Finding;
import scantling.piece.FinishText;

/** Understands steps: a coat, how often, and how: {@code waterborne lacquer x 3, brush, thinned 10 %, after 72 h}. */
final class StepReader {
    private static final Pattern TIMES = Pattern.compile("(.+?)\\s*(?:\\bx|\u00d7)\\s*(\\d{1,3})");
    private static final Pattern THINNED = Pattern.compile("thinned\\s+(\\d{1,3}(?:\\.\\d+)?)\\s*(?:%|percent)");
    private static final Pattern AFTER = Pattern.compile("after\\s+(\\d{1,4}(?:\\.\\d+)?)\\s*(h|hours?|d|days?)");
    private static final double HOURS_A_DAY = 24;
    private static final double PERCENT = 0.01;

    private final CoatTable coats;
    private final String subject;
    private final Optional<Method> by;
    private final List<Finding> findings;

    /** @param by how the maker says all of it is put on */
    StepReader(CoatTable coats, String subject, Optional<Method> by, List<Finding> findings) {
        this.coats = coats;
        this.subject = subject;
        this.by = by;
        this.findings = findings;
    }

    List<Applied> read(List<FinishText.Step> steps) {
        List<Applied> all = new ArrayList<>();
        steps.forEach(step -> read(step).ifPresent(all::add));
        return all;
    }

    private Optional<Applied> read(FinishText.Step step) {
        String[] words = step.words().split(",", -1);
        Matcher times = TIMES.matcher(words[0].strip());
        boolean repeated = times.matches();
        String name = repeated ? times.group(1) : words[0].strip();
        int count = repeated ? Integer.parseInt(times.group(2)) : 1;
        Optional<Coat> coat = coat(step.key(), name);
        if (coat.isEmpty()) {
            List<String> nearest = coats.nearest(name);
            String maybe = nearest.isEmpty()
                    ? "Name a class of product, or add it under \"coats\"."
                    : "Maybe %s? Or add it under \"coats\".".formatted(String.join(" or ", nearest));
            findings.add(Rule.get("unknown coat")
                    .finding(subject, List.of(place(step), step.key() + ": " + step.words(), name), List.of(maybe)));
            return Optional.empty();
        }
        if (count < 1 || count > Figures.of("most coats")) {
            misunderstood(step, "x " + count);
            count = 1;
        }
        return Optional.of(how(step, words, coat.get(), count));
    }

    private Applied how(FinishText.Step step, String[] words, Coat coat, int count) {
        Method method = by.orElseGet(() -> Method.find(coat.method()).orElseThrow());
        double thinned = coat.find("thinned").map(Amount::likely).orElse(0.0) * PERCENT;
        double after = 0;
        for (int i = 1; i < words.length; i++) {
            String word = words[i].strip();
            Matcher thinner = THINNED.matcher(word);
            Matcher wait = AFTER.matcher(word);
            if (thinner.matches()) {
                thinned = Double.parseDouble(thinner.group(1)) * PERCENT;
            } else if (wait.matches()) {
                after = Double.parseDouble(wait.group(1)) * (wait.group(2).startsWith("d") ? HOURS_A_DAY : 1);
            } else if (Method.find(word).isPresent()) {
                method = Method.find(word).get();
            } else {
                misunderstood(step, word);
            }
        }
        return new Applied(step.key(), coat, count, method, thinned, after, step.span());
    }

    /** A stain is often called by half its name: stain: oil. */
    private Optional<Coat> coat(String key, String name) {
        Optional<Coat> plain = coats.find(name);
        boolean halfNamed = plain.filter(coat -> coat.role().equals(key)).isEmpty();
        return (halfNamed
                        ? coats.find(name + " " + key)
                                .filter(coat -> coat.role().equals(key))
                        : plain)
                .or(() -> plain);
    }

    private void misunderstood(FinishText.Step step, String word) {
        findings.add(Rule.get("unknown words")
                .finding(subject, List.of(place(step), step.key() + ": " + step.words(), word), List.of()));
    }

    private static String place(FinishText.Step step) {
        return "Line " + step.span().line();
    }
}
