package scantling.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import scantling.construct.Change;
import scantling.construct.Changes;
import scantling.construct.Finding;
import scantling.piece.Piece;
import scantling.piece.PieceEditor;
import scantling.piece.PieceReader;
import scantling.piece.ReadResult;
import scantling.piece.Spelling;
import scantling.plan.Plan;

/** Changes one given value in the text of a piece, or does what a finding asks. */
@Command(
        name = "edit",
        mixinStandardHelpOptions = true,
        description = {
            "Change one value you gave, do the remedy of a finding, or take a finding as it is.",
            "Nothing else in the text is touched; a change that does not read is refused."
        })
final class EditCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(index = "0", paramLabel = "FILE", description = "The text of the piece.")
    private Path file = Path.of("");

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "NAME",
            description = "The value: 'size / width', 'top / overhang / front'; none lists all that is given.")
    private Optional<String> name = Optional.empty();

    @Parameters(index = "2", arity = "0..1", paramLabel = "VALUE", description = "What to put there.")
    private Optional<String> value = Optional.empty();

    @Option(
            names = "--remedy",
            paramLabel = "FINDING",
            description = "Do what this finding asks: 'shelf / sag'. 'check' lists their names.")
    private Optional<String> remedy = Optional.empty();

    @Option(names = "--way", paramLabel = "N", description = "Which of several ways, from 1.", defaultValue = "1")
    private int way = 1;

    @Option(
            names = "--accept",
            paramLabel = "FINDING",
            description = "Take this finding as it is; say why with --because. The packet prints the reason.")
    private Optional<String> accept = Optional.empty();

    @Option(names = "--because", paramLabel = "REASON", description = "Why it is taken as it is.")
    private Optional<String> because = Optional.empty();

    @Override
    public Integer call() {
        Piece piece = Workbench.read(file);
        String text = Workbench.text(file);
        if (remedy.isPresent() && name.isEmpty() && accept.isEmpty()) {
            return done(text, find(remedy.get()));
        }
        if (accept.isPresent() && because.isPresent() && name.isEmpty() && remedy.isEmpty()) {
            return done(text, acceptance(piece, accept.get(), because.get()));
        }
        if (remedy.isPresent() || accept.isPresent()) {
            throw new Failure("Give NAME and VALUE, or --remedy FINDING, or --accept FINDING --because REASON.");
        }
        if (value.isEmpty()) {
            return listed(text);
        }
        known(text);
        String edited = Workbench.edited(file, text, name.get(), value.get());
        TextFile.replace(file, edited);
        spec.commandLine().getOut().println("%s is now %s.".formatted(name.get(), value.get()));
        return Exit.WELL;
    }

    /** Everything that can be changed by name, or only what was named. */
    private Integer listed(String text) {
        List<PieceEditor.Given> givens = PieceEditor.givens(text, Workbench.LANGUAGE);
        List<PieceEditor.Given> wanted = givens.stream()
                .filter(given -> name.isEmpty() || given.path().startsWith(name.get()))
                .toList();
        if (wanted.isEmpty()) {
            known(text);
        }
        wanted.forEach(given -> spec.commandLine()
                .getOut()
                .println("%s: %s   (line %d)"
                        .formatted(given.path(), given.value(), given.span().line())));
        return Exit.WELL;
    }

    /** Refuses a name under which nothing is given. */
    private void known(String text) {
        String wanted = name.orElse("");
        if (PieceEditor.findSpan(text, Workbench.LANGUAGE, wanted).isPresent()) {
            return;
        }
        Set<String> paths = new TreeSet<>(PieceEditor.givenPaths(text, Workbench.LANGUAGE));
        String here = TextFile.said(file);
        if (Workbench.plan(file, Optional.empty()).assembly().names().containsKey(wanted)) {
            throw new Failure(
                    "%s is worked out, not given; it follows from others. To see from which: scantling explain %s \"%s\""
                            .formatted(wanted, here, wanted));
        }
        throw new Failure(
                "Nothing is given as \"%s\" in %s.%s All that is given: scantling edit %s. Nothing was written."
                        .formatted(wanted, file, Spelling.maybe(wanted, paths), here));
    }

    private Change acceptance(Piece piece, String wanted, String reason) {
        Set<String> names = Workbench.plan(file, Optional.empty()).findings().stream()
                .filter(finding -> !finding.rule().isEmpty())
                .map(Finding::name)
                .collect(Collectors.toCollection(TreeSet::new));
        if (!names.contains(wanted)) {
            throw new Failure("No finding called \"%s\" can be taken as it is. These can: %s. Nothing was written."
                    .formatted(wanted, names.isEmpty() ? "none" : String.join("; ", names)));
        }
        return Changes.enter("accepted", wanted, reason, piece)
                .orElseThrow(() ->
                        new Failure("Write it under accepted yourself: what stands there cannot safely be added to."
                                + " Nothing was written."));
    }

    private Integer done(String text, Change change) {
        String edited = change.applyTo(text);
        ReadResult read = PieceReader.read(edited, Workbench.LANGUAGE, Workbench.WOODS);
        if (read.piece().isEmpty()) {
            throw new Failure("The text would not read with that change (%s); make it by hand. Nothing was written."
                    .formatted(change.words()));
        }
        TextFile.replace(file, edited);
        spec.commandLine().getOut().println("Done: %s.".formatted(change.words()));
        return Exit.WELL;
    }

    private Change find(String wanted) {
        Plan plan = Workbench.plan(file, Optional.empty());
        List<Change> changes = plan.findings().stream()
                .filter(finding -> finding.name().equals(wanted))
                .flatMap(finding -> finding.changes().stream())
                .toList();
        if (way < 1 || way > changes.size()) {
            String able = plan.findings().stream()
                    .filter(finding -> !finding.changes().isEmpty())
                    .map(Finding::name)
                    .distinct()
                    .collect(Collectors.joining("; "));
            throw new Failure("%s offers %d changes to the text. %s Nothing was written."
                    .formatted(
                            wanted,
                            changes.size(),
                            able.isEmpty() ? "No finding offers any." : "These do: " + able + "."));
        }
        return changes.get(way - 1);
    }
}
