package scantling.shop;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import scantling.measure.Length;
import scantling.piece.BenchLog;

/** What a list of bench entries comes to: a later measurement counts before an earlier one, what is spoilt or undone no more. */
final class BenchFold {
    private final Map<String, Length> measured = new LinkedHashMap<>();
    private final Map<String, Map<String, Length>> cut = new LinkedHashMap<>();

    private BenchFold() {}

    static BenchLog of(List<BenchEntry> entries) {
        BenchFold fold = new BenchFold();
        entries.forEach(fold::take);
        return new BenchLog(
                fold.measured.entrySet().stream()
                        .map(size -> new BenchLog.Measured(size.getKey(), size.getValue(), JobInputs.NOWHERE))
                        .toList(),
                fold.cut.entrySet().stream()
                        .map(part -> new BenchLog.Cut(part.getKey(), part.getValue(), JobInputs.NOWHERE))
                        .toList());
    }

    private void take(BenchEntry entry) {
        if (entry instanceof BenchEntry.Measured number) {
            measured.put(number.name(), number.size());
        } else if (entry instanceof BenchEntry.Cut part) {
            cut.put(part.part(), part.sizes());
        } else if (entry instanceof BenchEntry.Spoilt || entry instanceof BenchEntry.Undone) {
            cut.remove(entry.subject());
            measured.keySet().removeIf(name -> name.startsWith(entry.subject() + " / "));
        }
    }
}
