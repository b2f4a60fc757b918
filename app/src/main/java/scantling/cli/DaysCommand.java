package scantling.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import scantling.construct.Finding;
import scantling.packet.Days;
import scantling.packet.files.RouteCalendar;
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

    @Mixin
    private JobsOption jobs = new JobsOption();

    @Option(
            names = "--calendar",
            paramLabel = "FILE",
            description = "Write the days as a calendar file (RFC 5545); taking it in again moves what is there.")
    private Optional<Path> calendar = Optional.empty();

    @Override
    public Integer call() {
        JobsInHand inHand = jobs.inHand();
        Agenda agenda = jobs.agenda(inHand, spec.commandLine().getErr());
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
        calendar.ifPresent(target -> write(target, new Days(inHand.jobs(), agenda, jobs.moment(inHand), true)));
        boolean stop = agenda.findings().stream().anyMatch(one -> one.severity() == Finding.Severity.STOP);
        return stop ? Exit.STOP : Exit.WELL;
    }

    private void write(Path target, Days days) {
        Optional<String> text = RouteCalendar.of(days);
        text.ifPresent(ics -> TextFile.writeAll(
                Optional.ofNullable(target.toAbsolutePath().getParent()).orElse(target),
                Map.of(String.valueOf(target.getFileName()), ics.getBytes(StandardCharsets.UTF_8))));
        spec.commandLine()
                .getOut()
                .println(text.isPresent() ? "Written to " + target : "Nothing is to be done, so no calendar.");
    }
}
