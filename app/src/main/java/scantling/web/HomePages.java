package scantling.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Starters;
import scantling.piece.Spelling;
import scantling.shop.Act;
import scantling.shop.Answer;
import scantling.shop.Job;
import scantling.shop.Revision;
import scantling.shop.ShopDays;

/** The shop at a glance, and new jobs. */
final class HomePages {
    private static final int TITLE = 120;

    private final Doorway doorway;
    private final Clock clock;
    private final HomeView.Maker maker;

    HomePages(Doorway doorway, ShopDays days, Clock clock) {
        this.doorway = doorway;
        this.clock = clock;
        this.maker = new HomeView.Maker(doorway.store(), days);
    }

    void open(RoutesConfig routes) {
        routes.get("/", this::home);
        routes.get("/new", this::form);
        routes.post("/jobs", this::start);
        routes.post("/jobs/{job}/state", this::state);
    }

    private void home(Context ctx) {
        LocalDate today = LocalDate.now(clock);
        doorway.show(
                ctx,
                "home",
                Map.of(
                        "chrome",
                        doorway.chrome(ctx, "Jobs in hand"),
                        "home",
                        maker.of(today, clock.instant(), Sheets.format(Doorway.isInch(ctx)))));
    }

    private void form(Context ctx) {
        doorway.show(
                ctx,
                "newjob",
                Map.of(
                        "chrome",
                        doorway.chrome(ctx, "New job"),
                        "starters",
                        Starters.NAMES,
                        "jobs",
                        doorway.store().jobs(),
                        "clients",
                        ClientPages.byName(doorway),
                        "client",
                        Requests.query(ctx, "client")));
    }

    private void start(Context ctx) {
        String from = Requests.field(ctx, "from", Requests.LINE);
        String text = from.startsWith("job:") ? ofJob(from.substring("job:".length())) : ofStarter(from);
        String title = Requests.field(ctx, "title", TITLE).strip();
        String named = title.isEmpty() ? titleOf(text) : title;
        Optional<LocalDate> due = Dates.read(Requests.field(ctx, "due", Requests.LINE));
        Answer answer =
                doorway.take(ctx, new Act.AddJob(named, Requests.field(ctx, "client", Requests.LINE), due, text));
        if (answer instanceof Answer.Refused refused) {
            throw Doorway.refusal(refused);
        }
        if (answer instanceof Answer.Taken taken) {
            ctx.redirect("/jobs/" + taken.act().subject(), HttpStatus.SEE_OTHER);
        }
    }

    private String ofJob(String id) {
        return doorway.store().text(id).map(Revision::text).orElseThrow(() -> Refused.noSuch("job"));
    }

    private static String ofStarter(String name) {
        if (!Starters.NAMES.contains(name)) {
            throw new Refused(
                    Refused.BAD,
                    "No starter is called \"%s\".".formatted(Requests.shown(name)),
                    Spelling.maybe(name, Starters.NAMES).strip());
        }
        try (InputStream in = Starters.open(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("The starter (%s) cannot be read.".formatted(name), unreadable);
        }
    }

    /** What the text calls the piece. */
    private static String titleOf(String text) {
        return text.lines()
                .filter(line -> line.startsWith("piece:"))
                .map(line -> line.substring("piece:".length()).strip())
                .findFirst()
                .orElse("A piece");
    }

    private void state(Context ctx) {
        Job job = doorway.store().job(ctx.pathParam("job")).orElseThrow(() -> Refused.noSuch("job"));
        Job.State state = Job.State.find(Requests.field(ctx, "state", Requests.LINE))
                .orElseThrow(() -> new Refused(Refused.BAD, "A job has no such state.", "Load the page again."));
        doorway.mustTake(ctx, new Act.ChangeJob(job.in(state)));
        ctx.redirect("/", HttpStatus.SEE_OTHER);
    }

    /** Jobs in hand, those promised soonest first. */
    static List<Job> inHand(List<Job> jobs) {
        return jobs.stream()
                .filter(job -> job.state() == Job.State.IN_HAND)
                .sorted(Comparator.comparing((Job job) -> job.due().orElse(LocalDate.MAX))
                        .thenComparing(Job::id))
                .toList();
    }
}
