package scantling.route.days;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Finding;
import scantling.route.Operation;
import scantling.route.Step;

/** Holds what is said to be done against the order of the route: nothing is done before what must be ready for it. */
final class Frozen {
    private Frozen() {}

    static List<Finding> findings(JobInHand job) {
        Map<String, Operation> byId = new HashMap<>();
        job.route().operations().forEach(operation -> byId.put(operation.id(), operation));
        List<Finding> findings = new ArrayList<>();
        for (Operation operation : job.route().operations()) {
            JobInHand.Done done = job.done().get(operation.id());
            if (done != null) {
                for (String id : operation.after()) {
                    Optional.ofNullable(byId.get(id))
                            .flatMap(before -> fault(job, before, operation, done))
                            .ifPresent(findings::add);
                }
            }
        }
        return findings;
    }

    private static Optional<Finding> fault(JobInHand job, Operation before, Operation operation, JobInHand.Done done) {
        JobInHand.Done first = job.done().get(before.id());
        Optional<Instant> ended = first == null ? Optional.empty() : first.to();
        if (ended.isPresent() && !ended.get().isAfter(done.from())) {
            return Optional.empty();
        }
        String state = first == null
                ? "is not done"
                : ended.isEmpty() ? "is not finished" : "was only finished after that had begun";
        boolean gone = operation.step().compareTo(Step.WRAP) >= 0;
        String sentence = "\"%s\" is said to be done, but \"%s\", which comes before it, %s."
                .formatted(operation.title(), before.title(), state);
        return Optional.of(new Finding(
                gone ? Finding.Severity.STOP : Finding.Severity.CAUTION,
                job.name(),
                gone && before.step() == Step.FINISH ? sentence + " A coat cannot follow delivery." : sentence,
                List.of(),
                "the order of the route",
                "Put the days under \"done\" right, or add what was done and not written down."));
    }
}
