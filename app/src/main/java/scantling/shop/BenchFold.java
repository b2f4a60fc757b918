package scantling.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import scantling.measure.Length;
import scantling.piece.BenchLog;

/** What a list of bench entries comes to: a later measurement counts before an earlier one, what is spoilt or undone no more. */
final class BenchFold {
    private final Map<String, Length> measured = new LinkedHashMap<>();
    private final Map<String, Map<String, Length>> cut = new LinkedHashMap<>();
    private final Map<String, List<BenchLog.Sawn>> sawn = new LinkedHashMap<>();

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
                        .toList(),
                fold.sawn.values().stream().flatMap(List::stream).toList());
    }

    /** Parts that the bench has sawn or cut, by path. */
    static Set<String> touched(BenchLog bench) {
        Set<String> touched = new TreeSet<>();
        bench.cut().forEach(part -> touched.add(part.path()));
        bench.sawn().forEach(part -> touched.add(part.path()));
        return touched;
    }

    private void take(BenchEntry entry) {
        if (entry instanceof BenchEntry.Measured number) {
            measured.put(number.name(), number.size());
        } else if (entry instanceof BenchEntry.Cut part) {
            cut.put(part.part(), part.sizes());
        } else if (entry instanceof BenchEntry.Sawn stock) {
            stock.parts().forEach(this::take);
        } else if (entry instanceof BenchEntry.Spoilt spoilt) {
            cut.remove(spoilt.part());
            sawn.remove(spoilt.part());
            forgetSizes(spoilt.part());
        } else if (entry instanceof BenchEntry.Undone undone) {
            undone(undone.subject());
        }
    }

    private void take(BenchEntry.SawnPart part) {
        BenchLog.Sawn piece = new BenchLog.Sawn(part.part(), part.length(), part.width(), part.pieces());
        sawn.merge(part.part(), List.of(piece), (before, more) -> {
            List<BenchLog.Sawn> all = new ArrayList<>(before);
            all.addAll(more);
            return all;
        });
    }

    /** A part that was cut is a rough piece again; one that was only sawn is not sawn after all. */
    private void undone(String subject) {
        if (cut.remove(subject) == null) {
            sawn.remove(subject);
        }
        measured.remove(subject);
        forgetSizes(subject);
    }

    private void forgetSizes(String part) {
        measured.keySet().removeIf(name -> name.startsWith(part + " / "));
    }
}
