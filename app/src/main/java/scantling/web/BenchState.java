package scantling.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import scantling.shop.BenchEntry;
import scantling.shop.Logged;

/**
 * What the bench log says under the cards, and what can be taken back there.
 *
 * @param said by the key of the card, or the part or number it is about
 */
public record BenchState(Map<String, List<Said>> said) {
    /**
     * One thing that was said.
     *
     * @param act by which it can be taken back
     * @param words for people
     * @param photo its id, where there is one
     */
    public record Said(String act, String words, Optional<String> photo) {}

    static BenchState of(List<Logged> log) {
        Map<String, List<Said>> said = new LinkedHashMap<>();
        for (Logged logged : log) {
            BenchEntry entry = logged.entry();
            String words = words(entry);
            if (logged.inForce() && !words.isEmpty() && !entry.subject().startsWith(Waits.SUBJECT)) {
                Said line = new Said(logged.act(), words, photo(entry));
                subjects(entry)
                        .forEach(subject -> said.computeIfAbsent(subject, key -> new ArrayList<>())
                                .add(line));
            }
        }
        return new BenchState(said);
    }

    /** Everything said of some subjects, each once. */
    List<Said> of(Set<String> subjects) {
        return subjects.stream()
                .flatMap(subject -> said.getOrDefault(subject, List.of()).stream())
                .distinct()
                .toList();
    }

    private static Optional<String> photo(BenchEntry entry) {
        return entry instanceof BenchEntry.Note note ? note.photo() : Optional.empty();
    }

    private static List<String> subjects(BenchEntry entry) {
        return entry instanceof BenchEntry.Sawn sawn
                ? sawn.parts().stream().map(part -> "sawn / " + part.part()).toList()
                : List.of(entry.subject());
    }

    private static String words(BenchEntry entry) {
        if (entry instanceof BenchEntry.Note note) {
            return note.text();
        } else if (entry instanceof BenchEntry.Minutes minutes) {
            return minutes.minutes() + " min logged";
        } else if (entry instanceof BenchEntry.Measured measured) {
            return "%s measured %s".formatted(measured.name(), measured.size());
        } else if (entry instanceof BenchEntry.Spoilt spoilt) {
            return "%s was spoilt%s".formatted(spoilt.part(), spoilt.why().isEmpty() ? "" : ": " + spoilt.why());
        } else if (entry instanceof BenchEntry.Sawn sawn) {
            return "sawn from %s: %s%s".formatted(sawn.stock().orElse("bought stock"), pieces(sawn), kept(sawn));
        }
        return "";
    }

    private static String pieces(BenchEntry.Sawn sawn) {
        return sawn.parts().stream()
                .map(part -> part.pieces() == 1 ? part.part() : part.pieces() + " for " + part.part())
                .collect(Collectors.joining(", "));
    }

    private static String kept(BenchEntry.Sawn sawn) {
        return sawn.offcuts().isEmpty()
                ? ""
                : "; kept "
                        + sawn.offcuts().stream()
                                .map(offcut -> offcut.stock().id())
                                .collect(Collectors.joining(", "));
    }
}
