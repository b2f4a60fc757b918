package scantling.shop;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import scantling.measure.Ledger;
import scantling.piece.Material;
import scantling.plan.Plan;
import scantling.route.Operation;
import scantling.route.Step;
import scantling.route.days.JobInHand;

/**
 * How far the bench has come with a route. An operation is done part by part: what the bench marked, and what follows from
 * it, because a part that is cut to size was sawn and milled before.
 */
public final class Progress {
    private static final Set<Step> SAWING =
            Set.of(Step.RECEIVE, Step.CROSSCUT, Step.RIP, Step.CUT_SHEETS, Step.CUT_STICKS);
    private static final Set<Step> MILLING =
            Set.of(Step.FIRST_MILL, Step.GLUE_BLANK, Step.FINAL_MILL, Step.CUT_TO_LENGTH);

    private final Plan plan;
    private final Map<Work, Instant> marked = new LinkedHashMap<>();
    private final Map<String, Integer> minutes = new LinkedHashMap<>();
    private final Map<String, Instant> touched = new LinkedHashMap<>();
    private final Set<String> cut = new LinkedHashSet<>();
    private final Set<String> ticked = new LinkedHashSet<>();
    private final Set<String> unsawn = new LinkedHashSet<>();
    /** What came off each piece of stock that was sawn. */
    private final List<Set<String>> sawn = new ArrayList<>();

    /** An operation on one part. */
    private record Work(String operation, String part) {}

    private Progress(Plan plan) {
        this.plan = plan;
        plan.cuts().forEach(group -> group.job().parts().forEach(part -> unsawn.add(part.name())));
    }

    /** How far a log has come with the route of a plan. */
    public static Progress of(Plan plan, List<Logged> log) {
        Progress progress = new Progress(plan);
        log.stream().filter(Logged::inForce).forEach(progress::take);
        return progress;
    }

    /** The name under which one part of an operation is marked in the log. */
    public static String subject(Operation operation, String part) {
        return Ledger.path(operation.id(), part);
    }

    /** Whether this operation brings a part to its size, after which it keeps it. */
    public static boolean sizes(Operation operation, Material material) {
        return operation.step() == Step.CUT_TO_LENGTH
                || operation.step() == Step.MARK && material.kind() != Material.Kind.SOLID;
    }

    private void take(Logged logged) {
        BenchEntry entry = logged.entry();
        String subject = entry.subject();
        touched.put(subject, logged.at());
        if (entry instanceof BenchEntry.Done) {
            ticked.add(subject);
            named(subject).forEach(work -> marked.put(work, logged.at()));
        } else if (entry instanceof BenchEntry.Cut) {
            cut.add(subject);
        } else if (entry instanceof BenchEntry.Sawn one) {
            one.parts().forEach(part -> touched.put(part.part(), logged.at()));
            sawn.add(one.parts().stream().map(BenchEntry.SawnPart::part).collect(Collectors.toSet()));
        } else if (entry instanceof BenchEntry.Undone) {
            cut.remove(subject);
            ticked.remove(subject);
            named(subject).forEach(marked::remove);
        } else if (entry instanceof BenchEntry.Spoilt) {
            cut.remove(subject);
            marked.keySet().removeIf(work -> work.part().equals(subject));
        } else if (entry instanceof BenchEntry.Minutes spent) {
            minutes.merge(subject, spent.minutes(), Integer::sum);
        }
    }

    /** What a subject of the log stands for: an operation with all its parts, or with one. */
    private List<Work> named(String subject) {
        return plan.route().operations().stream()
                .filter(operation -> subject.startsWith(operation.id()))
                .flatMap(operation -> operation.parts().stream()
                        .filter(part -> subject.equals(operation.id()) || subject.equals(subject(operation, part)))
                        .map(part -> new Work(operation.id(), part)))
                .toList();
    }

    /** Whether an operation is done to one of its parts. */
    public boolean isDone(Operation operation, String part) {
        return marked.containsKey(new Work(operation.id(), part))
                || SAWING.contains(operation.step()) && !unsawn.contains(part)
                || cut.contains(part) && (MILLING.contains(operation.step()) || sizes(operation, part));
    }

    private boolean sizes(Operation operation, String part) {
        return operation.step() == Step.MARK
                && plan.assembly().parts().stream()
                        .anyMatch(one -> one.path().equals(part) && sizes(operation, one.material()));
    }

    /** Whether an operation is done to all its parts. */
    public boolean isDone(Operation operation) {
        return operation.parts().stream().allMatch(part -> isDone(operation, part));
    }

    /** Whether an operation is done to some of its parts. */
    public boolean isBegun(Operation operation) {
        return operation.parts().stream().anyMatch(part -> isDone(operation, part));
    }

    /** Whether the bench says done of something by this very name: a cut of a saw card. */
    public boolean isTicked(String subject) {
        return ticked.contains(subject);
    }

    /** Whether a rough piece for a part has left its stock. */
    public boolean isSawn(String part) {
        return !unsawn.contains(part);
    }

    /** How many pieces of stock are sawn for the parts of an operation, wholly or as far as the maker went. */
    public int piecesSawn(Operation operation) {
        return (int) sawn.stream()
                .filter(parts -> operation.parts().stream().anyMatch(parts::contains))
                .count();
    }

    /** Minutes logged on an operation. */
    public int minutes(Operation operation) {
        return minutes.getOrDefault(operation.id(), 0);
    }

    /** The last thing that the bench said of an operation. */
    public Optional<Instant> last(Operation operation) {
        return operation.parts().stream()
                .flatMap(part -> Stream.of(
                        marked.getOrDefault(new Work(operation.id(), part), Instant.MIN),
                        touched.getOrDefault(part, Instant.MIN)))
                .filter(at -> at.isAfter(Instant.MIN))
                .max(Instant::compareTo);
    }

    /** What is done or begun, for the days. */
    public Map<String, JobInHand.Done> done() {
        Map<String, JobInHand.Done> done = new LinkedHashMap<>();
        for (Operation operation : plan.route().operations()) {
            if (isBegun(operation)) {
                Instant to = last(operation).orElse(Instant.EPOCH);
                double spent = Math.max(minutes(operation), 1);
                Instant from = to.minus(Duration.ofMinutes(Math.round(spent)));
                done.put(
                        operation.id(),
                        new JobInHand.Done(from, isDone(operation) ? Optional.of(to) : Optional.empty()));
            }
        }
        return done;
    }
}
