package scantling.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import scantling.shop.BenchEntry;
import scantling.shop.Logged;

/**
 * What the bench log comes to, for the cards.
 *
 * @param done operations and ticks that are done, and parts that are cut
 * @param minutes spent, by operation
 * @param notes written, by operation
 */
record BenchState(Set<String> done, Map<String, Integer> minutes, Map<String, List<BenchEntry.Note>> notes) {
    static BenchState of(List<Logged> log) {
        Set<String> done = new LinkedHashSet<>();
        Map<String, Integer> minutes = new LinkedHashMap<>();
        Map<String, List<BenchEntry.Note>> notes = new LinkedHashMap<>();
        for (Logged logged : log) {
            if (logged.inForce()) {
                BenchEntry entry = logged.entry();
                if (entry instanceof BenchEntry.Done || entry instanceof BenchEntry.Cut) {
                    done.add(entry.subject());
                } else if (entry instanceof BenchEntry.Undone || entry instanceof BenchEntry.Spoilt) {
                    undo(done, entry.subject());
                } else if (entry instanceof BenchEntry.Minutes time) {
                    minutes.merge(time.subject(), time.minutes(), Integer::sum);
                } else if (entry instanceof BenchEntry.Note note
                        && !note.subject().startsWith(Waits.SUBJECT)) {
                    notes.computeIfAbsent(note.subject(), key -> new ArrayList<>())
                            .add(note);
                }
            }
        }
        return new BenchState(done, minutes, notes);
    }

    /** What is spoilt or undone is not done, nor is any operation that was done to it. */
    private static void undo(Set<String> done, String subject) {
        done.remove(subject);
        done.removeIf(each -> each.endsWith(" / " + subject) || (each.startsWith("size / ") && each.contains(subject)));
    }
}
