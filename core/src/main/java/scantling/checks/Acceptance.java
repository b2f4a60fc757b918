package scantling.checks;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import scantling.construct.Finding;
import scantling.piece.Conditions;
import scantling.piece.Piece;
import scantling.piece.Spelling;

/** Findings that the maker takes as they are, for a reason that stands in the packet. */
public final class Acceptance {
    private Acceptance() {}

    /**
     * All findings, those that are accepted as notes with their reason. What is geometry cannot be accepted; a reason
     * for a finding that does not exist is itself a note.
     */
    public static List<Finding> apply(Piece piece, List<Finding> findings) {
        Map<String, Conditions.Reason> accepted = piece.conditions().accepted();
        Set<String> used = new LinkedHashSet<>();
        List<Finding> all = new ArrayList<>();
        for (Finding finding : findings) {
            Optional<Conditions.Reason> reason =
                    finding.rule().isEmpty() ? Optional.empty() : Optional.ofNullable(accepted.get(finding.name()));
            reason.ifPresent(found -> used.add(finding.name()));
            all.add(reason.map(found -> finding.accepted(found.words())).orElse(finding));
        }
        Set<String> names = findings.stream()
                .filter(finding -> !finding.rule().isEmpty())
                .map(Finding::name)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        accepted.forEach((name, reason) -> {
            if (!used.contains(name)) {
                all.add(unused(name, reason, names));
            }
        });
        return List.copyOf(all);
    }

    private static Finding unused(String name, Conditions.Reason reason, Set<String> names) {
        return new Finding(
                Finding.Severity.NOTE,
                name,
                "Nothing called \"%s\" stands to be accepted (line %d)."
                        .formatted(name, reason.span().line()),
                List.of(),
                "the maker's own list of accepted findings",
                ("Take it out of the list. " + Spelling.maybe(name, names)).strip());
    }
}
