package scantling.web;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import scantling.drawing.Drawing;
import scantling.measure.Dim;
import scantling.measure.LengthFormat;
import scantling.plan.CutGroup;
import scantling.plan.Plan;
import scantling.shop.BenchEntry;
import scantling.shop.JobPlan;
import scantling.shop.Kept;
import scantling.shop.Logged;
import scantling.shop.Photo;
import scantling.shop.Progress;
import scantling.shop.ShopDays;
import scantling.stock.Rack;

/** The cards at the bench, and the acts that come from them: in order, each once, whenever the network lets them through. */
public final class BenchPages {
    private static final ObjectMapper JSON = new ObjectMapper();
    /** Characters of drawings that are kept: those of about thirty jobs. */
    private static final long ROOM = 6_000_000;

    private final Doorway doorway;
    private final ShopDays days;
    private final Clock clock;
    private final BenchActs acts;
    private final SawSearch search;
    private final Kept<Of, Ready> ready = new Kept<>(ROOM, Ready::length);

    /** What cards are made from: a plan, what was done to its parts, what lies on the rack. */
    private record Of(Very plan, Very cuts, List<BenchEntry> done, Rack rack, boolean inch) {}

    /** Cards, and the markup of their drawings. */
    private record Ready(List<BenchCard> cards, List<String> drawings) {
        long length() {
            return drawings.stream().mapToLong(String::length).sum();
        }
    }

    BenchPages(Doorway doorway, ShopDays days, SawSearch search, Clock clock) {
        this.search = search;
        this.doorway = doorway;
        this.days = days;
        this.clock = clock;
        this.acts = new BenchActs(doorway, clock);
    }

    void open(RoutesConfig routes) {
        routes.get("/bench", this::jobs);
        routes.get("/jobs/{job}/bench", this::cards);
        routes.get(
                "/jobs/{job}/bench/stamp",
                ctx -> ctx.result(doorway.chrome(ctx, "").stamp()));
        routes.post("/jobs/{job}/bench/acts", this::take);
        routes.get("/photos/{photo}", this::photo);
    }

    private void jobs(Context ctx) {
        doorway.show(
                ctx,
                "benchjobs",
                Map.of(
                        "chrome",
                        doorway.chrome(ctx, "At the bench"),
                        "day",
                        HomeView.Maker.day(LocalDate.now(clock), days.today()),
                        "today",
                        TodayLine.of(doorway.store().jobs(), days.today()),
                        "jobs",
                        HomePages.inHand(doorway.store().jobs())));
    }

    /**
     * A card as it stands.
     *
     * @param card the operation
     * @param number its place in the route
     * @param said what the bench has said at it
     * @param today whether it is for today
     */
    public record Shown(BenchCard card, int number, List<BenchState.Said> said, boolean today) {}

    private void cards(Context ctx) {
        JobPlan.Planned job = doorway.planned(ctx);
        String id = job.job().id();
        boolean inch = Doorway.isInch(ctx, job);
        LengthFormat format = Sheets.format(inch);
        List<Logged> log = doorway.store().bench(id);
        Rack rack = doorway.store().rack();
        List<CutGroup> cuts = search.best(job.plan());
        Ready deck = ready.get(new Of(new Very(job.plan()), new Very(cuts), done(log), rack, inch), () -> {
            Plan plan = job.plan().withCuts(cuts);
            return ready(new BenchCards(plan, Progress.of(plan, log), rack, id, format).deck());
        });
        doorway.show(
                ctx,
                "bench",
                Map.of(
                        "chrome",
                        doorway.chrome(ctx, job.job().title(), job, inch),
                        "job",
                        id,
                        "plan",
                        WatchPages.print(job),
                        "cards",
                        shown(id, deck, BenchState.of(log)),
                        "drawings",
                        deck.drawings(),
                        "planned",
                        planned(job, deck, format),
                        "waits",
                        Waits.shown(log, clock.instant()).stream()
                                .map(wait -> wait.line(job.job().title(), clock.instant()))
                                .toList()));
    }

    /** What changes cards: notes and minutes do not, and what is measured changes the plan. */
    private static List<BenchEntry> done(List<Logged> log) {
        return log.stream()
                .filter(Logged::inForce)
                .map(Logged::entry)
                .filter(entry -> !(entry instanceof BenchEntry.Note
                        || entry instanceof BenchEntry.Minutes
                        || entry instanceof BenchEntry.Measured))
                .toList();
    }

    private static Ready ready(BenchCards.Deck deck) {
        return new Ready(
                deck.cards(), deck.drawings().stream().map(Drawing::screenSvg).toList());
    }

    private List<Shown> shown(String job, Ready deck, BenchState state) {
        Set<String> today = days.today().stream()
                .filter(entry -> entry.job().equals(job))
                .map(entry -> entry.operation().id())
                .collect(Collectors.toSet());
        List<Shown> shown = new ArrayList<>();
        for (BenchCard card : deck.cards()) {
            boolean now = today.stream()
                    .anyMatch(id -> card.key().equals(id) || card.key().startsWith(id + " / "));
            shown.add(new Shown(card, shown.size() + 1, state.of(subjects(card)), now && !card.done()));
        }
        return shown;
    }

    /** Under what names the bench has said something that belongs to a card. */
    private static Set<String> subjects(BenchCard card) {
        Set<String> subjects = new LinkedHashSet<>(List.of(card.key()));
        card.ticks().stream()
                .map(BenchCard.Tick::part)
                .filter(part -> !part.isEmpty())
                .forEach(part -> {
                    subjects.add(part);
                    subjects.add("sawn / " + part);
                });
        subjects.addAll(card.numbers());
        return subjects;
    }

    /** What the plan says of the numbers that cards ask to be measured. */
    private static Map<String, String> planned(JobPlan.Planned job, Ready deck, LengthFormat format) {
        Map<String, String> planned = new TreeMap<>();
        Map<String, Dim> names = job.plan().assembly().names();
        deck.cards().stream().flatMap(card -> card.numbers().stream()).forEach(name -> {
            Dim dim = names.get(name);
            if (dim != null) {
                planned.put(name, format.format(dim.value()));
            }
        });
        return planned;
    }

    private void take(Context ctx) {
        JobPlan.Planned job = doorway.planned(ctx);
        // who saws keeps the plan that is being sawn
        search.stop(job.job().id());
        List<BenchActs.Outcome> outcomes = acts.take(ctx, job.job().id(), Doorway.isInch(ctx, job), ctx.bodyAsBytes());
        ObjectNode answer = JSON.createObjectNode();
        ArrayNode all = answer.putArray("outcomes");
        for (BenchActs.Outcome outcome : outcomes) {
            all.addObject()
                    .put("id", outcome.id())
                    .put("taken", outcome.taken())
                    .put("said", outcome.said())
                    .put("expected", outcome.expected());
        }
        doorway.store().jobBook().planOf(job.job().id()).ifPresent(now -> answer.put("plan", WatchPages.print(now)));
        ctx.contentType("application/json");
        ctx.result(answer.toString());
    }

    private void photo(Context ctx) {
        Photo photo = doorway.store().photo(ctx.pathParam("photo")).orElseThrow(() -> Refused.noSuch("photo"));
        ctx.contentType(photo.kind().equals("jpg") ? "image/jpeg" : "image/" + photo.kind());
        ctx.header("Cache-Control", "private, max-age=31536000, immutable");
        ctx.result(photo.bytes());
    }
}
