package scantling.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.measure.LengthFormat;
import scantling.measure.Unit;
import scantling.packet.CostPage;
import scantling.packet.Days;
import scantling.packet.LabelSheet;
import scantling.packet.Order;
import scantling.packet.Packet;
import scantling.packet.PacketSections;
import scantling.packet.PacketZip;
import scantling.packet.Paper;
import scantling.packet.Shown;
import scantling.piece.Workshop;
import scantling.plan.Plan;
import scantling.plan.Shop;
import scantling.route.days.JobInHand;
import scantling.shop.BenchEntry;
import scantling.shop.JobPlan;
import scantling.shop.Logged;
import scantling.shop.Prints;
import scantling.stock.Rack;

/** Choosing papers and files of a job, and getting them: one file as it is, several in a zip. */
public final class PaperPages {
    private static final int MOST_WORDS = 60;
    private static final List<Integer> FRACTIONS = List.of(16, 32, 64, 128);

    private final Doorway doorway;
    private final Clock clock;

    PaperPages(Doorway doorway, Clock clock) {
        this.doorway = doorway;
        this.clock = clock;
    }

    /** Something that can be asked for. @param word it is asked for by @param says what it is */
    public record Choice(String word, String says) {}

    void open(RoutesConfig routes) {
        routes.get("/jobs/{job}/papers", this::choose);
        routes.get("/jobs/{job}/papers/files", this::files);
    }

    private void choose(Context ctx) {
        JobPlan.Planned job = doorway.planned(ctx);
        boolean inch = Doorway.isInch(ctx, job);
        doorway.show(
                ctx,
                "papers",
                Map.of(
                        "chrome",
                        doorway.chrome(ctx, "Papers and files", job, inch),
                        "job",
                        job.job().id(),
                        "sections",
                        PacketSections.words().stream()
                                .map(word -> new Choice(word, PacketSections.heading(word)))
                                .toList(),
                        "files",
                        Order.FILES.stream()
                                .map(word -> new Choice(word, Order.words(word)))
                                .toList(),
                        "fractions",
                        FRACTIONS,
                        "labels",
                        LabelSheet.all().stream().map(LabelSheet::name).toList(),
                        "now",
                        LocalDateTime.ofInstant(clock.instant(), workshop().zone())
                                .withSecond(0)
                                .withNano(0)
                                .toString()));
    }

    private void files(Context ctx) {
        JobPlan.Planned job = doorway.planned(ctx);
        Order order = order(ctx);
        boolean inch = Requests.query(ctx, "unit").isEmpty()
                ? Doorway.isInch(ctx, job)
                : Requests.query(ctx, "unit").equals("inch");
        LengthFormat format = inch ? LengthFormat.inches(fraction(ctx)) : LengthFormat.MM;
        JobPlan.Planned told = told(job, inch);
        Shown shown = shown(!Requests.query(ctx, "names").isEmpty(), job.job().id());
        Map<String, byte[]> files = new LinkedHashMap<>(
                Packet.of(told.plan(), format, Sheets.lines(doorway.store(), job), days(ctx, told), shown)
                        .files(order));
        if (order.wants("cost") || order.wants("timber")) {
            Shop shop = doorway.store().settings().shop(doorway.store().rack());
            files.putAll(CostPage.of(told.plan(), shop, format).papers(order));
        }
        if (files.isEmpty()) {
            throw new Refused(
                    Refused.BAD,
                    "Nothing of this piece can be written as %s.".formatted(String.join(", ", order.files())),
                    "Say when the work begins if you want a calendar; a piece without holes or shapes has no"
                            + " templates, one without solid wood no woods side by side.");
        }
        send(ctx, job.job().id(), files);
    }

