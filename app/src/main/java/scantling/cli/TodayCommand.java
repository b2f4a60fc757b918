package scantling.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import scantling.route.Caution;
import scantling.route.days.Agenda;

/** Tells what to do first, and why. */
@Command(
        name = "today",
        mixinStandardHelpOptions = true,
        description = "Tell what to do next on the jobs in hand, and why that first.")
final class TodayCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private JobsOption jobs = new JobsOption();

    @Override
    public Integer call() {
        Agenda agenda = jobs.agenda(jobs.inHand(), spec.commandLine().getErr());
        PrintWriter out = spec.commandLine().getOut();
        if (agenda.entries().isEmpty()) {
            out.println("Nothing is left to do.");
            return Exit.WELL;
        }
        LocalDate day = agenda.entries().get(0).from().toLocalDate();
        List<Agenda.Entry> today = agenda.entries().stream()
                .filter(entry -> entry.from().toLocalDate().equals(day))
                .toList();
        out.println(DayText.day(day));
        Set<String> minded = new HashSet<>();
        for (Agenda.Entry entry : today) {
            out.println(DayText.entry(entry));
            out.println("      because %s".formatted(entry.why()));
            entry.operation().settings().forEach(setting -> out.println("      " + setting));
            entry.operation().cautions().stream()
                    .map(Caution::sentence)
                    .filter(minded::add)
                    .forEach(caution -> out.println("      Mind: " + caution));
        }
        agenda.promises().forEach(promise -> out.println(DayText.promise(promise)));
        agenda.findings().forEach(finding -> out.println(DayText.finding(finding)));
        return Exit.WELL;
    }
}
