package scantling.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import scantling.route.days.Agenda;

/** The jobs in hand that a command puts on the calendar, and how. */
final class JobsOption {
    @Parameters(paramLabel = "JOBS", description = "The list of jobs in hand (docs/jobs.md).")
    private Path file = Path.of("");

    @Option(
            names = "--at",
            paramLabel = "MOMENT",
            description = "Plan from this moment on, by the shop's clock: 2026-11-25T08:00; from now when not said.")
    private Optional<LocalDateTime> at = Optional.empty();

    @Option(names = "--first", description = "Take the first sound order; do not look for better ones.")
    private boolean first;

    @Option(
            names = "--seconds",
            paramLabel = "N",
            description = "Look so long for better orders; the answer then depends on how fast the machine is.")
    private Optional<Double> seconds = Optional.empty();

    @Mixin
    private SettingsOption settings = new SettingsOption();

    /** What is written of them. */
    JobsInHand inHand() {
        return JobsInHand.read(file, settings);
    }

    /** Their days. @param err where it is said how far they are looked for */
    Agenda agenda(JobsInHand inHand, PrintWriter err) {
        return inHand.agenda(at, first, seconds, err);
    }

    /** From when on they are planned. */
    Instant moment(JobsInHand inHand) {
        return inHand.moment(at);
    }
}
