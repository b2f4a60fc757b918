package scantling.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
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
        return check(assembly, misfit -> Optional.empty());
    }

    /** The same. @param remedy what to do about a misfit, by somebody who knows the shop; empty for what is usual */
    public static List<Finding> check(Assembly assembly, Function<Misfit, Optional<String>> remedy) {
        List<Finding> findings = new ArrayList<>(new FitCheck(assembly).misfits(remedy));
        findings.addAll(measureFirst(assembly));
        findings.addAll(new LeftLong(assembly).notes());
        return List.copyOf(findings);
    }

    /** What is cut and no longer fits: parts whose size has to fit something, and is off by more than the fit allows. */
    public static List<Misfit> misfits(Assembly assembly) {
        return differences(assembly).stream()
                .filter(misfit -> isWorkedOut(misfit.planned()))
                .toList();
    }

    /** Every size that is cut and is not what the plan now says, also those that are only given and fit nothing by themselves. */
    public static List<Misfit> differences(Assembly assembly) {
        List<Misfit> differences = new ArrayList<>();
        for (Part part : assembly.parts()) {
            for (Measure measure : Measure.values()) {
                off(part, measure).ifPresent(differences::add);
            }
        }
        return List.copyOf(differences);
    }

    /** The openings to measure before cutting what fills them, because the shop's tolerances can use up their gap. */
    public static List<Finding> measureFirst(Assembly assembly) {
        return measureBefore(assembly).stream().map(MeasureBefore::finding).toList();
    }

    /** The same numbers, with the parts that wait for them. */
    public static List<MeasureBefore> measureBefore(Assembly assembly) {
        return new MeasureFirst(assembly).due();
    }

    private List<Finding> misfits(Function<Misfit, Optional<String>> remedy) {
        List<Finding> findings = new ArrayList<>();
        for (Part part : assembly.parts()) {
            for (Measure measure : Measure.values()) {
                off(part, measure)
                        .map(misfit -> isWorkedOut(misfit.planned())
                                ? misfit(misfit, measure, remedy)
                                : differs(part, measure, misfit.over()))
                        .ifPresent(findings::add);
            }
        }
        return findings;
    }

    /** A measured size that is off by more than the process that cuts it allows. */
    private static Optional<Misfit> off(Part part, Measure measure) {
        Dim size = measure.of(part);
        if (!size.isMeasured()) {
            return Optional.empty();
        }
        Dim planned = size.planned();
        Length allowed = planned.making().ownTolerance().halfRange();
        Misfit misfit = new Misfit(part, measure.word(), size, planned, allowed);
        return misfit.over().abs().compareTo(allowed) <= 0 ? Optional.empty() : Optional.of(misfit);
    }

    private Finding misfit(Misfit misfit, Measure measure, Function<Misfit, Optional<String>> remedy) {
        Part part = misfit.part();
        Length over = misfit.over();
        String sentence = "%s is cut %s too %s: %s of %s where the plan now needs %s; the fit allows %s."
                .formatted(
                        part.path(),
                        words.length(over.abs()),
                        measure.wrong(misfit.isTooBig()),
                        measure.word(),
                        words.length(misfit.cut().value()),
                        words.length(misfit.planned().value()),
                        words.length(misfit.allowed()));
        String usual = misfit.isTooBig()
                ? measure.remedy(part, words.length(over))
                : "Cut a new one, or take up %s where it goes.".formatted(words.length(over.abs()));
        return new Finding(
                misfit.isTooBig() ? Finding.Severity.STOP : Finding.Severity.CAUTION,
                part.path(),
                sentence,
                List.of(misfit.cut(), misfit.planned()),
                source(misfit.cut()),
                remedy.apply(misfit).orElse(usual));
    }

    private Finding differs(Part part, Measure measure, Length over) {
        Dim size = measure.of(part);
        String sentence = "%s has a %s of %s, %s %s than the plan says now."
                .formatted(
                        part.path(),
                        measure.word(),
                        words.length(size.value()),
                        words.length(over.abs()),
                        over.isPositive() ? "more" : "less");
        return new Finding(
                Finding.Severity.NOTE,
                part.path(),
                sentence,
                List.of(size, size.planned()),
                source(size),
                "What is not yet cut follows it as it is. If it is to be as the plan says, note it as spoilt and cut"
                        + " another.");
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
