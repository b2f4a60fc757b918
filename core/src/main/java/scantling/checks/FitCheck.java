package scantling.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Making;

/**
 * What the bench has measured against the plan. A part that is cut keeps its size while its planned size goes on
 * following everything else; where the two differ by more than the process that cuts it allows, that is a finding. A
 * part whose planned size is worked out must fit something: too big is a stop, too small a caution. A size that is only
 * given or a stock thickness fits nothing by itself; what is not yet cut follows it, so it is a note.
 */
public final class FitCheck {
    private final Assembly assembly;
    private final Words words;

    private FitCheck(Assembly assembly) {
        this.assembly = assembly;
        this.words = Words.of(assembly);
    }

    /** What is cut and no longer fits, by how much and what to do; then what to measure first. */
    public static List<Finding> check(Assembly assembly) {
        List<Finding> findings = new ArrayList<>(new FitCheck(assembly).misfits());
        findings.addAll(measureFirst(assembly));
        findings.addAll(new LeftLong(assembly).notes());
        return List.copyOf(findings);
    }

    /** The openings to measure before cutting what fills them, because the shop's tolerances can use up their gap. */
    public static List<Finding> measureFirst(Assembly assembly) {
        return new MeasureFirst(assembly).notes();
    }

    private List<Finding> misfits() {
        List<Finding> findings = new ArrayList<>();
        for (Part part : assembly.parts()) {
            for (Measure measure : Measure.values()) {
                findMisfit(part, measure).ifPresent(findings::add);
            }
        }
        return findings;
    }

    private Optional<Finding> findMisfit(Part part, Measure measure) {
        Dim size = measure.of(part);
        if (!size.isMeasured()) {
            return Optional.empty();
        }
        Dim planned = size.planned();
        Length over = size.value().minus(planned.value());
        Length allowed = planned.making().ownTolerance().halfRange();
        if (over.abs().compareTo(allowed) <= 0) {
            return Optional.empty();
        }
        return Optional.of(isWorkedOut(planned) ? misfit(part, measure, over, allowed) : differs(part, measure, over));
    }

    private Finding misfit(Part part, Measure measure, Length over, Length allowed) {
        boolean tooBig = over.isPositive();
        Dim size = measure.of(part);
        String sentence = "%s is cut %s too %s: %s of %s where the plan now needs %s; the fit allows %s."
                .formatted(
                        part.path(),
                        words.length(over.abs()),
                        measure.wrong(tooBig),
                        measure.word(),
                        words.length(size.value()),
                        words.length(size.planned().value()),
                        words.length(allowed));
        return new Finding(
                tooBig ? Finding.Severity.STOP : Finding.Severity.CAUTION,
                part.path(),
                sentence,
                List.of(size, size.planned()),
                source(size),
                tooBig
                        ? measure.remedy(part, words.length(over))
                        : "Cut a new one, or take up %s where it goes.".formatted(words.length(over.abs())));
    }

    private Finding differs(Part part, Measure measure, Length over) {
        Dim size = measure.of(part);
        String sentence = "%s came out %s %s than planned: %s of %s."
                .formatted(
                        part.path(),
                        words.length(over.abs()),
                        over.isPositive() ? "more" : "less",
                        measure.word(),
                        words.length(size.value()));
        return new Finding(
                Finding.Severity.NOTE,
                part.path(),
                sentence,
                List.of(size, size.planned()),
                source(size),
                "Nothing to do: what is not yet cut follows it.");
    }

    private static String source(Dim size) {
        String process = size.planned().making().ownTolerance().process();
        return "measured at the bench; allowed by the process: " + process;
    }

    /** Whether a number follows others, rather than being one that was given, looked up or set by itself. */
    private static boolean isWorkedOut(Dim dim) {
        List<Making.Input> inputs = dim.making().inputs();
        if (inputs.size() != 1) {
            return inputs.size() > 1;
        }
        return inputs.get(0).effect() != 1 || isWorkedOut(inputs.get(0).dim());
    }
}
