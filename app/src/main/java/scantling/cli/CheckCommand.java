package scantling.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
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

    @Mixin
    private PieceOption piece = new PieceOption();

    @Override
    public Integer call() {
        Plan plan = piece.plan();
        Summary summary = new Summary(plan);
        spec.commandLine().getOut().println(summary.findings());
        return plan.hasStop() ? Exit.STOP : Exit.WELL;
    }
}
