package scantling.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import scantling.measure.Dim;
import scantling.measure.Explain;
import scantling.measure.LengthFormat;
import scantling.measure.Sensitivity;
import scantling.piece.PieceEditor;
import scantling.piece.Spelling;
import scantling.plan.Plan;

/** Says where a number comes from. */
@Command(
        name = "explain",
        mixinStandardHelpOptions = true,
        description = "Say where a number comes from, down to what you typed, a table gave or the bench measured.")
final class ExplainCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(index = "0", paramLabel = "FILE", description = "The text of the piece.")
    private Path file = Path.of("");

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "NAME",
            description =
                    "The number: 'left side / length'. The beginning of a name lists all that begin so; none lists"
                            + " all.")
    private String name = "";

    @Option(
            names = "--measured",
            paramLabel = "FILE",
            description = "What the bench says: measured sizes and parts cut.")
    private Optional<Path> measured = Optional.empty();

    @Option(names = "--inch", description = "Write inches and fractions.")
    private boolean inch;

    @Override
    public Integer call() {
        Plan plan = Workbench.plan(file, measured);
        LengthFormat format = inch
                ? LengthFormat.INCH
                : LengthFormat.of(plan.assembly().piece().unit());
        Explain explain = new Explain(format);
        Map<String, Dim> names = plan.assembly().names();
        PrintWriter out = spec.commandLine().getOut();
        Dim exact = names.get(name);
        if (exact != null) {
            out.println(explain.tree(exact));
            out.println(uncertainty(exact, format));
            return Exit.WELL;
        }
        List<Dim> begun = names.entrySet().stream()
                .filter(entry -> entry.getKey().startsWith(name))
                .map(Map.Entry::getValue)
                .toList();
        if (begun.isEmpty()) {
            return given(names.keySet());
        }
        begun.forEach(dim -> out.println(explain.line(dim)));
        return Exit.WELL;
    }

    /** A value named as 'edit' names it, where it stands. */
    private Integer given(Set<String> names) {
        List<PieceEditor.Given> found = PieceEditor.givens(Workbench.text(file), Workbench.LANGUAGE).stream()
                .filter(given -> given.path().startsWith(name))
                .toList();
        if (found.isEmpty()) {
            throw new Failure(
                    "No number of this piece is called \"%s\".%s".formatted(name, Spelling.maybe(name, names)));
        }
        found.forEach(given -> spec.commandLine()
                .getOut()
                .println("%s = %s, given in line %d"
                        .formatted(given.path(), given.value(), given.span().line())));
        return Exit.WELL;
    }

    private static String uncertainty(Dim dim, LengthFormat format) {
        Sensitivity.Spread spread = Sensitivity.tolerance(dim);
        return spread.worstCase().isZero()
                ? "No process adds to it: it is as exact as what it is worked out from."
                : spread.words(format);
    }
}
