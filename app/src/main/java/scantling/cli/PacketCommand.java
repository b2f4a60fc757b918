package scantling.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
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
import scantling.packet.CostPage;
import scantling.packet.Days;
import scantling.packet.JobLines;
import scantling.packet.LabelSheet;
import scantling.packet.Order;
import scantling.packet.Packet;
import scantling.packet.PacketZip;
import scantling.packet.Paper;
import scantling.packet.Shown;
import scantling.piece.Workshop;
import scantling.plan.Plan;
import scantling.shop.Photo;
import scantling.shop.Prints;

/** Writes papers and files of a piece: all there are, or only those asked for. */
@Command(
        name = "packet",
        mixinStandardHelpOptions = true,
        description = {
            "Write papers and files of a piece: all there are, or only those asked for.",
            "Sections of packet.pdf: cover, parts, milling, cutting, drilling, settings, joints, hardware, lasting,"
                    + " findings, ...",
            "Files: packet, templates, labels, page, tables, data, drawings, outlines, scene, calendar,"
                    + " handover (for the client), record (of the build, to show);",
            "only when named, for the maker alone: cost (the cost sheet), timber (woods side by side)"
        })
final class PacketCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "The text of the piece.")
    private Path file = Path.of("");

    @Option(names = "--out", paramLabel = "FOLDER", description = "Where to write; usual: the piece's name beside it.")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--zip", paramLabel = "FILE", description = "Write all into one zip file instead.")
    private Optional<Path> zip = Optional.empty();

    @Option(names = "--only", paramLabel = "WORD", split = ",", description = "Only these sections and files.")
    private List<String> only = List.of();

    @Option(names = "--paper", paramLabel = "PAPER", description = "a4 (usual) or letter.")
    private String paper = "a4";

    @Option(names = "--unit", paramLabel = "UNIT", description = "inch or mm; usual: that of the piece.")
    private Optional<String> unit = Optional.empty();

    @Option(
            names = "--fraction",
            paramLabel = "PART",
            description = "The finest part of an inch: 16, 32 (usual), 64 or 128. What is left over stands small behind"
                    + " it, in mm.")
    private int fraction = LengthFormat.INCH.denominator();

    @Option(names = "--labels", paramLabel = "SHEET", description = "The sheet that labels are printed on.")
    private Optional<String> labels = Optional.empty();

    @Option(
            names = "--measured",
            paramLabel = "FILE",
            description = "What the bench says: measured sizes and parts cut.")
    private Optional<Path> measured = Optional.empty();

    @Option(names = "--shop", paramLabel = "NAME", description = "Name of the workshop, for the foot of each sheet.")
    private String shop = "";

    @Option(names = "--job", paramLabel = "NUMBER", description = "Number of the job, for the foot of each sheet.")
    private String job = "";

    @Option(names = "--address", paramLabel = "URL", description = "Where the job sheet is read, for the codes.")
    private Optional<String> address = Optional.empty();

    @Mixin
    private SettingsOption settings = new SettingsOption();

    @Option(
            names = "--from",
            paramLabel = "MOMENT",
            description = "When the work begins, for dates on the route and for route.ics: 2026-11-25T08:00, or now.")
    private Optional<String> from = Optional.empty();

    @Option(
            names = "--hours",
            paramLabel = "JOBS",
            description =
                    "A list of jobs in hand (docs/jobs.md) whose shop's hours count; usual: 8 to 12 and 13 to 17.")
    private Optional<Path> hours = Optional.empty();

    @Option(
            names = "--photo",
            paramLabel = "FILE",
            description = "A photograph (jpg, png or webp) for handover and record.")
    private List<Path> photos = List.of();

    @Option(names = "--names", description = "Let the build record say who made it and for whom.")
    private boolean names;

    @Override
    public Integer call() {
        Order order = order();
        Optional<Unit> told = told();
        LengthFormat fractions = inches();
        Plan plan = Workbench.plan(file, measured, settings.shop(), told);
        LengthFormat format = Workbench.inInches(plan) ? fractions : LengthFormat.MM;
        JobLines lines = new JobLines(shop, job, List.of(), address);
        Optional<Days> days = from.map(moment -> days(plan, moment));
        Map<String, byte[]> files = new LinkedHashMap<>(
                Packet.of(plan, format, lines, days, shown()).files(order));
        if (order.wants("cost") || order.wants("timber")) {
            files.putAll(CostPage.of(plan, settings.shop(), format).papers(order));
        }
        if (files.isEmpty()) {
            throw new Failure(
                    "Nothing of this piece can be written as %s. A calendar needs --from, when the work begins; a piece"
                                    .formatted(String.join(", ", order.files()))
                            + " without holes or shapes has no templates, one without solid wood no woods side by"
                            + " side.");
        }
        PrintWriter console = spec.commandLine().getOut();
        if (zip.isPresent()) {
            Path target = zip.get().toAbsolutePath();
            TextFile.writeAll(
                    Optional.ofNullable(target.getParent()).orElse(target),
                    Map.of(String.valueOf(target.getFileName()), PacketZip.of(files)));
            console.printf("Written to %s: %d files%n", zip.get(), files.size());
        } else {
            Path folder = out.orElseGet(this::beside);
            TextFile.writeAll(folder, files);
            console.printf("Written to %s: %s%n", folder, String.join(", ", files.keySet()));
        }
        if (order.files().contains("calendar") && days.isEmpty()) {
            console.println("No calendar of the route: say --from when the work begins.");
        }
        return plan.hasStop() ? Exit.STOP : Exit.WELL;
    }

    private Shown shown() {
        Prints prints = new Prints(names);
        photos.forEach(file -> print(prints, file));
        return prints.shown();
    }

    /** Its caption is the name of its file. */
    private static void print(Prints prints, Path file) {
        byte[] bytes = TextFile.read(file, Photo.MOST_BYTES, "that is too large a photograph");
        String name =
                String.valueOf(file.getFileName()).replaceFirst("\\.[^.]*$", "").replace('-', ' ');
        boolean taken = Photo.of(bytes).filter(photo -> prints.add(photo, name)).isPresent();
        if (!taken) {
            throw new Failure("--photo %s: this is no sound jpg, png or webp of at most %d MB."
                    .formatted(file, Photo.MOST_BYTES / 1024 / 1024));
        }
    }

    private Days days(Plan plan, String moment) {
        Workshop workshop = hours.map(list -> JobsInHand.read(list, settings).workshop())
                .orElseGet(() -> settings.calendar(settings.shop()));
        String name = (job + " " + plan.assembly().piece().title()).strip();
        return Days.from(workshop, List.of(Days.alone(name, plan.route())), instant(moment, workshop.zone()));
    }

    private static Instant instant(String moment, ZoneId zone) {
        try {
            return moment.equals("now")
                    ? Instant.now()
                    : LocalDateTime.parse(moment).atZone(zone).toInstant();
        } catch (DateTimeParseException unreadable) {
            throw new Failure("--from %s: write a moment such as 2026-11-25T08:00, or now.".formatted(moment));
        }
    }

    private Order order() {
        Paper sheet =
                Paper.find(paper).orElseThrow(() -> new Failure("--paper %s: say a4 or letter.".formatted(paper)));
        LabelSheet label = labels.map(PacketCommand::labelSheet).orElseGet(() -> LabelSheet.plain(sheet));
        if (!spec.commandLine().getParseResult().hasMatchedOption("--only")) {
            return Order.everything(sheet, label);
        }
        try {
            return Order.only(only, sheet, label);
        } catch (IllegalArgumentException unknown) {
            throw new Failure("--only: " + unknown.getMessage());
        }
    }

    private static LabelSheet labelSheet(String name) {
        return LabelSheet.find(name)
                .orElseThrow(() -> new Failure("--labels %s: there is no such sheet; say one of %s."
                        .formatted(
                                name,
                                String.join(
                                        ", ",
                                        LabelSheet.all().stream()
                                                .map(LabelSheet::name)
                                                .toList()))));
    }

    /** The unit that everything is to be said in, where it is not the piece's own. */
    private Optional<Unit> told() {
        return unit.map(name -> switch (name) {
            case "inch", "in" -> Unit.INCH;
            case "mm" -> Unit.MM;
            default -> throw new Failure("--unit %s: say inch or mm.".formatted(name));
        });
    }

    private LengthFormat inches() {
        try {
            return LengthFormat.inches(fraction);
        } catch (IllegalArgumentException wrong) {
            throw new Failure("--fraction %d: say 16, 32, 64 or 128.".formatted(fraction));
        }
    }

    private Path beside() {
        String name = String.valueOf(file.getFileName()).replaceFirst("\\.ya?ml$", "");
        return file.resolveSibling(name + "-packet");
    }
}
