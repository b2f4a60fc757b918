package scantling.construct;

import java.util.List;
import scantling.measure.Dim;
import scantling.measure.Ledger;

/**
 * What a careful master would say on looking at the plan.
 *
 * @param severity how much it matters
 * @param subject path of the part, joint, opening or number it concerns
 * @param sentence what is so
 * @param numbers the numbers behind it
 * @param source who says so
 * @param remedy what to do
 * @param rule what it was judged by, in a word or two: sag, tipping; empty for what nobody can take as it is
 * @param changes the remedy as changes to the text, each of which would do; may be empty
 */
public record Finding(
        Severity severity,
        String subject,
        String sentence,
        List<Dim> numbers,
        String source,
        String remedy,
        String rule,
        List<Change> changes) {
    /** What stands before the maker's reason where a remedy would stand. */
    public static final String ACCEPTED = "Accepted: ";

    /** How much a finding matters. */
    public enum Severity {
        /** Do not cut before this is put right. */
        STOP,
        /** Think before going on. */
        CAUTION,
        /** Good to know. */
        NOTE
    }

    /** Takes its own copies. */
    public Finding {
        numbers = List.copyOf(numbers);
        changes = List.copyOf(changes);
    }

    /** One that has to be put right, by hand. */
    public Finding(
            Severity severity, String subject, String sentence, List<Dim> numbers, String source, String remedy) {
        this(severity, subject, sentence, numbers, source, remedy, "", List.of());
    }

    /** The same, judged by a rule, so that the maker can take it as it is for a reason. */
    public Finding by(String judgedBy) {
        return new Finding(severity, subject, sentence, numbers, source, remedy, judgedBy, changes);
    }

    /** The same with its remedy as changes to the text. */
    public Finding offering(List<Change> offered) {
        return new Finding(severity, subject, sentence, numbers, source, remedy, rule, offered);
    }

    /** What it is called when a maker accepts it: {@code top / panel / sag}. */
    public String name() {
        return rule.isEmpty() ? subject : Ledger.path(subject, rule);
    }

    /** The same, taken as it is for a reason: a note that says so. */
    public Finding accepted(String reason) {
        return new Finding(Severity.NOTE, subject, sentence, numbers, source, ACCEPTED + reason, rule, List.of());
    }
}
