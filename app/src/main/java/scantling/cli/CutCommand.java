package scantling.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import scantling.cutting.CutJob;
import scantling.cutting.CutJson;
import scantling.cutting.CutPlan;
import scantling.cutting.Effort;
import scantling.cutting.Rest;
import scantling.cutting.SawPlans;
import scantling.measure.LengthFormat;
import scantling.plan.CutReasons;

/** Plans cuts from a job as JSON, or judges a plan. */
@Command(
        name = "cut",
        mixinStandardHelpOptions = true,
        description = "Plan the cuts of a job given as JSON (docs/cut-instances.md), or judge a finished plan.")
final class CutCommand implements Callable<Integer> {
    private static final long NANOS = 1_000_000_000L;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(arity = "0..1", paramLabel = "JOB", description = "The job.")
    private Optional<Path> job = Optional.empty();

    @Option(
            names = "--seconds",
            paramLabel = "S",
            description = "How long to look for better plans; ${DEFAULT-VALUE} when not said.")
    private double seconds = 1;

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "Where the search begins; the same seed looks the same way.")
    private long seed = 1;

    @Option(names = "--out", paramLabel = "FILE", description = "Where to write the plan.")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--check", paramLabel = "PLAN", description = "Judge this plan and nothing else.")
    private Optional<Path> check = Optional.empty();

    @Option(
            names = "--list",
            description = "Print every cut in its order: what it is made on, the setting, what comes off.")
    private boolean list = false;

    @Option(
            names = "--rest-of",
            paramLabel = "PLAN",
            description = "Plan only what is left of this plan; say with --made and --spoilt where you are.")
    private Optional<Path> restOf = Optional.empty();

    @Option(
            names = "--made",
            paramLabel = "STOCK:CUTS",
            description =
                    "How many of its numbered cuts are made on a piece of stock, by its number in the plan; repeat for"
                            + " more.")
    private List<String> made = List.of();

    @Option(
            names = "--spoilt",
            paramLabel = "PART[:COUNT]",
            description = "A part that was cut free and cannot be used; repeat for more.")
    private List<String> spoilt = List.of();

    @Override
    public Integer call() {
        if (check.isPresent()) {
            return judged(check.get());
        }
        if (restOf.isPresent()) {
            return rest(restOf.get());
        }
        Path file = job.orElseThrow(() -> new Failure("Name a job to plan, or a plan to judge with --check."));
        if (!(seconds > 0)) {
            throw new Failure("--seconds %s: say more than 0.".formatted(seconds));
        }
        CutJson.Reading reading = CutJson.readJob(text(file));
        CutJob asked = reading.job().orElseThrow(() -> new Failure(listed(file, reading.problems())));
        long start = System.nanoTime();
        BooleanSupplier enough = () -> System.nanoTime() - start > seconds * NANOS;
        CutPlan plan = SawPlans.plan(asked, Effort.untilStopped(seed), enough);
        return told(asked, plan, LengthFormat.of(reading.unit()), start);
    }

    /** Only what is left of a plan. */
    private Integer rest(Path file) {
        CutJson.ReadPlan read = CutJson.readPlan(text(file));
        CutPlan old = read.plan().orElseThrow(() -> new Failure(listed(file, read.problems())));
        Rest.Answer answer = Rest.of(read.job().orElseThrow(), old, Where.read(made, spoilt));
        Rest left = answer.rest().orElseThrow(() -> new Failure(listed(file, answer.problems())));
        left.notes().forEach(note -> spec.commandLine().getOut().println("first: " + note));
        long start = System.nanoTime();
        BooleanSupplier enough = () -> System.nanoTime() - start > seconds * NANOS;
        return told(left.job(), SawPlans.rest(left, Effort.untilStopped(seed), enough), LengthFormat.MM, start);
    }

    private Integer told(CutJob asked, CutPlan plan, LengthFormat format, long start) {
        tell(asked, plan, format, (System.nanoTime() - start) / (double) NANOS);
        return plan.leftOut().isEmpty() ? Exit.WELL : Exit.STOP;
    }

    private void tell(CutJob asked, CutPlan plan, LengthFormat format, double took) {
        out.ifPresent(file -> {
            Path whole = file.toAbsolutePath();
            TextFile.writeAll(
                    Optional.ofNullable(whole.getParent()).orElse(whole),
                    Map.of(
                            String.valueOf(whole.getFileName()),
                            CutJson.writePlan(asked, plan, took).getBytes(StandardCharsets.UTF_8)));
        });
        spec.commandLine()
                .getOut()
                .println((plan.leftOut().isEmpty()
                                ? "%s: %d pieces of stock, cost %d; no plan can cost less than %d (%.1f s)"
                                : "%s: %d pieces of stock, cost %d; with all that fits it would be %d or more (%.1f s)")
                        .formatted(
                                plan.status().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                                plan.used().size(),
                                plan.cost(),
                                plan.lowerBound(),
                                took));
        CutReasons.of(asked, plan, format, Long::toString)
                .forEach(spec.commandLine().getOut()::println);
        if (list) {
            CutListing.lines(asked, plan, format).forEach(spec.commandLine().getOut()::println);
        }
        plan.leftOut()
                .forEach(left -> spec.commandLine()
                        .getOut()
                        .println("left out: %d x %s. %s"
                                .formatted(left.count(), left.part().name(), left.reason(format))));
    }

    private int judged(Path file) {
        List<String> wrong = CutJson.checkPlan(text(file));
        if (!wrong.isEmpty()) {
            throw new Failure(listed(file, wrong));
        }
        spec.commandLine().getOut().println(file + " can be cut as it stands.");
        return Exit.WELL;
    }

    private static String text(Path file) {
        return new String(TextFile.read(file), StandardCharsets.UTF_8);
    }

    private static String listed(Path file, List<String> problems) {
        return file + ":\n  " + String.join("\n  ", problems);
    }
}
