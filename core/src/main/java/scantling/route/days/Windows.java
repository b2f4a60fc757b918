package scantling.route.days;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Finding;
import scantling.route.Operation;

/** Where the real times leave a coat past its window: the next wants a scuff first, and the maker is told. */
final class Windows {
    private static final long SECONDS = 3600;

    private final JobInHand job;
    private final Map<String, Operation> closing = new HashMap<>();
    private final List<Finding> findings = new ArrayList<>();

    Windows(JobInHand job) {
        this.job = job;
        for (Operation operation : job.route().operations()) {
            if (operation.pause().closes().isPresent()) {
                closing.put(operation.id(), operation);
            }
        }
    }

    List<Finding> findings() {
        return findings;
    }

    /** The operation with what its window asks for. @param waited id of what it waits for @param ended when that ended @param start when this begins */
    Operation seen(Operation operation, String waited, Instant ended, Instant start) {
        Operation before = closing.get(waited);
        return before == null ? operation : seen(operation, before, ended, start);
    }

    private Operation seen(Operation operation, Operation before, Instant ended, Instant start) {
        double closes = before.pause().closes().orElse(Double.POSITIVE_INFINITY);
        double gap = Duration.between(ended, start).toSeconds() / (double) SECONDS;
        if (gap <= closes + Calendar.TICK / 60.0) {
            return operation;
        }
        String scuff = scuff(before);
        findings.add(new Finding(
                Finding.Severity.CAUTION,
                job.name(),
                "\"%s\" begins %.0f h after \"%s\", whose window closes after %.0f h."
                        .formatted(operation.title(), gap, before.title(), closes),
                List.of(),
                before.pause().source(),
                scuff + " That is a step of its own; count its time."));
        return operation.with(scuff);
    }

    /** As the coat itself says it. */
    private static String scuff(Operation coat) {
        Optional<String> said = coat.settings().stream()
                .filter(setting -> setting.contains("scuff with"))
                .findFirst();
        return said.map(setting -> "The window has closed: " + setting.substring(setting.indexOf("scuff with")))
                .orElse("The window has closed: scuff first.");
    }
}
