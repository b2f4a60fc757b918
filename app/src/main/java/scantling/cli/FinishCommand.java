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

/** Says what goes on the wood. */
@Command(
        name = "finish",
        mixinStandardHelpOptions = true,
        description = "Say what goes on the wood: which faces, which coats, how much of each, how long each waits.")
final class FinishCommand implements Callable<Integer> {
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
        spec.commandLine().getOut().println(new FinishSheet(plan.finish(), Workbench.inInches(plan)).text());
        return plan.hasStop() ? Exit.STOP : Exit.WELL;
    }
}
