package scantling.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import scantling.construct.Finding;
import scantling.route.days.Agenda;

/** Puts all jobs in hand on one calendar. */
@Command(
        name = "days",
        mixinStandardHelpOptions = true,
        description =
                "Put all jobs in hand on one calendar: what to do day by day, and when each will be done, with its"
                        + " odds.")
final class DaysCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "JOBS", description = "The list of jobs in hand (docs/jobs.md).")
    private Path file = Path.of("");

    @Option(
            names = "--at",
            paramLabel = "MOMENT",
            description = "Plan from this moment on, by the shop's clock: 2026-11-25T08:00; from now when not said.")
    private Optional<LocalDateTime> at = Optional.empty();

    @Option(names = "--first", description = "Take the first sound order; do not look for better ones.")
    private boolean first;

    @Mixin
    private SettingsOption settings = new SettingsOption();

    @Override
    public Integer call() {
        Agenda agenda = JobsInHand.read(file, settings.shop()).agenda(at, first);
        PrintWriter out = spec.commandLine().getOut();
        List<LocalDate> days = agenda.entries().stream()
                .map(entry -> entry.from().toLocalDate())
                .distinct()
                .toList();
        for (LocalDate day : days) {
            out.println(DayText.day(day));
            out.println(agenda.entries().stream()
                    .filter(entry -> entry.from().toLocalDate().equals(day))
                    .map(DayText::entry)
                    .collect(Collectors.joining("\n")));
        }
        agenda.promises().forEach(promise -> out.println(DayText.promise(promise)));
        agenda.findings().forEach(finding -> out.println(DayText.finding(finding)));
        out.println(DayText.status(agenda.timetable()));
        boolean stop = agenda.findings().stream().anyMatch(one -> one.severity() == Finding.Severity.STOP);
        return stop ? Exit.STOP : Exit.WELL;
    }
}
