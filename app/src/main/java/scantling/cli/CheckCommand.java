package scantling.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import scantling.plan.Plan;

/** Reads a piece and says what a careful master would say of it. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Look a piece over: what is wrong in the text, and what would go wrong at the bench.")
final class CheckCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "The text of the piece.")
    private Path file = Path.of("");

    @Option(
            names = "--measured",
            paramLabel = "FILE",
            description = "What the bench says: measured sizes and parts cut.")
    private Optional<Path> measured = Optional.empty();

    @Mixin
    private SettingsOption settings = new SettingsOption();

    @Override
    public Integer call() {
        Plan plan = Workbench.plan(file, measured, settings.shop());
        Summary summary = new Summary(plan);
        spec.commandLine().getOut().println(summary.findings());
        return plan.hasStop() ? Exit.STOP : Exit.WELL;
    }
}