    /** As it stands, or worked out anew where its sentences are to be in the other unit. */
    private JobPlan.Planned told(JobPlan.Planned job, boolean inch) {
        boolean own = LengthFormat.of(job.plan().assembly().piece().unit()).inches() == inch;
        Plan plan = own
                ? job.plan()
                : doorway.store()
                        .jobBook()
                        .planIn(job.job().id(), inch ? Unit.INCH : Unit.MM)
                        .orElse(job.plan());
        return new JobPlan.Planned(job.job(), job.revision(), job.bench(), plan, job.benchProblems());
    }

    /** The finest part of an inch that was chosen. */
    private static int fraction(Context ctx) {
        String said = Requests.query(ctx, "fraction");
        return FRACTIONS.stream()
                .filter(part -> said.equals(String.valueOf(part)))
                .findFirst()
                .orElse(LengthFormat.INCH.denominator());
    }

    private static void send(Context ctx, String job, Map<String, byte[]> files) {
        boolean one = files.size() == 1;
        String file = one ? files.keySet().iterator().next() : job + ".zip";
        String name = file.substring(file.lastIndexOf('/') + 1);
        ctx.contentType(type(name));
        ctx.header(
                "Content-Disposition",
                "%s; filename=\"%s\"".formatted(name.endsWith(".pdf") ? "inline" : "attachment", name));
        ctx.result(one ? files.get(file) : PacketZip.of(files));
    }

    private static String type(String name) {
        return switch (name.substring(name.lastIndexOf('.') + 1)) {
            case "pdf" -> "application/pdf";
            case "zip" -> "application/zip";
            case "ics" -> "text/calendar; charset=utf-8";
            case "csv" -> "text/csv; charset=utf-8; header=present";
            case "json" -> "application/json";
            case "gltf" -> "model/gltf+json";
            case "html" -> "text/html; charset=utf-8";
            case "svg" -> "image/svg+xml";
            default -> "application/octet-stream";
        };
    }

    private static Order order(Context ctx) {
        List<String> words = ctx.queryParams("only");
        if (words.size() > MOST_WORDS) {
            throw new Refused(Refused.BAD, "So many things are not in a packet.", "Choose again.");
        }
        Paper paper = Paper.find(Requests.query(ctx, "paper")).orElse(Paper.A4);
        LabelSheet labels = LabelSheet.find(Requests.query(ctx, "labels")).orElseGet(() -> LabelSheet.plain(paper));
        try {
            return words.isEmpty() ? Order.everything(paper, labels) : Order.only(words, paper, labels);
        } catch (IllegalArgumentException unknown) {
            throw new Refused(Refused.BAD, String.valueOf(unknown.getMessage()), "Choose from the page of papers.");
        }
    }

    private Workshop workshop() {
        return doorway.store().settings().shop(Rack.EMPTY).office().calendar();
    }

    private Optional<Days> days(Context ctx, JobPlan.Planned job) {
        String from = Requests.query(ctx, "from");
        if (from.isEmpty()) {
            return Optional.empty();
        }
        Workshop workshop = workshop();
        JobInHand inHand =
                new JobInHand(job.job().title(), job.plan().route(), job.job().due(), 1, Map.of(), Map.of());
        return Optional.of(Days.from(workshop, List.of(inHand), moment(from, workshop.zone())));
    }

    private static Instant moment(String from, ZoneId zone) {
        try {
            return LocalDateTime.parse(from).atZone(zone).toInstant();
        } catch (DateTimeException unreadable) {
            throw new Refused(
                    Refused.BAD,
                    "\"%s\" is no moment.".formatted(Requests.shown(from)),
                    "Write it as 2026-11-25T08:00.");
        }
    }

    /** Photographs of the log, with what was noted beside them. */
    private Shown shown(boolean names, String job) {
        Prints prints = new Prints(names);
        for (Logged logged : doorway.store().bench(job)) {
            if (logged.inForce() && logged.entry() instanceof BenchEntry.Note note) {
                note.photo()
                        .flatMap(id -> doorway.store().photo(id))
                        .ifPresent(photo -> prints.add(photo, note.text()));
            }
        }
        return prints.shown();
    }
}
