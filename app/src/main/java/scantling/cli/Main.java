package scantling.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import scantling.piece.Spelling;
import scantling.shop.ShopTrouble;

/** The command line. */
@Command(
        name = "scantling",
        version = "Scantling 0.1.0",
        mixinStandardHelpOptions = true,
        description = "From a piece described in workshop terms to everything needed to build it.",
        synopsisSubcommandLabel = "COMMAND",
        footer = {
            "",
            "First piece:  scantling new shelf.yaml   then   scantling plan shelf.yaml --out shelf",
            "Answers 0 when all is well, 1 when a finding says stop, 2 when something is wrong."
        })
public final class Main implements Runnable {
    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec = CommandLine.Model.CommandSpec.create();

    /** Runs one command and ends the process with its exit code. */
    public static void main(String[] args) {
        Ahead.of(args);
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        System.exit(run(out, err, args));
    }

    /** Runs one command. @return its exit code */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        CommandLine line = new CommandLine(new Main());
        Commands.addTo(line, args);
        line.setOut(out)
                .setErr(err)
                .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
                .setExecutionExceptionHandler((failure, command, parsed) -> told(failure, command));
        line.setParameterExceptionHandler((wrong, given) -> misread(wrong, given));
        return line.execute(args);
    }

    /** A command line that cannot be read, in plain words. */
    private static int misread(ParameterException wrong, String... args) {
        CommandLine command = wrong.getCommandLine();
        PrintWriter err = command.getErr();
        String written = args.length == 0 ? "" : args[0];
        if (command.getParent() == null && !written.startsWith("-")) {
            err.println("There is no command \"%s\".%s There are: %s."
                    .formatted(
                            written, Spelling.maybe(written, Commands.names()), String.join(", ", Commands.names())));
            return Exit.WRONG;
        }
        err.println(wrong.getMessage() + ".");
        if (wrong instanceof UnmatchedArgumentException more && !more.isUnknownOption()) {
            err.println("A name with spaces stands between quotes: \"oak shelf.yaml\".");
        }
        err.println("How it is written: %s --help"
                .formatted(command.getCommandSpec().qualifiedName()));
        return Exit.WRONG;
    }

    /** The one place where what went wrong becomes a message. */
    private static int told(Exception failure, CommandLine command) throws Exception {
        if (failure instanceof Failure || failure instanceof ShopTrouble) {
            command.getErr().println(failure.getMessage());
            return Exit.WRONG;
        }
        throw failure;
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
