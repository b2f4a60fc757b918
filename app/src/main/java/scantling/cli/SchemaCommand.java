package scantling.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import scantling.piece.PieceSchema;

/** Prints the JSON Schema of the language. */
@Command(
        name = "schema",
        mixinStandardHelpOptions = true,
        description = "Print the JSON Schema of a piece's text, for an editor that completes and checks it.")
final class SchemaCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        spec.commandLine().getOut().println(PieceSchema.json(Workbench.LANGUAGE));
        return Exit.WELL;
    }
}
