package scantling.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import scantling.measure.LengthFormat;
import scantling.measure.Unit;
import scantling.packet.Packet;
import scantling.packet.Paper;
import scantling.plan.Plan;

/** Plans a piece and writes its packet. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        description = "Work out everything needed to build a piece; with --out, write it down.")
final class PlanCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "The text of the piece.")
    private Path file = Path.of("");

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Where to write packet.pdf, job-sheet.html, parts.csv, plan.json and the drawings.")
    private Optional<Path> out = Optional.empty();

    @Option(
            names = "--measured",
            paramLabel = "FILE",
            description = "What the bench says: measured sizes and parts cut.")
    private Optional<Path> measured = Optional.empty();

    @Option(names = "--paper", paramLabel = "PAPER", description = "a4 (usual) or letter.")
    private String paper = "a4";

    @Option(names = "--inch", description = "Write inches and fractions.")
    private boolean inch;

    @Mixin
    private SettingsOption settings = new SettingsOption();

    @Override
    public Integer call() {
        Paper sheet =
                Paper.find(paper).orElseThrow(() -> new Failure("--paper %s: say a4 or letter.".formatted(paper)));
        out.ifPresent(TextFile::expectWritable);
        Plan plan = Workbench.plan(file, measured, settings.shop(), inch ? Optional.of(Unit.INCH) : Optional.empty());
        PrintWriter console = spec.commandLine().getOut();
        console.println(new Summary(plan).text());
        if (out.isPresent()) {
            LengthFormat format = LengthFormat.of(plan.assembly().piece().unit());
            Map<String, byte[]> files = Packet.of(plan, format).files(sheet);
            TextFile.writeAll(out.get(), files);
            console.println();
            console.println("Written to %s: packet.pdf, job-sheet.html, parts.csv, plan.json and %d drawings"
                    .formatted(
                            out.get(),
                            files.keySet().stream()
                                    .filter(name -> name.endsWith(".svg"))
                                    .count()));
        }
        return plan.hasStop() ? Exit.STOP : Exit.WELL;
    }
}
