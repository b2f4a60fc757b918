package scantling.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import scantling.measure.LengthFormat;
import scantling.packet.CostPage;
import scantling.packet.Packet;
import scantling.packet.QuotePage;
import scantling.plan.Costing;
import scantling.plan.Learning;
import scantling.plan.Plan;
import scantling.plan.Shop;
import scantling.pricing.Actual;
import scantling.pricing.Basis;
import scantling.pricing.Beside;
import scantling.pricing.CostSheet;
import scantling.pricing.Estimate;
import scantling.pricing.Pricing;
import scantling.pricing.Quote;
import scantling.pricing.Rates;
import scantling.pricing.RatesReader;
import scantling.pricing.TimberChoice;

/** Says what a piece costs and what to ask for it. */
@Command(
        name = "price",
        mixinStandardHelpOptions = true,
        description = "Say what a piece costs to make, with its odds, and what to ask for it.",
        footer = {
            "",
            "Rates are a text of their own, all of it optional:",
            "  currency: EUR",
            "  hour: 48",
            "  hours: {finishing: 42}",
            "  overhead: 15 %%",
            "  margin: 20 %%",
            "  stages: {start of finishing: 30 %%}",
            "  prices: {white oak: 9.50, waterborne lacquer: 24}",
            "  work: {milling: 5 to 8 h, finishing: 6 h}"
        })
