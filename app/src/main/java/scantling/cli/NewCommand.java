package scantling.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import scantling.construct.Starters;
import scantling.piece.Spelling;

/** Starts a new piece from a starter. */
@Command(
        name = "new",
        mixinStandardHelpOptions = true,
        description = "Start a piece from a starter.",
        footer = {"", "Starters: wall-shelf, bookcase, bedside-chest, sideboard, dining-table, kitchen"})
final class NewCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            paramLabel = "FILE",
            description = "The file to write. A starter's own name (bookcase) starts from that one.")
    private Path file = Path.of("");

    @Option(names = "--from", paramLabel = "STARTER", description = "Which starter; a wall shelf when none is named.")
    private Optional<String> from = Optional.empty();

    @Override
    public Integer call() throws IOException {
        String name =
                Optional.ofNullable(file.getFileName()).map(Path::toString).orElse("");
        String stem = name.replaceAll("\\.ya?ml$", "");
        String starter = from.orElse(Starters.NAMES.contains(plain(stem)) ? plain(stem) : Starters.NAMES.get(0));
        if (!Starters.NAMES.contains(starter)) {
            throw new Failure("No starter is called \"%s\".%s There are: %s."
                    .formatted(starter, Spelling.maybe(starter, Starters.NAMES), list(Starters.NAMES)));
        }
        Path target = stem.equals(name) ? file.resolveSibling(name + ".yaml") : file;
        try (InputStream text = Starters.open(starter)) {
            TextFile.create(target, text.readAllBytes());
        }
        spec.commandLine()
                .getOut()
                .println("%s begins as a %s. Next: scantling plan %s --out %s"
                        .formatted(
                                target,
                                starter.replace('-', ' '),
                                TextFile.said(target),
                                TextFile.said(file.resolveSibling(stem))));
        return Exit.WELL;
    }

    /** {@code Bedside chest} means the starter {@code bedside-chest}. */
    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
    }

    private static String list(List<String> names) {
        return String.join(", ", names);
    }
}
