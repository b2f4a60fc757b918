package scantling.checks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Sensitivity;

/**
 * Parts better left long and cut to fit: edgings, mouldings and boards before a gap, whose length follows from so much
 * that others may be off by more than an eye forgives.
 */
final class LeftLong {
    private static final List<String> CLOSING =
            List.of("lipping", "edging", "moulding", "kick board", "scribe", "filler");
    private static final Length SEEN = Length.mm("0.5");
    private static final int MOST = 6;

    private final Assembly assembly;
    private final Words words;

    LeftLong(Assembly assembly) {
        this.assembly = assembly;
        this.words = Words.of(assembly);
    }

    private record Late(Part part, Length worst) {}

    List<Finding> notes() {
        List<Late> late = new ArrayList<>();
        for (Part part : assembly.parts()) {
            Length worst = following(part.length());
            if (!part.fitted() && !part.length().isMeasured() && closes(part) && worst.compareTo(SEEN) > 0) {
                late.add(new Late(part, worst));
            }
        }
        late.sort(Comparator.comparing(Late::worst).reversed());
        return late.isEmpty() ? List.of() : List.of(note(late));
    }

    private static boolean closes(Part part) {
        String path = part.path().toLowerCase(Locale.ROOT);
        return CLOSING.stream().anyMatch(path::contains);
    }

    /** How far off the place may be that it must fit, whatever its own saw does. */
    private static Length following(Dim length) {
        Length all = Length.ZERO;
        for (var input : length.making().inputs()) {
            all = all.plus(Sensitivity.tolerance(input.dim()).worstCase());
        }
        return all;
    }

    private Finding note(List<Late> late) {
        Set<String> names = new LinkedHashSet<>();
        late.stream().limit(MOST).forEach(each -> names.add(each.part().path()));
        Late worst = late.get(0);
        return new Finding(
                        Finding.Severity.NOTE,
                        worst.part().path(),
                        "What these must fit may be off by up to %s when it is made: %s."
                                .formatted(words.length(worst.worst()), String.join(", ", names)),
                        List.of(worst.part().length()),
                        "tolerances of the shop's processes",
                        "Leave them long and cut each to its place.")
                .by("left long");
    }
}