final class PriceCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private PieceOption piece = new PieceOption();

    @Option(
            names = "--rates",
            paramLabel = "FILE",
            description = "What your shop charges; an example shop when not said.")
    private Optional<Path> rates = Optional.empty();

    @Option(names = "--quote", description = "Write the quote for the client: nothing of how the price came about.")
    private boolean quote;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description =
                    "Write it as a page: the quote with its drawing, else the cost sheet with woods side by side.")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--on", paramLabel = "DATE", description = "The day the quote is given: 2027-03-01.")
    private Optional<LocalDate> on = Optional.empty();

    @Option(names = "--beside", paramLabel = "OTHER", description = "Another version of the piece, side by side.")
    private Optional<Path> beside = Optional.empty();

    @Option(
            names = "--if",
            paramLabel = "NAME=VALUE",
            description =
                    "The piece with this value changed, side by side: 'materials / oak / solid=white ash', 'size /"
                            + " width=900', 'finish / top=oil x 2'. Several may be said.")
    private List<String> changed = List.of();

    @Option(names = "--timber", description = "Woods for this piece side by side.")
    private boolean timber;

    @Option(
            names = "--actual",
            paramLabel = "FILE",
            description = "What the job took: hours: {milling: 7.5}, operations: {glue up / left end: 35 min}, spent:"
                    + " {materials: 412.30}.")
    private Optional<Path> actual = Optional.empty();

    @Option(
            names = "--jobs",
            paramLabel = "JOBS",
            description = "A list of jobs in hand (docs/jobs.md): with --job, what was done on it stands against the"
                    + " estimate.")
    private Optional<Path> jobs = Optional.empty();

    @Option(names = "--job", paramLabel = "NAME", description = "With --jobs: which of them this piece is.")
    private Optional<String> job = Optional.empty();

    @Override
    public Integer call() {
        Shop place = piece.settings().shop();
        Rates shop = rates.map(PriceCommand::read).orElse(place.office().rates());
        Plan plan = piece.plan(place);
        Optional<Actual> took = took(shop);
        Basis basis = Costing.basis(plan, place);
        Estimate estimate = Pricing.estimate(basis, shop);
        Optional<Other> second = other(place);
        PrintWriter console = spec.commandLine().getOut();
        if (quote) {
            Quote offer = Quote.of(basis, estimate, shop)
                    .orElseThrow(() -> new Failure("No quote yet: the estimate has holes.\n"
                            + PriceSheet.findings(estimate) + "\nNothing was written."));
            console.println(PriceSheet.quote(offer));
            out.ifPresent(path -> write(path, offer, plan));
        } else if (timber) {
            console.println(TimberChoice.of(basis, shop, place.rack())
                    .map(choice ->
                            PriceSheet.timber(choice, plan.assembly().piece().unit()))
                    .orElse("No part of it is of solid wood."));
        } else if (second.isPresent()) {
            Beside.Version first = new Beside.Version(basis, estimate, plan.findings());
            Beside rows = versions(first, second.get(), shop, place);
            console.println(PriceSheet.beside(
                    rows, PriceSheet.name(piece.file()), second.get().name()));
        } else if (took.isPresent()) {
            console.println(PriceSheet.costSheet(costSheet(plan, estimate, took.get(), shop, place)));
        } else {
            console.println(PriceSheet.estimate(estimate, shop));
        }
        if (!quote) {
            out.ifPresent(path -> writeCosts(
                    path, plan, new Beside.Version(basis, estimate, plan.findings()), took, second, shop, place));
        }
        return Exit.WELL;
    }

    /** What was written down of the job, and what its list of things done says. */
    private Optional<Actual> took(Rates shop) {
        Optional<Actual> said = actual.map(path -> actual(path, shop));
        if (jobs.isEmpty() || job.isEmpty()) {
            return said;
        }
        Map<String, Double> minutes =
                JobsInHand.read(jobs.get(), piece.settings()).minutes(job.get());
        return Optional.of(said.orElse(Actual.NONE).logging(minutes));
    }

    private CostSheet costSheet(Plan plan, Estimate estimate, Actual took, Rates shop, Shop place) {
        List<String> unknown = Learning.unknown(plan.route(), took.operations().keySet());
        if (!unknown.isEmpty()) {
            throw new Failure("Nothing called \"%s\" is done to this piece; \"scantling route\" lists all."
                    .formatted(String.join("\", \"", unknown)));
        }
        Learning learned = Learning.of(plan.route(), place.office().times(), took.operations());
        return CostSheet.of(estimate, took.with(learned.took()), shop)
                .and(learned.lessons().stream().map(Learning.Lesson::sentence).toList());
    }

    private void writeCosts(
            Path path,
            Plan plan,
            Beside.Version first,
            Optional<Actual> took,
            Optional<Other> second,
            Rates shop,
            Shop place) {
        CostPage page = new CostPage(
                plan.assembly().piece().title(),
                first.estimate(),
                shop,
                took.map(actual -> costSheet(plan, first.estimate(), actual, shop, place)),
                TimberChoice.of(first.basis(), shop, place.rack()),
                second.map(other -> new CostPage.Versions(
                        versions(first, other, shop, place), PriceSheet.name(piece.file()), other.name())),
                LengthFormat.of(plan.assembly().piece().unit()));
        write(path, CostPage.html(page));
    }

    private void write(Path path, Quote offer, Plan plan) {
        LengthFormat format = LengthFormat.of(plan.assembly().piece().unit());
        String page = QuotePage.html(offer, Packet.of(plan, format).content(), on);
        write(path, page);
    }

    private static void write(Path path, String page) {
        Path whole = path.toAbsolutePath();
        TextFile.writeAll(
                Optional.ofNullable(whole.getParent()).orElse(whole),
                Map.of(String.valueOf(whole.getFileName()), page.getBytes(StandardCharsets.UTF_8)));
    }

    /** What stands beside the piece. @param name what it is called there @param plan its plan */
    private record Other(String name, Plan plan) {}

    private Optional<Other> other(Shop place) {
        if (!changed.isEmpty()) {
            String text = Workbench.text(piece.file());
            for (String change : changed) {
                String[] both = change.split("=", 2);
                if (both.length < 2) {
                    throw new Failure("--if %s: say NAME=VALUE, as in 'size / width=900'.".formatted(change));
                }
                text = Workbench.edited(piece.file(), text, both[0].strip(), both[1].strip());
            }
            return Optional.of(new Other(String.join("; ", changed), Workbench.plan(piece.file(), text, place)));
        }
        return beside.map(path -> new Other(PriceSheet.name(path), Workbench.plan(path, Optional.empty(), place)));
    }

    private static Beside versions(Beside.Version first, Other other, Rates shop, Shop place) {
        Basis basis = Costing.basis(other.plan(), place);
        Beside.Version second = new Beside.Version(
                basis, Pricing.estimate(basis, shop), other.plan().findings());
        return Beside.of(first, second, shop);
    }

    private static Rates read(Path path) {
        RatesReader.Result result = RatesReader.readBytes(TextFile.read(path));
        return result.rates().orElseThrow(() -> new Failure(Workbench.told(path, result.problems())));
    }

    private static Actual actual(Path path, Rates shop) {
        Actual.Result result = Actual.readBytes(TextFile.read(path), shop.currency());
        return result.actual().orElseThrow(() -> new Failure(Workbench.told(path, result.problems())));
    }
}
