package scantling.checks;

import java.util.List;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.LengthFormat;

/** How findings write lengths, and short ways to make them. */
record Words(LengthFormat format) {
    private static final String GEOMETRY = "the planes of the parts";

    /** In the unit that the piece is written in. */
    static Words of(Assembly assembly) {
        return new Words(LengthFormat.of(assembly.piece().unit()));
    }

    String length(Length length) {
        return format.formatWithUnit(length);
    }

    static Length millimetres(double mm) {
        return Length.ofMillimetres(mm);
    }

    static Finding stop(String subject, String sentence, List<Dim> numbers, String remedy) {
        return new Finding(Finding.Severity.STOP, subject, sentence, numbers, GEOMETRY, remedy);
    }

    static Finding caution(String subject, String sentence, List<Dim> numbers, String remedy) {
        return new Finding(Finding.Severity.CAUTION, subject, sentence, numbers, GEOMETRY, remedy);
    }
}
