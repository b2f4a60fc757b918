package scantling.route;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import scantling.measure.Ledger;
import scantling.timber.Table;

/** A route being written: every operation comes after the last one that was done to any of its parts. */
final class Draft {
    private static final Map<String, List<Table.Row>> SUPPLIES = supplies();

    private final Times times;
    private final List<Operation> operations = new ArrayList<>();
    private final Map<String, String> last = new LinkedHashMap<>();
    private final Set<String> ids = new HashSet<>();

    Draft(Times times) {
        this.times = times;
    }

    private static Map<String, List<Table.Row>> supplies() {
        Map<String, List<Table.Row>> rows = new LinkedHashMap<>();
        for (Table.Row row : Table.read("route/supplies.csv").rows()) {
            rows.computeIfAbsent(row.text("work"), k -> new ArrayList<>()).add(row);
        }
        return rows;
    }

    List<Operation> operations() {
        return operations;
    }

    /** Begins an operation; it is there once added. */
    Entry entry(Step step, String name, Collection<String> parts) {
        return new Entry(step, name, List.copyOf(new LinkedHashSet<>(parts)));
    }

    /** One operation being written. */
    final class Entry {
        private final Step step;
        private final String name;
        private final List<String> parts;
        private final List<String> settings = new ArrayList<>();
        private final List<Supply> supplies = new ArrayList<>();
        private String work = "";
        private double amount;
        private Pause pause = Pause.NONE;
        private Needs needs = Needs.HANDS;

        private Entry(Step step, String name, List<String> parts) {
            this.step = step;
            this.name = name;
            this.parts = parts;
        }

        Entry takes(String standard, double howMuch) {
            work = standard;
            amount = howMuch;
            for (Table.Row row : SUPPLIES.getOrDefault(standard, List.of())) {
                supplies.add(Supply.of(row, howMuch));
            }
            return this;
        }

        Entry set(List<String> words) {
            settings.addAll(words);
            return this;
        }

        Entry uses(Supply... more) {
            return uses(List.of(more));
        }

        Entry uses(List<Supply> more) {
            supplies.addAll(more);
            return this;
        }

        Entry then(Pause more) {
            pause = more;
            return this;
        }

        Entry needs(Needs more) {
            needs = more;
            return this;
        }

        /** Puts it into the route; nothing to be done to nothing is left out. */
        void add() {
            if (parts.isEmpty() || amount <= 0) {
                return;
            }
            Times.Standard standard = times.of(work);
            String id = unique(Ledger.path(step.words(), name));
            Set<String> after = new LinkedHashSet<>();
            for (String part : parts) {
                String before = last.put(part, id);
                if (before != null) {
                    after.add(before);
                }
            }
            operations.add(new Operation(
                    id,
                    step,
                    title(step.words(), name),
                    parts,
                    settings,
                    supplies,
                    work,
                    amount,
                    Operation.hands(standard, amount),
                    standard.observations(),
                    pause,
                    needs,
                    Caution.of(step),
                    List.copyOf(after)));
        }

        private String unique(String wanted) {
            String id = wanted;
            for (int number = 2; !ids.add(id); number++) {
                id = wanted + " " + number;
            }
            return id;
        }
    }

    private static String title(String words, String name) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ": " + name;
    }
}
