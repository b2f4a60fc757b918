package scantling.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Changes one given value in the text of a piece. */
@Command(
        name = "edit",
        mixinStandardHelpOptions = true,
        description = "Change one value you gave. Nothing else in the text is touched; a change that does not read is"
                + " refused.")
final class EditCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(index = "0", paramLabel = "FILE", description = "The text of the piece.")
    private Path file = Path.of("");

    @Parameters(index = "1", paramLabel = "NAME", description = "The value: 'size / width', 'top / overhang / front'.")
    private String name = "";

    @Parameters(index = "2", paramLabel = "VALUE", description = "What to put there.")
    private String value = "";

    @Override
    public Integer call() {
        Workbench.read(file);
        String text = Workbench.text(file);
        String edited = Workbench.edited(file, text, name, value);
        TextFile.replace(file, edited);
        spec.commandLine().getOut().println("%s is now %s.".formatted(name, value));
        return Exit.WELL;
    }
}
