package scantling.shop;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How long parts took by the bench log: what was logged on a part itself, else the mean of the parts that have a figure. */
final class MinutesSpent {
    private final Map<String, Integer> logged = new LinkedHashMap<>();

    MinutesSpent(List<BenchEntry> entries) {
        for (BenchEntry entry : entries) {
            if (entry instanceof BenchEntry.Minutes minutes) {
                logged.merge(minutes.subject(), minutes.minutes(), Integer::sum);
            }
        }
        logged.keySet().retainAll(BenchFold.touched(BenchFold.of(entries)));
    }

    Optional<Integer> on(String part) {
        Integer own = logged.get(part);
        if (own != null) {
            return Optional.of(own);
        }
        return logged.isEmpty()
                ? Optional.empty()
                : Optional.of((int) Math.round(logged.values().stream()
                        .mapToInt(Integer::intValue)
                        .average()
                        .orElse(0)));
    }
}
