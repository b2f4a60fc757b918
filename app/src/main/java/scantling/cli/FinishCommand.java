package scantling.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
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

    @Mixin
    private PieceOption piece = new PieceOption();

    @Override
    public Integer call() {
        Plan plan = piece.plan();
        spec.commandLine().getOut().println(new FinishSheet(plan.finish(), Workbench.inInches(plan)).text());
        return plan.hasStop() ? Exit.STOP : Exit.WELL;
    }
}
