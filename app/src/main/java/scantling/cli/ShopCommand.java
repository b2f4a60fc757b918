package scantling.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import scantling.shop.ShopFolder;

/** Looks after the folder that holds a shop: copies it, puts a copy back, writes it out and reads it in. */
@Command(
        name = "shop",
        mixinStandardHelpOptions = true,
        description = "Look after the shop's folder: back-ups, and everything as files to read.",
        synopsisSubcommandLabel = "COMMAND")
final class ShopCommand implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    private static ShopFolder folder(Optional<Path> named) {
        return new ShopFolder(place(named), Clock.systemUTC());
    }

    private static Path place(Optional<Path> named) {
        return named.orElseGet(ShopFolder::usual);
    }

    @Command(
            name = "back-up",
            mixinStandardHelpOptions = true,
            description = "Copy the whole shop into its back-ups, also while it is served.")
    int backUp(
            @Option(names = "--data", paramLabel = "FOLDER", description = "The shop's folder.") Optional<Path> shop) {
        out().println("Copied to %s".formatted(folder(shop).backUp()));
        return Exit.WELL;
    }

    @Command(
            name = "restore",
            mixinStandardHelpOptions = true,
            description = "Put a back-up in place: the last one, or one named. What is there is set aside, not lost.")
    int restore(
            @Option(names = "--data", paramLabel = "FOLDER", description = "The shop's folder.") Optional<Path> shop,
            @Option(names = "--list", description = "Only say which back-ups there are.") boolean list,
            @Parameters(arity = "0..1", paramLabel = "BACK-UP", description = "Which one.") Optional<String> name) {
        ShopFolder folder = folder(shop);
        if (list) {
            folder.backups().forEach(backup -> out().println(backup.getFileName()));
            return Exit.WELL;
        }
        ShopFolder.Restored restored = folder.restore(name);
        out().println("In place now: %s".formatted(restored.backup().getFileName()));
        restored.setAside().ifPresent(aside -> out().println("What was there is in %s".formatted(aside)));
        return Exit.WELL;
    }

    @Command(
            name = "export",
            mixinStandardHelpOptions = true,
            description = "Write everything into a new folder as tables, texts and photos, also while it is served.")
    int export(
            @Option(names = "--data", paramLabel = "FOLDER", description = "The shop's folder.") Optional<Path> shop,
            @Parameters(paramLabel = "FOLDER", description = "Where to write it.") Path target) {
        folder(shop).exportTo(target);
        out().println("Written to %s; begin with read-me.txt".formatted(target));
        return Exit.WELL;
    }

    @Command(
            name = "import",
            mixinStandardHelpOptions = true,
            description = "Make a shop of an exported folder, where there is none yet.")
    int importFrom(
            @Option(names = "--data", paramLabel = "FOLDER", description = "The shop's folder.") Optional<Path> shop,
            @Parameters(paramLabel = "FOLDER", description = "What was exported.") Path exported) {
        folder(shop).importFrom(exported);
        out().println("The shop is in %s".formatted(place(shop)));
        return Exit.WELL;
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }
}
